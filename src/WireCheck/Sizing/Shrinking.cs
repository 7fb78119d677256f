using WireCheck.Findings;

namespace WireCheck.Sizing;

/// <summary>Takes away what is not needed, and keeps for each value what forbids the next smaller one.</summary>
internal sealed class Shrinking(SizeSearch search, Allowance allowed)
{
    /// <summary>What forbids the next lighter option of each value; empty where there is none.</summary>
    internal IReadOnlyList<Finding>[] Forbids { get; private set; } = [];

    /// <summary>Makes values smaller, the heaviest saving first, until none can be made smaller alone.</summary>
    internal int[] Shrink(int[] start)
    {
        int[] choice = (int[])start.Clone();
        bool changed = true;
        while (changed)
        {
            changed = false;
            Forbids = new IReadOnlyList<Finding>[choice.Length];
            foreach (int value in BySaving(choice))
            {
                changed |= ShrinkOne(choice, value);
            }
        }

        return choice;
    }

    private bool ShrinkOne(int[] choice, int value)
    {
        Forbids[value] = [];
        bool changed = false;
        bool again = true;
        while (again)
        {
            again = false;
            foreach (int option in Lighter(search.Values[value], choice[value]))
            {
                Trial trial = search.Try(SizeSearch.With(choice, value, option));
                if (trial.Passes(allowed))
                {
                    choice[value] = option;
                    Forbids[value] = [];
                    (changed, again) = (true, true);
                    break;
                }

                if (Forbids[value].Count == 0)
                {
                    Forbids[value] = trial.Beyond(allowed);
                }
            }
        }

        return changed;
    }

    /// <summary>
    /// Options to try instead: those of the next smaller step, and of the same step those before it; where money decides, every
    /// one that costs less, the dearest of them first.
    /// </summary>
    private static List<int> Lighter(SizedValue value, int option)
    {
        double weight = value.Options[option].Weight;
        List<int> lighter = [];
        double next = double.NegativeInfinity;
        for (int i = value.Lowest; i < value.Options.Count; i++)
        {
            double other = value.Options[i].Weight;
            if (other < weight || (other == weight && i < option))
            {
                lighter.Add(i);
                next = other < weight ? Math.Max(next, other) : next;
            }
        }

        if (value.Options[option].Price is null)
        {
            lighter.RemoveAll(i => value.Options[i].Weight < next);
        }

        lighter.Sort((a, b) => value.Options[a].Weight != value.Options[b].Weight
            ? value.Options[b].Weight.CompareTo(value.Options[a].Weight) : a.CompareTo(b));
        return lighter;
    }

    private List<int> BySaving(int[] choice)
    {
        List<int> order = [];
        double[] saving = new double[choice.Length];
        for (int i = 0; i < choice.Length; i++)
        {
            order.Add(i);
            SizedValue value = search.Values[i];
            saving[i] = !value.IsWire ? double.MaxValue
                : choice[i] > value.Lowest ? value.Options[choice[i]].Weight - value.Options[choice[i] - 1].Weight : 0;
        }

        // A stable order: equal savings stay in the order of the file.
        order.Sort((a, b) => saving[a] == saving[b] ? a.CompareTo(b) : saving[b].CompareTo(saving[a]));
        return order;
    }
}
