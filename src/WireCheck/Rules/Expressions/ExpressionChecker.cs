using Scriban.Parsing;
using Scriban.Syntax;
using WireCheck.Facts;
using WireCheck.Text;

namespace WireCheck.Rules.Expressions;

/// <summary>
/// Reads an expression without running it: every name must exist, kinds and units must fit, and only the
/// listed sorts of expression may stand in it. What it does not know it refuses.
/// </summary>
/// <param name="names">Names the rule may use.</param>
/// <param name="place">Turns a span of the text into its place in the rule file.</param>
/// <param name="problems">Receives every problem.</param>
internal sealed class ExpressionChecker(RuleNames names, Func<SourceSpan, Position> place, ProblemList problems)
{
    private readonly HashSet<string> _loopVariables = new(StringComparer.Ordinal);

    internal ExpressionUses Uses { get; } = new();

    internal void Report(ScriptNode node, string message) => problems.Add(place(node.Span), message);

    /// <summary>Lets a loop variable stand for a word while the body of its loop is read.</summary>
    internal void WithLoopVariable(string name, Action readBody)
    {
        bool added = _loopVariables.Add(name);
        readBody();
        if (added)
        {
            _loopVariables.Remove(name);
        }
    }

    /// <summary>Reports when the expression is not of the kind wanted.</summary>
    internal ExpressionType Demand(ScriptExpression? expression, ExpressionKind kind, string what)
    {
        if (expression is null)
        {
            return ExpressionType.Unknown;
        }

        ExpressionType type = TypeOf(expression);
        if (!type.IsOrUnknown(kind))
        {
            Report(expression, RuleProblemWords.WantsKind(what, new ExpressionType(kind).InWords, type));
        }

        return type;
    }

    internal ExpressionType TypeOf(ScriptExpression? expression) => expression switch
    {
        null => ExpressionType.Unknown,
        ScriptNestedExpression nested => TypeOf(nested.Expression),
        ScriptLiteral literal => TypeOfLiteral(literal),
        ScriptMemberExpression member => TypeOfMember(member),
        ScriptVariable variable => TypeOfVariable(variable),
        ScriptUnaryExpression unary => TypeOfUnary(unary),
        ScriptBinaryExpression binary => new OperatorChecker(this).TypeOf(binary),
        ScriptConditionalExpression conditional => TypeOfConditional(conditional),
        ScriptPipeCall pipe => TypeOfCall(TypeOf(pipe.From), pipe.To),
        ScriptFunctionCall call => TypeOfCall(null, call),
        _ => Refuse(expression),
    };

    /// <summary>The fact an expression is, when it is nothing but a fact.</summary>
    internal FactUse? FactOf(ScriptExpression expression)
    {
        if (expression is ScriptNestedExpression nested && nested.Expression is not null)
        {
            return FactOf(nested.Expression);
        }

        return expression is ScriptMemberExpression { Target: ScriptVariable root, Member: { } member } ? Find(root.Name, member.Name) : null;
    }

    private FactUse? Find(string root, string name)
    {
        bool ofPack = root == RuleNames.Pack;
        if (!ofPack && root != RuleNames.It)
        {
            return null;
        }

        Fact? fact = names.Vocabulary.Find(ofPack ? FactVocabulary.PackKind : names.Kind, name);
        return fact is null ? null : new FactUse(ofPack, fact);
    }

    private ExpressionType TypeOfLiteral(ScriptLiteral literal) => literal.Value switch
    {
        null => new ExpressionType(ExpressionKind.Nothing),
        bool => ExpressionType.YesNo,
        string => ExpressionType.Word,
        int or long or double or float => new ExpressionType(ExpressionKind.Number),
        _ => Refuse(literal),
    };

    private ExpressionType TypeOfVariable(ScriptVariable variable)
    {
        if (_loopVariables.Contains(variable.Name))
        {
            return ExpressionType.Word;
        }

        Report(variable, RuleNames.Roots.Contains(variable.Name)
            ? RuleProblemWords.BareRoot(variable.Name)
            : RuleProblemWords.UnknownName(variable.Name, RuleNames.Roots));
        return ExpressionType.Unknown;
    }

    private ExpressionType TypeOfMember(ScriptMemberExpression member)
    {
        if (member is not { Target: ScriptVariable root, Member: { } name })
        {
            return Refuse(member);
        }

        if (root.Name == RuleNames.SettingsName)
        {
            return TypeOfSetting(member, name.Name);
        }

        if (!RuleNames.Roots.Contains(root.Name))
        {
            Report(root, RuleProblemWords.UnknownName(root.Name, RuleNames.Roots));
            return ExpressionType.Unknown;
        }

        if (Find(root.Name, name.Name) is not { } use)
        {
            string kind = root.Name == RuleNames.Pack ? FactVocabulary.PackKind : names.Kind;
            Report(member, RuleProblemWords.UnknownFact(root.Name, name.Name, kind, names.Vocabulary.NamesOf(kind)));
            return ExpressionType.Unknown;
        }

        Uses.Add(use);
        return ExpressionType.Of(use.Fact.Type, use.Fact.Unit);
    }

