using Scriban;
using Scriban.Runtime;
using WireCheck.Reports.Text;
using WireCheck.Text;

namespace WireCheck.Reports.Templates;

/// <summary>The targets of a template; each escapes words in its own way.</summary>
public enum TemplateTarget
{
    Text,
    Markdown,
    Html,
}

/// <summary>
/// A Scriban template over the report model, one of the tool's own or the user's. It sees the model and the page
/// functions: no files, no includes, no clock; loops, text and time are bounded.
/// </summary>
public sealed class ReportTemplate
{
    private const int MostLoops = 500_000;
    private const int LongestText = 64 * 1024 * 1024;

    private readonly Template _template;
    private readonly TemplateTarget _target;
    private readonly string _file;

    private ReportTemplate(Template template, TemplateTarget target, string file)
    {
        _template = template;
        _target = target;
        _file = file;
    }

    /// <summary>The tool's own template for a target.</summary>
    public static ReportTemplate Own(TemplateTarget target)
    {
        string name = target switch
        {
            TemplateTarget.Html => "report.html",
            TemplateTarget.Markdown => "report.md",
            _ => "report.txt",
        };
        ProblemList problems = new();
        return Read($"templates/{name}", EmbeddedTemplates.Read(name), target, problems)
            ?? throw new InvalidOperationException(problems.InOrder()[0].ToString());
    }

    /// <summary>Reads a template; null with every mistake of it noted.</summary>
    /// <param name="file">Its name, as messages print it.</param>
    /// <param name="text">Its text.</param>
    /// <param name="target">What it writes.</param>
    /// <param name="problems">Receives its mistakes with line and column.</param>
    public static ReportTemplate? Read(string file, string text, TemplateTarget target, ProblemList problems)
    {
        Template template = Template.Parse(text, file);
        foreach (Scriban.Parsing.LogMessage message in template.Messages)
        {
            problems.Add(new Position(file, message.Span.Start.Line + 1, message.Span.Start.Column + 1), message.Message);
        }

        return template.HasErrors ? null : new ReportTemplate(template, target, file);
    }

    /// <summary>Writes reports with the template; null with the mistake noted when it fails while it runs.</summary>
    /// <param name="reports">The reports, in order.</param>
    /// <param name="style">Width and colour of a text.</param>
    /// <param name="problems">Receives what went wrong.</param>
    /// <param name="stop">Ends the run.</param>
    public string? Write(IReadOnlyList<Report> reports, TextStyle style, ProblemList problems, CancellationToken stop = default)
    {
        Escape escape = _target switch
        {
            TemplateTarget.Html => Escaping.Html,
            TemplateTarget.Markdown => Escaping.Markdown,
            _ => Escaping.Plain,
        };
        ScriptObject globals = PageFunctions.Make(style);
        globals.SetValue("reports", new ScriptArray(reports.Select((r, place) => new ReportModel(r, place, _target, escape).Make())), true);
        TemplateContext context = new(new ScriptObject())
        {
            StrictVariables = true,
            TemplateLoader = null,
            LoopLimit = MostLoops,
            RecursiveLimit = 40,
            LimitToString = LongestText,
            EnableRelaxedMemberAccess = false,
            CancellationToken = stop,
            NewLine = "\n",
        };
        context.PushGlobal(globals);
        try
        {
            return _template.Render(context);
        }
        catch (Scriban.Syntax.ScriptRuntimeException error)
        {
            problems.Add(new Position(_file, error.Span.Start.Line + 1, error.Span.Start.Column + 1), error.OriginalMessage);
            return null;
        }
    }
}
