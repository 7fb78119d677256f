using WireCheck.Findings;

namespace WireCheck.Sizing;

/// <summary>
/// Tells why a finding stands: for the value that would have to bend, which rules forbid each of its options when everything
/// else may grow, and the fewest of these rules that leave none.
/// </summary>
internal sealed class ConflictFinder(SizeSearch search, Blame blame, Growth growth, Allowance allowed)
{
    /// <summary>A conflict for each finding that stands.</summary>
    internal List<Conflict> Find(int[] choice, Trial whole)
    {
        List<Conflict> conflicts = [];
        foreach (Finding finding in whole.Standing)
        {
            conflicts.Add(Find(choice, finding));
        }

        return conflicts;
    }

    private Conflict Find(int[] choice, Finding finding)
    {
        foreach (int value in blame.Named(finding))
        {
            if (search.Checks < MostChecks && Against(choice, finding, value) is { Count: > 1 } rules)
            {
                return new Conflict(finding, search.Values[value], rules);
            }
        }

        return new Conflict(finding, null, [finding.Rule]);
    }

    /// <summary>
    /// Rules of which none can be left out and which together forbid every option of a value; empty when an option is left, one
    /// when that rule forbids them all.
    /// </summary>
    private List<string> Against(int[] choice, Finding finding, int value)
    {
        FindingKey key = FindingKey.Of(finding);
        List<HashSet<string>> broken = [];
        for (int option = search.Values[value].Lowest; option < search.Values[value].Options.Count; option++)
        {
            Allowance left = new();
            int[] grown = growth.Grow(SizeSearch.With(choice, value, option), left, value);
            HashSet<string> rules = [];
            foreach (Finding still in search.Try(grown).Standing)
            {
                if (!allowed.Covers(still) || FindingKey.Of(still) == key)
                {
                    rules.Add(still.Rule);
                }
            }

            broken.Add(rules);
        }

        return Fewest(broken);
    }

    /// <summary>Past this many checks of the box no more is asked: what stands is told without the rules against it.</summary>
    private const int MostChecks = 600;

    /// <summary>Leaves out one rule after the other as long as every option still breaks one of the rest.</summary>
    private static List<string> Fewest(List<HashSet<string>> broken)
    {
        SortedSet<string> all = new(broken.SelectMany(b => b), StringComparer.Ordinal);
        List<string> kept = [.. all];
        if (!broken.TrueForAll(b => b.Overlaps(kept)))
        {
            return [];
        }

        foreach (string rule in all)
        {
            List<string> without = kept.FindAll(r => r != rule);
            if (broken.TrueForAll(b => b.Overlaps(without)))
            {
                kept = without;
            }
        }

        return kept;
    }
}
