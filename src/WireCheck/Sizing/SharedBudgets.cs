using WireCheck.Findings;

namespace WireCheck.Sizing;

/// <summary>Limits that several wires share, such as the drop on the way to a load: solved together for the least weight.</summary>
internal sealed class SharedBudgets(SizeSearch search)
{
    /// <summary>
    /// Raises wires until the comparisons that stand are met, by the model; the same choice when no wire changes them, or all
    /// the wire there is would not do.
    /// </summary>
    internal int[] Meet(int[] choice, List<Finding> standing, int frozen)
    {
        Trial here = search.Try(choice);
        foreach (Finding finding in standing)
        {
            FindingKey key = FindingKey.Of(finding);
            if (here.Room(key) is null)
            {
                continue;
            }

            DropModel model = DropModel.Measure(search, choice, [key], larger: true, frozen);
            if (Meet(choice, model) is { } raised)
            {
                return raised;
            }
        }

        return choice;
    }

    /// <summary>
    /// The lightest wires by the model. A wire that then breaks a rule of its own, as one that is too thick for its terminal, is
    /// held a step below and the rest is solved again.
    /// </summary>
    private int[]? Meet(int[] choice, DropModel model)
    {
        int[] highest = Largest();
        for (int round = 0; round < MostRounds; round++)
        {
            (int[] Options, double Weight, double[] Room)? first = null;
            foreach ((int[] Options, double Weight, double[] Room) mixture in new LightestWires(search, model, choice, highest, [0]).All())
            {
                first = mixture;
                break;
            }

            int[] raised = first is { } lightest ? Put(choice, model, lightest.Options) : choice;
            if (Growth.Same(raised, choice))
            {
                return null;
            }

            if (!Cap(choice, raised, highest))
            {
                return raised;
            }
        }

        return null;
    }

    /// <summary>Lowers the bound of every wire that was raised and is found at fault for it; false when there is none.</summary>
    private bool Cap(int[] choice, int[] raised, int[] highest)
    {
        Trial before = search.Try(choice);
        bool capped = false;
        foreach (Finding finding in search.Try(raised).Standing)
        {
            foreach (int value in before.Find(FindingKey.Of(finding)) is null ? search.OfPart(finding.Part) : [])
            {
                if (raised[value] > choice[value])
                {
                    highest[value] = Math.Min(highest[value], raised[value] - 1);
                    capped = true;
                }
            }
        }

        return capped;
    }

    private int[] Largest()
    {
        int[] largest = new int[search.Values.Count];
        for (int i = 0; i < largest.Length; i++)
        {
            largest[i] = search.Values[i].Options.Count - 1;
        }

        return largest;
    }

    /// <summary>
    /// The lightest wires that pass, from a choice in which none can be made smaller alone. The lightest mixture by the model is
    /// judged; where the judge disagrees the model is corrected by the difference, until no lighter one is left.
    /// </summary>
    /// <param name="choice">A choice that passes.</param>
    /// <param name="allowed">What is let stand.</param>
    /// <param name="forbids">What forbids the next smaller option of each value.</param>
    internal int[] Optimise(int[] choice, Allowance allowed, IReadOnlyList<Finding>[] forbids)
    {
        List<FindingKey> limits = LimitsIn(choice, forbids);
        if (limits.Count == 0)
        {
            return choice;
        }

        DropModel model = DropModel.Measure(search, choice, limits, larger: false, frozen: -1);
        int[] lowest = LowestWithout(limits, choice, model, allowed);
        double[] slack = new double[limits.Count];
        for (int c = 0; c < slack.Length; c++)
        {
            slack[c] = Slack * search.Try(choice).Scale(limits[c]);
        }

        return Lightest(choice, model, new LightestWires(search, model, lowest, Largest(), slack), allowed);
    }

    private int[] Lightest(int[] choice, DropModel model, LightestWires mixtures, Allowance allowed)
    {
        int[] best = choice;
        double bestWeight = WeightOf(choice, model);
        double[] error = new double[model.Limits.Count];
        HashSet<string> judged = [];
        for (int round = 0; round < MostRounds; round++)
        {
            (int[] Options, double Weight, double[] Room)? next = null;
            foreach ((int[] Options, double Weight, double[] Room) mixture in mixtures.All())
            {
                if (mixture.Weight >= bestWeight * (1 - Rounding))
                {
                    break;
                }

                if (Fits(mixture.Room, error) && !judged.Contains(string.Join(',', mixture.Options)))
                {
                    next = mixture;
                    break;
                }
            }

            if (next is not { } lightest)
            {
                break;
            }

            judged.Add(string.Join(',', lightest.Options));
            int[] candidate = Put(choice, model, lightest.Options);
            Trial trial = search.Try(candidate);
            if (trial.Passes(allowed))
            {
                (best, bestWeight) = (candidate, lightest.Weight);
            }

            for (int c = 0; c < error.Length; c++)
            {
                error[c] = (trial.Room(model.Limits[c]) ?? lightest.Room[c]) - lightest.Room[c];
            }
        }

        return best;
    }

    /// <summary>Comparisons that forbid a smaller wire, when more than one wire has a share in them.</summary>
    private List<FindingKey> LimitsIn(int[] choice, IReadOnlyList<Finding>[] forbids)
    {
        List<FindingKey> limits = [];
        Trial here = search.Try(choice);
        for (int value = 0; value < forbids.Length; value++)
        {
            foreach (Finding finding in search.Values[value].IsWire ? forbids[value] : [])
            {
                FindingKey key = FindingKey.Of(finding);
                if (here.Room(key) is not null && !limits.Contains(key))
                {
                    limits.Add(key);
                }
            }
        }

        DropModel all = DropModel.Measure(search, choice, limits, larger: false, frozen: -1);
        List<FindingKey> shared = [];
        for (int c = 0; c < limits.Count; c++)
        {
            if (all.SharedBy(c) > 1)
            {
                shared.Add(limits[c]);
            }
        }

        return shared;
    }

    /// <summary>For each wire of the model the smallest option that only the shared limits forbid.</summary>
    private int[] LowestWithout(List<FindingKey> limits, int[] choice, DropModel model, Allowance allowed)
    {
        int[] lowest = (int[])choice.Clone();
        foreach (int wire in model.Wires)
        {
            while (lowest[wire] > search.Values[wire].Lowest)
            {
                Trial trial = search.Try(SizeSearch.With(choice, wire, lowest[wire] - 1));
                if (trial.Beyond(allowed).Exists(f => !limits.Contains(FindingKey.Of(f))))
                {
                    break;
                }

                lowest[wire]--;
            }
        }

        return lowest;
    }

    private static bool Fits(double[] room, double[] error)
    {
        for (int c = 0; c < room.Length; c++)
        {
            if (room[c] + error[c] < 0)
            {
                return false;
            }
        }

        return true;
    }

    private double WeightOf(int[] choice, DropModel model)
    {
        double sum = 0;
        foreach (int wire in model.Wires)
        {
            sum += search.Values[wire].Options[choice[wire]].Weight;
        }

        return sum;
    }

    private static int[] Put(int[] choice, DropModel model, int[] options)
    {
        int[] put = (int[])choice.Clone();
        for (int i = 0; i < options.Length; i++)
        {
            put[model.Wires[i]] = options[i];
        }

        return put;
    }

    /// <summary>How far the model may be wrong, as a part of the limit: mixtures beyond that are not judged.</summary>
    private const double Slack = 0.05;

    /// <summary>A part of the weight that is rounding.</summary>
    private const double Rounding = 1e-9;

    /// <summary>Mixtures that are judged at most.</summary>
    private const int MostRounds = 60;
}
