using Scriban.Syntax;

namespace WireCheck.Rules.Expressions;

/// <summary>Kinds and units of what two-sided operators take and give.</summary>
internal sealed class OperatorChecker(ExpressionChecker checker)
{
    internal ExpressionType TypeOf(ScriptBinaryExpression binary)
    {
        if (binary.Left is null || binary.Right is null)
        {
            return ExpressionType.Unknown;
        }

        switch (binary.Operator)
        {
            case ScriptBinaryOperator.And or ScriptBinaryOperator.Or:
                checker.Demand(binary.Left, ExpressionKind.YesNo, $"what stands before '{binary.OperatorAsText}'");
                checker.Demand(binary.Right, ExpressionKind.YesNo, $"what stands after '{binary.OperatorAsText}'");
                return ExpressionType.YesNo;
            case ScriptBinaryOperator.CompareLess or ScriptBinaryOperator.CompareLessOrEqual
                or ScriptBinaryOperator.CompareGreater or ScriptBinaryOperator.CompareGreaterOrEqual:
                SameUnit(binary);
                return ExpressionType.YesNo;
            case ScriptBinaryOperator.CompareEqual or ScriptBinaryOperator.CompareNotEqual:
                return Equality(binary);
            case ScriptBinaryOperator.Add or ScriptBinaryOperator.Subtract:
                return new ExpressionType(ExpressionKind.Number, SameUnit(binary));
            case ScriptBinaryOperator.Multiply:
                return new ExpressionType(ExpressionKind.Number, Product(binary));
            case ScriptBinaryOperator.Divide:
                return new ExpressionType(ExpressionKind.Number, Quotient(binary));
            case ScriptBinaryOperator.EmptyCoalescing:
                return OrElse(binary);
            default:
                return checker.Refuse(binary);
        }
    }

    private (string? Left, string? Right) Numbers(ScriptBinaryExpression binary)
    {
        ExpressionType left = checker.Demand(binary.Left, ExpressionKind.Number, $"what stands before '{binary.OperatorAsText}'");
        ExpressionType right = checker.Demand(binary.Right, ExpressionKind.Number, $"what stands after '{binary.OperatorAsText}'");
        return (left.Unit, right.Unit);
    }

    private string? SameUnit(ScriptBinaryExpression binary)
    {
        (string? left, string? right) = Numbers(binary);
        if (left is not null && right is not null && left != right)
        {
            checker.Report(binary, RuleProblemWords.DifferentUnits(binary.ToString(), left, right));
        }

        return left ?? right;
    }

    /// <summary>A number without a unit, or a bare literal, leaves the other side's unit; other products have none known.</summary>
    private string? Product(ScriptBinaryExpression binary)
    {
        (string? left, string? right) = Numbers(binary);
        return IsPure(binary.Left, left) ? right : IsPure(binary.Right, right) ? left : null;
    }

    private string? Quotient(ScriptBinaryExpression binary)
    {
        (string? left, string? right) = Numbers(binary);
        return IsPure(binary.Right, right) ? left : left is not null && left == right ? "" : null;
    }

    private static bool IsPure(ScriptExpression? side, string? unit) => unit == "" || side is ScriptLiteral;

    private ExpressionType Equality(ScriptBinaryExpression binary)
    {
        ExpressionType left = checker.TypeOf(binary.Left);
        ExpressionType right = checker.TypeOf(binary.Right);
        if (left.Kind == ExpressionKind.Nothing || right.Kind == ExpressionKind.Nothing)
        {
            Guard(binary.Left);
            Guard(binary.Right);
        }
        else if (left.Kind != right.Kind && left.Kind != ExpressionKind.Unknown && right.Kind != ExpressionKind.Unknown)
        {
            checker.Report(binary, RuleProblemWords.DifferentKinds(binary.ToString(), left, right));
        }

        return ExpressionType.YesNo;
    }

    private ExpressionType OrElse(ScriptBinaryExpression binary)
    {
        ExpressionType left = checker.TypeOf(binary.Left);
        ExpressionType right = checker.TypeOf(binary.Right);
        Guard(binary.Left);
        if (left.Kind != right.Kind && left.Kind != ExpressionKind.Unknown && right.Kind != ExpressionKind.Unknown)
        {
            checker.Report(binary, RuleProblemWords.DifferentKinds(binary.ToString(), left, right));
        }

        return new ExpressionType(left.Kind, left.Unit ?? right.Unit);
    }

    private void Guard(ScriptExpression? side)
    {
        if (side is not null && checker.FactOf(side) is { } use)
        {
            checker.Uses.Guard(use);
        }
    }
}
