using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;

namespace WireCheck.Rules.Expressions;

/// <summary>A function or filter that rules may call.</summary>
/// <param name="name">Its name.</param>
/// <param name="takes">Kinds of its arguments; in a pipe the first is what stands before it.</param>
/// <param name="gives">What it returns.</param>
/// <param name="body">What it does; arguments may be null where a fact has no value.</param>
internal sealed class RuleFunction(
    string name, IReadOnlyList<ExpressionKind> takes, ExpressionKind gives, Func<IReadOnlyList<object?>, object?> body)
    : IScriptCustomFunction
{
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
        body([.. arguments]);

    public ValueTask<object?> InvokeAsync(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
        new(body([.. arguments]));
}
