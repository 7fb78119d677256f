using WireCheck.Findings;
using WireCheck.Rules;

namespace WireCheck.Tolerances;

/// <summary>A margin that the box has as it is described and loses at an end of its tolerances.</summary>
/// <param name="Finding">The finding at the corner at which it is worst.</param>
/// <param name="Corners">How many corners have it.</param>
/// <param name="Needs">The ends that all of those corners share: what it takes to lose it.</param>
public sealed record LostMargin(Finding Finding, int Corners, IReadOnlyList<(string Name, bool High)> Needs);

/// <summary>A margin that survives every corner.</summary>
/// <param name="Described">As the box is described.</param>
/// <param name="Worst">At the corner at which it is thinnest.</param>
/// <param name="Corner">That corner, in words.</param>
public sealed record ThinMargin(Margin Described, Margin Worst, string Corner);

/// <summary>What becomes of a judged box at every end of its tolerances.</summary>
/// <param name="Tolerances">The tolerances.</param>
/// <param name="Corners">How many corners were solved and judged.</param>
/// <param name="Lost">Margins that do not survive, worst severity first, then in the order of rules and parts.</param>
/// <param name="Thinnest">Of those that survive, the nearest to their limits at their worst corner, one for each rule.</param>
public sealed record ToleranceResult(
    ToleranceSet Tolerances, int Corners, IReadOnlyList<LostMargin> Lost, IReadOnlyList<ThinMargin> Thinnest)
{
    /// <summary>The verdict that the margins which do not survive make.</summary>
    public Verdict Verdict => Loses(Severity.Danger) ? Verdict.Dangerous
        : Loses(Severity.Fault) ? Verdict.Faulty
        : Lost.Count > 0 ? Verdict.PassesWithAdvice
        : Verdict.Passes;

    /// <summary>True when a margin of at least that severity does not survive.</summary>
    public bool Loses(Severity threshold) => Lost.Any(l => l.Finding.Severity >= threshold);

    /// <summary>Compares the judged box with the same box at its corners.</summary>
    /// <param name="tolerances">The tolerances.</param>
    /// <param name="described">The box as it is described.</param>
    /// <param name="corners">The box at each corner.</param>
    public static ToleranceResult Of(
        ToleranceSet tolerances, JudgedBox described, IReadOnlyList<(ToleranceCorner Corner, JudgedBox Box)> corners) =>
        new(tolerances, corners.Count, LostIn(described, corners), ThinnestIn(described, corners));

    private static IReadOnlyList<LostMargin> LostIn(JudgedBox described, IReadOnlyList<(ToleranceCorner Corner, JudgedBox Box)> corners)
    {
        HashSet<(string, string)> known = [.. described.Findings.Findings.Select(f => (f.Rule, f.Part))];
        return
        [
            .. corners
                .SelectMany(c => c.Box.Findings.Findings
                    .Where(f => f.Waived is null && !known.Contains((f.Rule, f.Part)))
                    .Select(f => (c.Corner, Finding: f, Used: UsedBy(c.Box, f))))
                .GroupBy(f => (f.Finding.Rule, f.Finding.Part))
                .Select(same => new LostMargin(
                    same.OrderByDescending(f => f.Finding.Severity).ThenByDescending(f => f.Used).First().Finding,
                    same.Count(),
                    [.. same.First().Corner.Ends.Where(end => same.All(f => f.Corner.Ends.Contains(end)))]))
                .OrderByDescending(l => l.Finding.Severity),
        ];
    }

    private static double UsedBy(JudgedBox box, Finding finding) =>
        box.Judgements.Found.FirstOrDefault(j => j.Rule.Id == finding.Rule && j.Subject.Id == finding.Part)?.Failed?.Share ?? 0;

    private static IReadOnlyList<ThinMargin> ThinnestIn(JudgedBox described, IReadOnlyList<(ToleranceCorner Corner, JudgedBox Box)> corners)
    {
        Dictionary<(string, string), ThinMargin> worst = [];
        foreach (Margin margin in described.Judgements.Margins)
        {
            worst.TryAdd((margin.Rule.Id, margin.Subject.Id), new ThinMargin(margin, margin, ToleranceCorner.Described.Words));
        }

        foreach ((ToleranceCorner corner, JudgedBox box) in corners)
        {
            HashSet<(string, string)> passed = [];
            foreach (Margin margin in box.Judgements.Margins)
            {
                (string, string) key = (margin.Rule.Id, margin.Subject.Id);
                passed.Add(key);
                if (worst.TryGetValue(key, out ThinMargin? held) && margin.Share > held.Worst.Share)
                {
                    worst[key] = held with { Worst = margin, Corner = corner.Words };
                }
            }

            foreach ((string, string) lost in worst.Keys.Where(k => !passed.Contains(k)).ToList())
            {
                worst.Remove(lost);
            }
        }

        // Only those that the tolerances move: the others stand among the margins of the report.
        return
        [
            .. worst.Values.Where(m => m.Worst.Share > m.Described.Share)
                .GroupBy(m => m.Described.Rule.Id).Select(ofRule => ofRule.MaxBy(m => m.Worst.Share)!)
                .OrderByDescending(m => m.Worst.Share).Take(FindingList.MarginsKept),
        ];
    }
}
