using Scriban.Syntax;
using WireCheck.Text;

namespace WireCheck.Rules.Expressions;

/// <summary>
/// A condition of a rule, as written; it is compiled when it is first needed, since most runs need only a
/// part of all rules.
/// </summary>
public sealed class RuleExpression
{
    private readonly YamlScalar _scalar;
    private readonly RuleNames _names;
    private CompiledExpression? _compiled;

    internal RuleExpression(YamlScalar scalar, RuleNames names)
    {
        _scalar = scalar;
        _names = names;
    }

    /// <summary>The expression as the rule file writes it.</summary>
    public string Text => _scalar.Text;

    /// <summary>Where it stands.</summary>
    public Position Position => _scalar.Position;

    /// <summary>Compiles and checks; the result is kept. Null, with problems noted, when the expression is wrong.</summary>
    internal CompiledExpression? Compile(ProblemList problems) =>
        _compiled ??= ExpressionCompiler.CompileExpression(_scalar, _names, problems);

    /// <summary>The compiled form of an expression whose rule set was checked before.</summary>
    internal CompiledExpression Compiled
    {
        get
        {
            ProblemList problems = new();
            return Compile(problems) ?? throw new InvalidOperationException(problems.InOrder()[0].ToString());
        }
    }
}

/// <summary>Words of a rule with facts in them, as written; compiled when first needed.</summary>
public sealed class RuleWords
{
    private readonly YamlScalar _scalar;
    private readonly RuleNames _names;
    private CompiledWords? _compiled;

    internal RuleWords(YamlScalar scalar, RuleNames names)
    {
        _scalar = scalar;
        _names = names;
    }

    /// <summary>The words as the rule file writes them.</summary>
    public string Text => _scalar.Text;

    /// <summary>Compiles and checks; the result is kept. Null, with problems noted, when the words are wrong.</summary>
    internal CompiledWords? Compile(ProblemList problems) =>
        _compiled ??= ExpressionCompiler.CompileWords(_scalar, _names, problems);

    /// <summary>The compiled form of words whose rule set was checked before.</summary>
    internal CompiledWords Compiled
    {
        get
        {
            ProblemList problems = new();
            return Compile(problems) ?? throw new InvalidOperationException(problems.InOrder()[0].ToString());
        }
    }
}

/// <summary>A comparison of two numbers at the root of a requirement, from which a margin can be told.</summary>
/// <param name="Used">The side that must be the smaller.</param>
/// <param name="Limit">The side that must be the larger.</param>
/// <param name="EqualPasses">True for <c>&lt;=</c> and <c>&gt;=</c>.</param>
/// <param name="Unit">Unit of both sides, or null when not known.</param>
/// <param name="Floor">True for <c>&gt;</c> and <c>&gt;=</c>: the smaller side is written on the right.</param>
internal sealed record Comparison(ScriptExpression Used, ScriptExpression Limit, bool EqualPasses, string? Unit, bool Floor);

/// <summary>A checked condition.</summary>
internal sealed record CompiledExpression(ScriptExpression Root, ExpressionUses Uses, Comparison? Comparison);

/// <summary>Checked words.</summary>
internal sealed record CompiledWords(Scriban.Template Template, ExpressionUses Uses);
