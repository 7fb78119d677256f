using WireCheck.Reports.Templates;
using WireCheck.Text;

namespace WireCheck.Reports.Text;

/// <summary>
/// The short answer for a builder at the bench: the verdict, what was found worst first with what to do, how
/// near the rest is to its limits, how long the box keeps, what could not be judged, and the cautions.
/// </summary>
public static class TextReport
{
    /// <summary>Writes one report after the other by the tool's own template.</summary>
    public static void Write(TextWriter output, IReadOnlyList<Report> reports, TextStyle style)
    {
        ProblemList problems = new();
        output.Write(ReportTemplate.Own(TemplateTarget.Text).Write(reports, style, problems)
            ?? throw new InvalidOperationException(problems.InOrder()[0].ToString()));
    }
}
