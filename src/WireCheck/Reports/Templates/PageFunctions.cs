using System.Globalization;
using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;
using WireCheck.Reports.Text;

namespace WireCheck.Reports.Templates;

/// <summary>What templates may call besides the model.</summary>
internal static class PageFunctions
{
    /// <summary>All functions, by name.</summary>
    internal static ScriptObject Make(TextStyle style)
    {
        ScriptObject functions = [];
        Add(functions, "upper", 1, a => Word(a, 0).ToUpperInvariant());
        Add(functions, "pad", 2, a => Word(a, 0).PadLeft(Number(a, 1)));
        Add(functions, "join", 2, a => string.Join(Word(a, 1), ((ScriptArray)a[0]!).Select(w => Convert.ToString(w, CultureInfo.InvariantCulture))));
        Add(functions, "paragraph", 4, a => Lay(style, l => l.Paragraph(Number(a, 0), Word(a, 1), Word(a, 2), SeverityColour.Of(Word(a, 3)))));
        Add(functions, "cell", 1, a => HtmlCell.Of(Word(a, 0)));
        Add(functions, "heading", 1, a => Lay(style, l => l.Heading(Word(a, 0))));
        return functions;
    }

    private static string Lay(TextStyle style, Action<TextLayout> write)
    {
        using StringWriter output = new(CultureInfo.InvariantCulture);
        write(new TextLayout(output, style));
        return output.ToString();
    }

    private static void Add(ScriptObject functions, string name, int count, Func<ScriptArray, string> body) =>
        functions.SetValue(name, new PageFunction(count, body), true);

    private static string Word(ScriptArray arguments, int place) =>
        Convert.ToString(arguments[place], CultureInfo.InvariantCulture) ?? "";

    private static int Number(ScriptArray arguments, int place) => Convert.ToInt32(arguments[place], CultureInfo.InvariantCulture);

    private sealed class PageFunction(int count, Func<ScriptArray, string> body) : IScriptCustomFunction
    {
        public int RequiredParameterCount => count;

        public int ParameterCount => count;

        public ScriptVarParamKind VarParamKind => ScriptVarParamKind.None;

        public Type ReturnType => typeof(string);

        public ScriptParameterInfo GetParameterInfo(int index) => new(typeof(object), "value");

        public object? Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
            body(arguments);

        public ValueTask<object?> InvokeAsync(
            TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) => new(body(arguments));
    }
}
