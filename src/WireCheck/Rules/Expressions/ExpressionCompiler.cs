using Scriban;
using Scriban.Parsing;
using Scriban.Syntax;
using WireCheck.Text;

namespace WireCheck.Rules.Expressions;

/// <summary>Parses and checks the expressions and words of rules.</summary>
internal static class ExpressionCompiler
{
    private static readonly ParserOptions Options = new() { ExpressionDepthLimit = 50 };

    /// <summary>A yes-or-no expression, or null with problems noted.</summary>
    internal static CompiledExpression? CompileExpression(YamlScalar scalar, RuleNames names, ProblemList problems)
    {
        ProblemList found = new();
        Template template = Template.Parse(scalar.Text, scalar.Position.File, Options, new LexerOptions { Mode = ScriptMode.ScriptOnly });
        ExpressionChecker checker = new(names, span => PlaceOf(scalar, span), found);
        CompiledExpression? compiled = null;
        if (NoSyntaxErrors(template, scalar, found))
        {
            if (template.Page?.Body?.Statements is [ScriptExpressionStatement { Expression: { } root }])
            {
                checker.Demand(root, ExpressionKind.YesNo, "the whole expression");
                compiled = new CompiledExpression(root, checker.Uses, ComparisonOf(root, checker));
            }
            else
            {
                found.Add(scalar.Position, RuleProblemWords.NotOneExpression());
            }
        }

        return HandOver(found, problems) ? compiled : null;
    }

    /// <summary>Words with facts in double braces, or null with problems noted.</summary>
    internal static CompiledWords? CompileWords(YamlScalar scalar, RuleNames names, ProblemList problems)
    {
        ProblemList found = new();
        Template template = Template.Parse(scalar.Text, scalar.Position.File, Options, new LexerOptions { Mode = ScriptMode.Default });
        ExpressionChecker checker = new(names, span => PlaceOf(scalar, span), found);
        if (NoSyntaxErrors(template, scalar, found))
        {
            new WordsChecker(checker).Check(template.Page?.Body);
        }

        return HandOver(found, problems) ? new CompiledWords(template, checker.Uses) : null;
    }

    private static bool NoSyntaxErrors(Template template, YamlScalar scalar, ProblemList found)
    {
        foreach (LogMessage message in template.Messages)
        {
            found.Add(PlaceOf(scalar, message.Span), RuleProblemWords.Syntax(message.Message.TrimEnd('.')));
        }

        return found.IsEmpty;
    }

    private static bool HandOver(ProblemList found, ProblemList problems)
    {
        foreach (Problem problem in found.InOrder())
        {
            problems.Add(problem.Position, problem.Message);
        }

        return found.IsEmpty;
    }

    /// <summary>
    /// The place of a span. A value on one line is counted to the column; in a folded or literal block the
    /// place is where the value begins, since folding loses the columns.
    /// </summary>
    private static Position PlaceOf(YamlScalar scalar, SourceSpan span)
    {
        if (span.Start.Line > 0 || scalar.Text.Contains('\n', StringComparison.Ordinal))
        {
            return scalar.Position;
        }

        return scalar.Position with { Column = scalar.Position.Column + Math.Max(0, span.Start.Column) + (scalar.Quoted ? 1 : 0) };
    }

    private static Comparison? ComparisonOf(ScriptExpression root, ExpressionChecker checker)
    {
        while (root is ScriptNestedExpression { Expression: { } inner })
        {
            root = inner;
        }

        if (root is not ScriptBinaryExpression { Left: { } left, Right: { } right } binary)
        {
            return null;
        }

        string? unit = checker.TypeOf(left).Unit ?? checker.TypeOf(right).Unit;
        return binary.Operator switch
        {
            ScriptBinaryOperator.CompareLess => new Comparison(left, right, false, unit, false),
            ScriptBinaryOperator.CompareLessOrEqual => new Comparison(left, right, true, unit, false),
            ScriptBinaryOperator.CompareGreater => new Comparison(right, left, false, unit, true),
            ScriptBinaryOperator.CompareGreaterOrEqual => new Comparison(right, left, true, unit, true),
            _ => null,
        };
    }
}
