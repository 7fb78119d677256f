using WireCheck.Findings;

namespace WireCheck.Sizing;

/// <summary>
/// Raises what stands in the way of the rules, a step at a time, until nothing stands but what no step takes away. As each value
/// only rises, and only for a finding that asks for it, the end is small; what rose for nothing is put back.
/// </summary>
internal sealed class Growth(SizeSearch search, Blame blame, SharedBudgets budgets)
{
    /// <summary>Raises from a choice until only what sizes cannot mend stands; that is noted as let stand.</summary>
    /// <param name="start">Where to begin.</param>
    /// <param name="allowed">Receives what is let stand.</param>
    /// <param name="frozen">A value that must not change; -1 for none.</param>
    internal int[] Grow(int[] start, Allowance allowed, int frozen = -1)
    {
        int[] choice = (int[])start.Clone();
        Dictionary<int, HashSet<FindingKey>> reasons = [];
        while (true)
        {
            List<Finding> standing = search.Try(choice).Beyond(allowed);
            if (standing.Count == 0)
            {
                return choice;
            }

            // What is known to help first, then what trying finds, then what wires can do together, and classes last.
            int[] raised = Raise(choice, standing, reasons, frozen, wireOnly: true, known: true);
            raised = Same(raised, choice) ? Raise(choice, standing, reasons, frozen, wireOnly: true, known: false) : raised;
            raised = Same(raised, choice) ? budgets.Meet(choice, standing, frozen) : raised;
            raised = Same(raised, choice) ? Raise(choice, standing, reasons, frozen, wireOnly: false, known: false) : raised;

            if (Same(raised, choice))
            {
                GiveUp(choice, start, standing, allowed, reasons);
            }
            else
            {
                choice = raised;
            }
        }
    }

    private int[] Raise(
        int[] choice, List<Finding> standing, Dictionary<int, HashSet<FindingKey>> reasons, int frozen, bool wireOnly, bool known)
    {
        int[] raised = (int[])choice.Clone();
        foreach (Finding finding in standing)
        {
            // What another part loses on the way is first made up by wire; a larger class of it is the last resort.
            bool shared = search.OfPart(finding.Part).Count == 0 && search.Try(choice).Room(FindingKey.Of(finding)) is not null;
            foreach (int value in blame.Raise(choice, finding, frozen, shared && wireOnly, known))
            {
                raised[value] = choice[value] + 1;
                if (!reasons.TryGetValue(value, out HashSet<FindingKey>? why))
                {
                    reasons[value] = why = [];
                }

                why.Add(FindingKey.Of(finding));
            }
        }

        return raised;
    }

    /// <summary>What nothing takes away is let stand; what rose for that alone goes back to where it began.</summary>
    private static void GiveUp(
        int[] choice, int[] start, List<Finding> standing, Allowance allowed, Dictionary<int, HashSet<FindingKey>> reasons)
    {
        HashSet<FindingKey> hopeless = [];
        foreach (Finding finding in standing)
        {
            allowed.Let(finding);
            hopeless.Add(FindingKey.Of(finding));
        }

        foreach ((int value, HashSet<FindingKey> why) in reasons)
        {
            if (why.IsSubsetOf(hopeless))
            {
                choice[value] = start[value];
            }
        }
    }

    internal static bool Same(int[] one, int[] other) => one.AsSpan().SequenceEqual(other);
}
