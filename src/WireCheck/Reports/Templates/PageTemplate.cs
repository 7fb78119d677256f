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
/// A Scriban template over one named model, which sees that and the page functions and nothing else: no files, no includes,
/// no clock; loops, text and time are bounded.
/// </summary>
internal sealed class PageTemplate
{
    private const int MostLoops = 500_000;
    private const int LongestText = 64 * 1024 * 1024;

    private readonly Template _template;
    private readonly string _file;

    private PageTemplate(Template template, string file)
    {
        _template = template;
        _file = file;
    }

    /// <summary>One of the tool's own templates by its file's name.</summary>
    internal static PageTemplate Own(string name)
    {
        ProblemList problems = new();
        return Read($"templates/{name}", EmbeddedTemplates.Read(name), problems)
            ?? throw new InvalidOperationException(problems.InOrder()[0].ToString());
    }

    /// <summary>Reads a template; null with every mistake of it noted.</summary>
    internal static PageTemplate? Read(string file, string text, ProblemList problems)
    {
        Template template = Template.Parse(text, file);
        foreach (Scriban.Parsing.LogMessage message in template.Messages)
        {
            problems.Add(new Position(file, message.Span.Start.Line + 1, message.Span.Start.Column + 1), message.Message);
        }

        return template.HasErrors ? null : new PageTemplate(template, file);
    }

    /// <summary>How words are escaped for a target.</summary>
    internal static Escape EscapeFor(TemplateTarget target) => target switch
    {
        TemplateTarget.Html => Escaping.Html,
        TemplateTarget.Markdown => Escaping.Markdown,
        _ => Escaping.Plain,
    };

    /// <summary>Writes a model that cannot fail by what a user wrote: one of the tool's own over the tool's own template.</summary>
    internal string Write(string name, object model, TextStyle style)
    {
        ProblemList problems = new();
        return Write(name, model, style, problems) ?? throw new InvalidOperationException(problems.InOrder()[0].ToString());
    }

    /// <summary>Writes a model under its name; null with the mistake noted when the template fails while it runs.</summary>
    internal string? Write(string name, object model, TextStyle style, ProblemList problems, CancellationToken stop = default)
    {
        ScriptObject globals = PageFunctions.Make(style);
        globals.SetValue(name, model, true);
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