    private ExpressionType TypeOfSetting(ScriptMemberExpression member, string name)
    {
        if (!names.Settings.TryGetValue(name, out RuleSetting? setting))
        {
            Report(member, RuleProblemWords.UnknownSetting(name, names.Settings.Keys.Order(StringComparer.Ordinal)));
            return ExpressionType.Unknown;
        }

        Uses.Add(setting);
        return new ExpressionType(ExpressionKind.Number, setting.Unit);
    }

    private ExpressionType TypeOfUnary(ScriptUnaryExpression unary)
    {
        switch (unary.Operator)
        {
            case ScriptUnaryOperator.Not:
                Demand(unary.Right, ExpressionKind.YesNo, "what follows '!'");
                return ExpressionType.YesNo;
            case ScriptUnaryOperator.Negate or ScriptUnaryOperator.Plus:
                return Demand(unary.Right, ExpressionKind.Number, $"what follows '{unary.OperatorAsText}'");
            default:
                return Refuse(unary);
        }
    }

    private ExpressionType TypeOfConditional(ScriptConditionalExpression conditional)
    {
        Demand(conditional.Condition, ExpressionKind.YesNo, "what stands before '?'");
        ExpressionType then = TypeOf(conditional.ThenValue);
        ExpressionType otherwise = TypeOf(conditional.ElseValue);
        if (then.Kind != otherwise.Kind && then.Kind != ExpressionKind.Unknown && otherwise.Kind != ExpressionKind.Unknown)
        {
            Report(conditional, RuleProblemWords.DifferentKinds(conditional.ToString(), then, otherwise));
        }

        return then.Unit == otherwise.Unit ? then : new ExpressionType(then.Kind);
    }

    private ExpressionType TypeOfCall(ExpressionType? piped, ScriptExpression? callee)
    {
        if (callee is ScriptPipeCall chained)
        {
            return TypeOfCall(TypeOfCall(piped, chained.From), chained.To);
        }

        ScriptVariable? target = callee as ScriptVariable ?? (callee as ScriptFunctionCall)?.Target as ScriptVariable;
        if (target is null)
        {
            if (callee is not null)
            {
                Report(callee, RuleProblemWords.WantsFilter(callee.ToString()));
            }

            return ExpressionType.Unknown;
        }

        if (!RuleFunctions.All.TryGetValue(target.Name, out RuleFunction? function))
        {
            Report(target, RuleProblemWords.UnknownFunction(target.Name));
            return ExpressionType.Unknown;
        }

        List<ExpressionType> arguments = piped is { } first ? [first] : [];
        if (callee is ScriptFunctionCall call)
        {
            arguments.AddRange(call.Arguments.Select(TypeOf));
        }

        return TypeOfCall(target, function, arguments);
    }

    private ExpressionType TypeOfCall(ScriptVariable target, RuleFunction function, List<ExpressionType> arguments)
    {
        if (arguments.Count != function.Takes.Count)
        {
            Report(target, RuleProblemWords.ArgumentCount(function.Name, function.Takes.Count, arguments.Count));
            return ExpressionType.Unknown;
        }

        for (int i = 0; i < arguments.Count; i++)
        {
            if (!arguments[i].IsOrUnknown(function.Takes[i]))
            {
                string wanted = new ExpressionType(function.Takes[i]).InWords;
                Report(target, RuleProblemWords.WantsKind($"value {i + 1} of '{function.Name}'", wanted, arguments[i]));
                return ExpressionType.Unknown;
            }
        }

        string? unit = arguments[0].Unit;
        if (function.Unit is not null && unit is not null && unit != function.Unit)
        {
            Report(target, RuleProblemWords.FilterUnit(function.Name, function.Unit, unit));
        }

        if (!function.KeepsUnit)
        {
            return new ExpressionType(function.Gives);
        }

        string? other = arguments.Select(a => a.Unit).FirstOrDefault(u => u is not null);
        if (arguments.Find(a => a.Unit is not null && a.Unit != other) is { Unit: { } odd })
        {
            Report(target, RuleProblemWords.DifferentUnits(function.Name, other!, odd));
        }

        return new ExpressionType(function.Gives, other);
    }

    internal ExpressionType Refuse(ScriptNode node)
    {
        Report(node, RuleProblemWords.NotAllowed(node is ScriptExpression ? node.ToString() : ""));
        return ExpressionType.Unknown;
    }
}
