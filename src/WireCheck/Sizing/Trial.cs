using WireCheck.Findings;
using WireCheck.Rules;

namespace WireCheck.Sizing;

/// <summary>What a finding is about: a rule and a part.</summary>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Part">Id of the part.</param>
public sealed record FindingKey(string Rule, string Part)
{
    internal static FindingKey Of(Finding finding) => new(finding.Rule, finding.Part);
}

/// <summary>What the rules say of one choice of sizes.</summary>
public sealed class Trial
{
    private readonly Dictionary<FindingKey, Margin> _compared = [];

    /// <summary>Keeps what the rules said.</summary>
    /// <param name="findings">Findings; those that are waived are left out.</param>
    /// <param name="judgements">The judgements behind them, for how near each limit is.</param>
    public Trial(FindingList findings, Judgements judgements)
    {
        foreach (Finding finding in findings.Findings)
        {
            if (finding.Waived is null)
            {
                Standing.Add(finding);
            }
        }

        foreach (Margin margin in judgements.Margins)
        {
            _compared[new FindingKey(margin.Rule.Id, margin.Subject.Id)] = margin;
        }

        foreach (Judgement judgement in judgements.Found)
        {
            if (judgement.Failed is { } compared)
            {
                _compared[new FindingKey(judgement.Rule.Id, judgement.Subject.Id)] = compared;
            }
        }
    }

    /// <summary>Findings that are not waived.</summary>
    public List<Finding> Standing { get; } = [];

    /// <summary>
    /// Room left to the limit of a comparison, in the unit of what is compared; negative when the rule fails, null where it
    /// compares no two numbers.
    /// </summary>
    public double? Room(FindingKey key) => _compared.TryGetValue(key, out Margin? margin) ? margin.Limit - margin.Used : null;

    /// <summary>How large the compared numbers are, in the same unit; 0 where there are none.</summary>
    public double Scale(FindingKey key) =>
        _compared.TryGetValue(key, out Margin? margin) ? Math.Max(Math.Abs(margin.Limit), Math.Abs(margin.Used)) : 0;

    /// <summary>True when nothing stands but what is let stand, and nothing worse than it was.</summary>
    public bool Passes(Allowance allowed) => Standing.TrueForAll(allowed.Covers);

    /// <summary>Findings that are not let stand.</summary>
    public List<Finding> Beyond(Allowance allowed) => Standing.FindAll(f => !allowed.Covers(f));

    /// <summary>The finding of that rule and part, or null.</summary>
    public Finding? Find(FindingKey key) => Standing.Find(f => f.Rule == key.Rule && f.Part == key.Part);
}

/// <summary>Findings that no choice of sizes takes away, which are therefore let stand.</summary>
public sealed class Allowance
{
    private readonly Dictionary<FindingKey, Severity> _severities = [];
    private readonly HashSet<string> _rules = new(StringComparer.Ordinal);

    /// <summary>Lets a finding stand at its severity or a lesser one.</summary>
    internal void Let(Finding finding)
    {
        FindingKey key = FindingKey.Of(finding);
        _severities[key] = _severities.TryGetValue(key, out Severity held) && held > finding.Severity ? held : finding.Severity;
    }

    /// <summary>Lets every finding of a rule stand that is less than a danger.</summary>
    internal void LetRule(string rule) => _rules.Add(rule);

    /// <summary>True when it is let stand.</summary>
    public bool Covers(Finding finding) =>
        (finding.Severity < Severity.Danger && _rules.Contains(finding.Rule)) || CoversAlone(finding);

    private bool CoversAlone(Finding finding) =>
        _severities.TryGetValue(FindingKey.Of(finding), out Severity severity) && finding.Severity <= severity;

    /// <summary>How many are let stand.</summary>
    public int Count => _severities.Count;
}
