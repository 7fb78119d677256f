using System.Text;
using WireCheck.Reports;
using WireCheck.Reports.Json;
using WireCheck.Reports.Sarif;
using WireCheck.Reports.Templates;
using WireCheck.Reports.Text;
using WireCheck.Text;

namespace WireCheck.Cli.Commands;

/// <summary>The ways in which a check can be answered.</summary>
internal static class ReportFormats
{
    /// <summary>The words of <c>--format</c>.</summary>
    internal static IReadOnlyList<string> All { get; } = ["text", "markdown", "html", "json", "sarif"];

    /// <summary>The answer as UTF-8; null when the user's template is wrong, which is noted.</summary>
    /// <param name="format">One of <see cref="All"/>.</param>
    /// <param name="template">File of a template of the user's own, or null.</param>
    /// <param name="reports">The reports, in order.</param>
    /// <param name="style">Width and colour of a text.</param>
    /// <param name="problems">Receives what is wrong with the template.</param>
    internal static byte[]? Write(string format, string? template, IReadOnlyList<Report> reports, TextStyle style, ProblemList problems)
    {
        if (Target(format) is not { } target)
        {
            if (template is not null)
            {
                problems.Add(new Position(template, 1, 1), $"a template writes text, markdown or html, not {format}");
                return null;
            }

            using MemoryStream output = new();
            if (format == "json")
            {
                JsonReport.Write(output, reports);
            }
            else
            {
                SarifReport.Write(output, reports);
            }

            return output.ToArray();
        }

        ReportTemplate? read = template is null ? ReportTemplate.Own(target)
            : SourceFile.Load(template, problems) is { } text ? ReportTemplate.Read(template, text, target, problems) : null;
        return read?.Write(reports, style, problems) is { } words ? Encoding.UTF8.GetBytes(words) : null;
    }

    private static TemplateTarget? Target(string format) => format switch
    {
        "text" => TemplateTarget.Text,
        "markdown" => TemplateTarget.Markdown,
        "html" => TemplateTarget.Html,
        _ => null,
    };
}
