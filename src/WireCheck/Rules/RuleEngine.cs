using Scriban.Syntax;
using WireCheck.Facts;
using WireCheck.Quantities;
using WireCheck.Rules.Expressions;
using WireCheck.Text;

namespace WireCheck.Rules;

/// <summary>Facts in, judgements out: tries every rule on every subject of its kind.</summary>
public sealed class RuleEngine
{
    private readonly IReadOnlyDictionary<string, double> _settings;
    private readonly RuleSandbox _sandbox;
    private readonly FactSubject _pack;
    private readonly ProblemList _problems;
    private readonly List<Judgement> _found = [];
    private readonly List<Undecided> _undecided = [];
    private readonly List<Margin> _margins = [];

    private RuleEngine(
        FactSubject pack, IReadOnlyDictionary<string, double> settings, ProblemList problems, CancellationToken stop)
    {
        _pack = pack;
        _settings = settings;
        _problems = problems;
        _sandbox = new RuleSandbox(pack, stop);
        _sandbox.UseSettings(settings);
    }

    /// <summary>Judges a box.</summary>
    /// <param name="table">Facts of every part.</param>
    /// <param name="sets">Rule sets, checked before; a rule id that stands in several is tried once, from the first.</param>
    /// <param name="settings">A value in SI for every setting of the sets, as <see cref="SettingValues.Resolve"/> gives it.</param>
    /// <param name="problems">Receives a rule that passes the sandbox's bounds while it runs; a fault of the rule.</param>
    /// <param name="stop">Ends the run.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Judgements Judge(
        FactTable table,
        IReadOnlyList<RuleSet> sets,
        IReadOnlyDictionary<string, double> settings,
        ProblemList problems,
        CancellationToken stop = default)
    {
        RuleEngine engine = new(table.Pack, settings, problems, stop);
        ILookup<string, FactSubject> byKind = table.Subjects.Prepend(table.Pack).ToLookup(s => s.Kind, StringComparer.Ordinal);
        HashSet<(string Id, string Kind)> tried = [];
        foreach (Rule rule in sets.SelectMany(set => set.Rules).Where(rule => tried.Add((rule.Id, rule.Kind))))
        {
            foreach (FactSubject subject in byKind[rule.Kind])
            {
                stop.ThrowIfCancellationRequested();
                engine.Try(rule, subject);
            }
        }

        return new Judgements(engine._found, engine._undecided, engine._margins);
    }

    private void Try(Rule rule, FactSubject subject)
    {
        try
        {
            _sandbox.UseSubject(subject);
            if (rule.When is null || IsTrue(rule.When.Compiled))
            {
                Judge(rule, subject);
            }
        }
        catch (ScriptRuntimeException error) when (error is not ScriptAbortException)
        {
            _problems.Add(rule.Position, RuleProblemWords.WhileRunning(rule.Id, subject.Id, error.OriginalMessage));
        }
    }

    private void Judge(Rule rule, FactSubject subject)
    {
        CompiledExpression require = rule.Require.Compiled;
        Margin? compared = null;
        bool? passes = require.Comparison is { } comparison
            ? Compare(rule, subject, require, comparison, out compared)
            : _sandbox.Evaluate(require.Root) as bool?;
        IReadOnlyList<string> missing = _sandbox.NothingMissing ? [] : _sandbox.Missing(require.Uses);
        if (missing.Count > 0)
        {
            _undecided.Add(new Undecided(rule, subject, missing));
        }
        else if (passes != true)
        {
            _found.Add(Find(rule, subject, compared) with { Failed = compared });
        }
    }

    /// <summary>
    /// A comparison is evaluated side by side, so that the margin costs nothing more. Null when a side has no value.
    /// </summary>
    private bool? Compare(Rule rule, FactSubject subject, CompiledExpression require, Comparison comparison, out Margin? margin)
    {
        margin = null;
        object? usedValue = _sandbox.Evaluate(comparison.Used);
        if (!_sandbox.NothingMissing && _sandbox.Missing(require.Uses).Count > 0)
        {
            return null;
        }

        object? limitValue = _sandbox.Evaluate(comparison.Limit);
        if (RuleFunctions.ToNumber(usedValue) is not double used || RuleFunctions.ToNumber(limitValue) is not double limit)
        {
            return null;
        }

        bool passes = comparison.EqualPasses ? used <= limit : used < limit;
        if (used > 0 && double.IsFinite(limit))
        {
            margin = new Margin(rule, subject, used, limit, comparison.Unit, comparison.Floor);
            if (passes)
            {
                _margins.Add(margin);
            }
        }

        return passes;
    }

    private bool IsTrue(CompiledExpression expression) => _sandbox.Evaluate(expression.Root) is true;

    private Judgement Find(Rule rule, FactSubject subject, Margin? compared)
    {
        Severity severity = rule.Severity;
        List<ExpressionUses> uses = [rule.Require.Compiled.Uses, rule.Says.Compiled.Uses, rule.Mend.Compiled.Uses];
        if (rule.When is not null)
        {
            uses.Add(rule.When.Compiled.Uses);
        }

        if (rule.Graded.FirstOrDefault(grade => IsTrue(grade.When.Compiled)) is { } graded)
        {
            severity = graded.Severity;
            uses.Add(graded.When.Compiled.Uses);
        }

        int digits = compared is null ? QuantityText.UsualDigits : QuantityText.DigitsApart(compared.Used, compared.Limit);
        string message = OneLine(_sandbox.Render(rule.Says.Compiled.Template, digits));
        string mend = OneLine(_sandbox.Render(rule.Mend.Compiled.Template));
        List<JudgedValue> values = ValuesOf(uses, subject);
        return new Judgement(rule, subject, severity, message, mend, values, values.FirstOrDefault(v => v.Place is not null)?.Place)
        {
            Edits = EditsOf(rule, subject),
        };
    }

    private List<OfferedEdit> EditsOf(Rule rule, FactSubject subject)
    {
        List<OfferedEdit> edits = [];
        foreach (RuleEdit edit in rule.Edits)
        {
            if (edit.When is null || IsTrue(edit.When.Compiled))
            {
                string own = subject.Kind == FactVocabulary.PackKind ? "" : subject.Id;
                string part = edit.Part is null ? own : OneLine(_sandbox.Render(edit.Part.Compiled.Template));
                edits.Add(new OfferedEdit(part, edit.Key, OneLine(_sandbox.Render(edit.Value.Compiled.Template)), edit.Safer));
            }
        }

        return edits;
    }

    private List<JudgedValue> ValuesOf(List<ExpressionUses> uses, FactSubject subject)
    {
        List<JudgedValue> values = [];
        foreach (FactUse use in uses.SelectMany(u => u.Facts).Distinct())
        {
            if ((use.OfPack ? _pack : subject).Find(use.Fact.Name) is { } fact)
            {
                values.Add(new JudgedValue(use.Name, fact.Value, fact.Definition.Unit, fact.Place));
            }
        }

        foreach (RuleSetting setting in uses.SelectMany(u => u.Settings).Distinct())
        {
            values.Add(new JudgedValue($"{RuleNames.SettingsName}.{setting.Name}", _settings[setting.Name], setting.Unit, null));
        }

        return values;
    }

    /// <summary>Words of a rule are one paragraph, however the rule file breaks its lines.</summary>
    private static string OneLine(string words) =>
        string.Join(' ', words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
