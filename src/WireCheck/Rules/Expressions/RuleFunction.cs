using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;
using WireCheck.Quantities;

namespace WireCheck.Rules.Expressions;

/// <summary>A function or filter that rules may call.</summary>
/// <param name="name">Its name.</param>
/// <param name="takes">Kinds of its arguments; in a pipe the first is what stands before it.</param>
/// <param name="gives">What it returns.</param>
/// <param name="body">What it does with its arguments, which may be null where a fact has no value, and the digits asked for.</param>
internal sealed class RuleFunction(
    string name, IReadOnlyList<ExpressionKind> takes, ExpressionKind gives, Func<IReadOnlyList<object?>, int, object?> body)
    : IScriptCustomFunction
{
    /// <summary>Under this tag the context says how many significant digits numbers in words have.</summary>
    internal const string DigitsTag = "significant digits";

    /// <summary>A function that gives the same however many digits are asked for.</summary>
    internal RuleFunction(
        string name, IReadOnlyList<ExpressionKind> takes, ExpressionKind gives, Func<IReadOnlyList<object?>, object?> body)
        : this(name, takes, gives, (arguments, _) => body(arguments))
    {
    }

    internal string Name { get; } = name;

    internal IReadOnlyList<ExpressionKind> Takes { get; } = takes;

    internal ExpressionKind Gives { get; } = gives;

    /// <summary>The unit its first argument must have; null when any fits.</summary>
    internal string? Unit { get; init; }

    /// <summary>True when the result has the unit of the first argument, which all others must have too.</summary>
    internal bool KeepsUnit { get; init; }

    public int RequiredParameterCount => Takes.Count;

    public int ParameterCount => Takes.Count;

    public ScriptVarParamKind VarParamKind => ScriptVarParamKind.None;

    public Type ReturnType => typeof(object);

    public ScriptParameterInfo GetParameterInfo(int index) => new(typeof(object), "value");

    public object? Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
        Run(context, arguments);

    public ValueTask<object?> InvokeAsync(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
        new(Run(context, arguments));

    private object? Run(TemplateContext context, ScriptArray arguments) =>
        body([.. arguments], context.Tags.TryGetValue(DigitsTag, out object? digits) && digits is int asked ? asked : QuantityText.UsualDigits);
}
