using Scriban.Syntax;

namespace WireCheck.Rules.Expressions;

/// <summary>Reads the words of a rule: text, values with their filters, conditions and loops over lists of names.</summary>
internal sealed class WordsChecker(ExpressionChecker checker)
{
    internal void Check(ScriptBlockStatement? block)
    {
        foreach (ScriptStatement statement in block?.Statements ?? [])
        {
            Check(statement);
        }
    }

    private void Check(ScriptStatement statement)
    {
        switch (statement)
        {
            case ScriptRawStatement or ScriptEscapeStatement or ScriptEndStatement or ScriptNopStatement:
                break;
            case ScriptExpressionStatement { Expression: { } printed }:
                CheckPrinted(printed);
                break;
            case ScriptConditionStatement condition:
                CheckCondition(condition);
                break;
            case ScriptForStatement { Variable: ScriptVariable variable } loop
                when loop is not ScriptTableRowStatement && loop.NamedArguments is not { Count: > 0 }:
                checker.Demand(loop.Iterator, ExpressionKind.Names, "what a for runs over");
                checker.WithLoopVariable(variable.Name, () => Check(loop.Body));
                break;
            default:
                checker.Report(statement, RuleProblemWords.StatementNotAllowed());
                break;
        }
    }

    private void CheckCondition(ScriptConditionStatement? condition)
    {
        switch (condition)
        {
            case ScriptIfStatement branch:
                checker.Demand(branch.Condition, ExpressionKind.YesNo, "the condition of an if");
                Check(branch.Then);
                CheckCondition(branch.Else);
                break;
            case ScriptElseStatement otherwise:
                Check(otherwise.Body);
                break;
            case not null:
                checker.Report(condition, RuleProblemWords.StatementNotAllowed());
                break;
        }
    }

    private void CheckPrinted(ScriptExpression printed)
    {
        ExpressionType type = checker.TypeOf(printed);
        string? complaint = type.Kind switch
        {
            ExpressionKind.Number => RuleProblemWords.BareNumber(printed.ToString()),
            ExpressionKind.Names => RuleProblemWords.BareList(printed.ToString()),
            ExpressionKind.YesNo => RuleProblemWords.BareYesNo(printed.ToString()),
            _ => null,
        };
        if (complaint is not null)
        {
            checker.Report(printed, complaint);
        }
    }
}
