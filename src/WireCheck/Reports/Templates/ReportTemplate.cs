using Scriban.Runtime;
using WireCheck.Reports.Text;
using WireCheck.Text;

namespace WireCheck.Reports.Templates;

/// <summary>A template over the report model, one of the tool's own or the user's.</summary>
public sealed class ReportTemplate
{
    private readonly PageTemplate _template;
    private readonly TemplateTarget _target;

    private ReportTemplate(PageTemplate template, TemplateTarget target)
    {
        _template = template;
        _target = target;
    }

    /// <summary>The tool's own template for a target.</summary>
    public static ReportTemplate Own(TemplateTarget target) => new(
        PageTemplate.Own(target switch
        {
            TemplateTarget.Html => "report.html",
            TemplateTarget.Markdown => "report.md",
            _ => "report.txt",
        }),
        target);

    /// <summary>Reads a template; null with every mistake of it noted.</summary>
    /// <param name="file">Its name, as messages print it.</param>
    /// <param name="text">Its text.</param>
    /// <param name="target">What it writes.</param>
    /// <param name="problems">Receives its mistakes with line and column.</param>
    public static ReportTemplate? Read(string file, string text, TemplateTarget target, ProblemList problems) =>
        PageTemplate.Read(file, text, problems) is { } template ? new ReportTemplate(template, target) : null;

    /// <summary>Writes reports with the template; null with the mistake noted when it fails while it runs.</summary>
    /// <param name="reports">The reports, in order.</param>
    /// <param name="style">Width and colour of a text.</param>
    /// <param name="problems">Receives what went wrong.</param>
    /// <param name="stop">Ends the run.</param>
    public string? Write(IReadOnlyList<Report> reports, TextStyle style, ProblemList problems, CancellationToken stop = default)
    {
        Escape escape = PageTemplate.EscapeFor(_target);
        ScriptArray models = new(reports.Select((r, place) => new ReportModel(r, place, _target, escape).Make()));
        return _template.Write("reports", models, style, problems, stop);
    }
}
