using WireCheck.Description;
using WireCheck.Facts;
using WireCheck.Rules;
using WireCheck.Text;

namespace WireCheck.Findings;

/// <summary>The outcome of a check: findings in order, what could not be judged, and the nearest margins.</summary>
/// <param name="Findings">Worst first, then in the order of rules and parts; waived ones after all that stand.</param>
/// <param name="Undecided">What rules could not judge, in the order of rules and parts.</param>
/// <param name="NearestMargins">Passed comparisons nearest to their limit, at most <see cref="MarginsKept"/>, one per rule.</param>
/// <param name="Counts">Counts of all findings.</param>
public sealed record FindingList(
    IReadOnlyList<Finding> Findings, IReadOnlyList<Undecided> Undecided, IReadOnlyList<Margin> NearestMargins, FindingCounts Counts)
{
    /// <summary>How many margins a report tells.</summary>
    public const int MarginsKept = 5;

    /// <summary>Makes findings of the judgements about a box, and judges its waivers by the same sets.</summary>
    /// <param name="judgements">What the rules said about the parts.</param>
    /// <param name="waivers">The description's waivers.</param>
    /// <param name="pack">The facts of the whole box, for the rules about waivers.</param>
    /// <param name="sets">Rule sets in use.</param>
    /// <param name="settings">Their settings in SI.</param>
    /// <param name="today">The day on which waivers are judged.</param>
    /// <param name="problems">Receives a rule that passes its bounds while it runs.</param>
    public static FindingList Make(
        Judgements judgements,
        IReadOnlyList<Waiver> waivers,
        FactSubject pack,
        IReadOnlyList<RuleSet> sets,
        IReadOnlyDictionary<string, double> settings,
        DateOnly today,
        ProblemList problems)
    {
        WaiverBook book = new(waivers, today);
        List<Finding> all = [.. judgements.Found.Select(j => MakeFinding(j, book.Match(j)))];
        if (waivers.Count > 0)
        {
            HashSet<string> ids = [.. sets.SelectMany(set => set.Rules).Select(rule => rule.Id)];
            all.AddRange(JudgeWaivers(book.Subjects(ids), pack, sets, settings, problems).Select(j => MakeFinding(j, null)));
        }

        // The sort is stable, so that within a severity the order of rules and parts stays.
        List<Finding> ordered = [.. all.OrderBy(f => f.Waived is not null).ThenByDescending(f => f.Severity)];
        return new FindingList(ordered, judgements.Undecided, Nearest(judgements.Margins), Count(ordered, judgements.Undecided.Count));
    }

    private static IReadOnlyList<Judgement> JudgeWaivers(
        IReadOnlyList<FactSubject> waivers,
        FactSubject pack,
        IReadOnlyList<RuleSet> sets,
        IReadOnlyDictionary<string, double> settings,
        ProblemList problems)
    {
        List<RuleSet> aboutWaivers =
            [.. sets.Select(set => set with { Rules = [.. set.Rules.Where(rule => rule.Kind == WaiverFacts.Kind)] })];
        return RuleEngine.Judge(new FactTable(pack, waivers), aboutWaivers, settings, problems).Found;
    }

    private static Finding MakeFinding(Judgement judgement, Waived? waived) => new(
        judgement.Rule.Id,
        judgement.Rule.Title,
        judgement.Severity,
        judgement.Subject.Id,
        judgement.Subject.Kind,
        judgement.Message,
        judgement.Mend,
        judgement.Values,
        judgement.Place,
        judgement.Subject.Position,
        judgement.Rule.Why,
        judgement.Rule.Source,
        judgement.Subject.AssumedFor([.. judgement.Values.Select(v => v.Name)]),
        waived)
    {
        Edits = judgement.Edits,
    };

    /// <summary>
    /// One margin per rule: the same limit is not told for every conductor of a box. Ties go to the first rule.
    /// </summary>
    private static IReadOnlyList<Margin> Nearest(IReadOnlyList<Margin> margins) =>
    [
        .. margins.GroupBy(m => m.Rule.Id).Select(ofRule => ofRule.MaxBy(m => m.Share)!)
            .OrderByDescending(m => m.Share).Take(MarginsKept),
    ];

    private static FindingCounts Count(List<Finding> findings, int undecided)
    {
        int Standing(Severity severity) => findings.Count(f => f.Waived is null && f.Severity == severity);
        return new FindingCounts(
            Standing(Severity.Danger),
            Standing(Severity.Fault),
            Standing(Severity.Advice),
            findings.Count(f => f.Waived is not null),
            undecided);
    }
}
