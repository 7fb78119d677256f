namespace WireCheck.Sizing;

/// <summary>
/// The lightest options of several wires that together keep within their limits, by <see cref="DropModel"/>: wire after wire is
/// added to every mixture so far, and a mixture that another beats in weight and in every room is dropped. Where sizes were
/// continuous and one limit alone counted, the sections would go as the square root of the currents.
/// </summary>
internal sealed class LightestWires
{
    private readonly DropModel _model;
    private readonly SizeSearch _search;
    private readonly int[] _lowest;
    private readonly int[] _highest;
    private readonly List<Mixture> _ends;

    /// <summary>Works out all mixtures worth having.</summary>
    /// <param name="search">The values.</param>
    /// <param name="model">What each wire does to each limit.</param>
    /// <param name="lowest">Smallest option of each value.</param>
    /// <param name="highest">Largest option of each value.</param>
    /// <param name="slack">How far a limit may be passed by the model, as a number in its unit: the model is near, not exact.</param>
    internal LightestWires(SizeSearch search, DropModel model, int[] lowest, int[] highest, double[] slack)
    {
        _highest = highest;
        _search = search;
        _model = model;
        _lowest = lowest;
        _ends = [new Mixture(0, (double[])model.RoomHere.Clone(), null, -1)];
        double[] best = BestFrom(0);
        for (int wire = 0; wire < model.Wires.Count; wire++)
        {
            Subtract(best, BestOf(wire));
            _ends = Add(wire, best, slack);
        }
    }

    /// <summary>Mixtures, lightest first: the option of each wire of the model, and the room it leaves by the model.</summary>
    internal IEnumerable<(int[] Options, double Weight, double[] Room)> All()
    {
        foreach (Mixture end in _ends)
        {
            int[] options = new int[_model.Wires.Count];
            Mixture? at = end;
            for (int wire = options.Length - 1; wire >= 0; wire--, at = at.Before)
            {
                options[wire] = at!.Option;
            }

            yield return (options, end.Weight, end.Room);
        }
    }

    private List<Mixture> Add(int wire, double[] bestLater, double[] slack)
    {
        SizedValue value = _search.Values[_model.Wires[wire]];
        List<Mixture> grown = [];
        for (int option = _lowest[_model.Wires[wire]]; option <= _highest[_model.Wires[wire]]; option++)
        {
            double[] change = _model.RoomWith(wire, option);
            foreach (Mixture mixture in _ends)
            {
                double[] room = new double[change.Length];
                bool within = true;
                for (int c = 0; c < room.Length; c++)
                {
                    room[c] = mixture.Room[c] + change[c];
                    within &= room[c] + bestLater[c] >= -slack[c];
                }

                if (within)
                {
                    grown.Add(new Mixture(mixture.Weight + value.Options[option].Weight, room, mixture, option));
                }
            }
        }

        return Thin(Undominated(grown));
    }

    private static List<Mixture> Undominated(List<Mixture> all)
    {
        all.Sort((a, b) => a.Weight != b.Weight ? a.Weight.CompareTo(b.Weight) : b.Room[0].CompareTo(a.Room[0]));
        List<Mixture> kept = [];
        double best = double.NegativeInfinity;
        foreach (Mixture mixture in all)
        {
            bool beaten = mixture.Room.Length == 1 ? mixture.Room[0] <= best : kept.Exists(k => Beats(k, mixture));
            if (!beaten)
            {
                kept.Add(mixture);
                best = Math.Max(best, mixture.Room[0]);
            }
        }

        return kept;
    }

    private static bool Beats(Mixture one, Mixture other)
    {
        for (int c = 0; c < one.Room.Length; c++)
        {
            if (one.Room[c] < other.Room[c])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Keeps the work bounded: of too many mixtures every second one, and always the first and the last.</summary>
    private static List<Mixture> Thin(List<Mixture> all)
    {
        while (all.Count > Most)
        {
            List<Mixture> fewer = [];
            for (int i = 0; i < all.Count; i += 2)
            {
                fewer.Add(all[i]);
            }

            if (all.Count % 2 == 0)
            {
                fewer.Add(all[^1]);
            }

            all = fewer;
        }

        return all;
    }

    private double[] BestFrom(int wire)
    {
        double[] sum = new double[_model.Limits.Count];
        for (int i = wire; i < _model.Wires.Count; i++)
        {
            double[] best = BestOf(i);
            for (int c = 0; c < sum.Length; c++)
            {
                sum[c] += best[c];
            }
        }

        return sum;
    }

    /// <summary>What the largest option of a wire does for each limit.</summary>
    private double[] BestOf(int wire)
    {
        SizedValue value = _search.Values[_model.Wires[wire]];
        double[] best = new double[_model.Limits.Count];
        Array.Fill(best, double.NegativeInfinity);
        for (int option = _lowest[_model.Wires[wire]]; option <= _highest[_model.Wires[wire]]; option++)
        {
            double[] change = _model.RoomWith(wire, option);
            for (int c = 0; c < best.Length; c++)
            {
                best[c] = Math.Max(best[c], change[c]);
            }
        }

        return best;
    }

    private static void Subtract(double[] from, double[] what)
    {
        for (int c = 0; c < from.Length; c++)
        {
            from[c] -= what[c];
        }
    }

    /// <summary>Mixtures kept at most.</summary>
    private const int Most = 4000;

    private sealed record Mixture(double Weight, double[] Room, Mixture? Before, int Option);
}
