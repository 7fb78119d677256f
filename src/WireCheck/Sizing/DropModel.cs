namespace WireCheck.Sizing;

/// <summary>
/// How much room each limit leaves, as a straight line in the resistance of each wire: true but for what the drop itself
/// changes. It is measured by judging the box with one wire a step larger or smaller, so that it needs to know no rule.
/// </summary>
internal sealed class DropModel
{
    private readonly SizeSearch _search;
    private readonly int[] _at;
    private readonly List<int> _wires = [];
    private readonly List<double[]> _slopes = [];

    private DropModel(SizeSearch search, int[] at, IReadOnlyList<FindingKey> limits)
    {
        _search = search;
        _at = at;
        Limits = limits;
        RoomHere = new double[limits.Count];
    }

    /// <summary>The limits that are shared.</summary>
    internal IReadOnlyList<FindingKey> Limits { get; }

    /// <summary>Wires that change the room of a limit.</summary>
    internal IReadOnlyList<int> Wires => _wires;

    /// <summary>Room of each limit at the choice it was measured at.</summary>
    internal double[] RoomHere { get; }

    /// <summary>How many wires a limit is shared by.</summary>
    internal int SharedBy(int limit)
    {
        int count = 0;
        foreach (double[] slopes in _slopes)
        {
            count += slopes[limit] > 0 ? 1 : 0;
        }

        return count;
    }

    /// <summary>Measures around a choice.</summary>
    /// <param name="search">What has been tried.</param>
    /// <param name="at">The choice.</param>
    /// <param name="limits">Comparisons, each with a room there.</param>
    /// <param name="larger">Measure a step up rather than down, where there is one.</param>
    /// <param name="frozen">A value that must not change; -1 for none.</param>
    internal static DropModel Measure(SizeSearch search, int[] at, IReadOnlyList<FindingKey> limits, bool larger, int frozen)
    {
        DropModel model = new(search, at, limits);
        Trial here = search.Try(at);
        for (int c = 0; c < limits.Count; c++)
        {
            model.RoomHere[c] = here.Room(limits[c]) ?? 0;
        }

        for (int value = 0; value < at.Length; value++)
        {
            if (search.Values[value].IsWire && value != frozen)
            {
                model.Measure(value, here, larger);
            }
        }

        return model;
    }

    /// <summary>Room of each limit with other options of <see cref="Wires"/>, by their place in that list.</summary>
    internal double[] RoomWith(int wire, int option)
    {
        SizedValue value = _search.Values[_wires[wire]];
        double ohms = value.Options[option].Ohms - value.Options[_at[_wires[wire]]].Ohms;
        double[] change = new double[Limits.Count];
        for (int c = 0; c < change.Length; c++)
        {
            change[c] = -_slopes[wire][c] * ohms;
        }

        return change;
    }

    private void Measure(int value, Trial here, bool larger)
    {
        SizedValue wire = _search.Values[value];
        bool up = at(1) && (larger || !at(-1));
        if (!up && !at(-1))
        {
            return;
        }

        int other = _at[value] + (up ? 1 : -1);
        double less = wire.Options[_at[value]].Ohms - wire.Options[other].Ohms;
        Trial there = _search.Try(SizeSearch.With(_at, value, other));
        double[] slopes = new double[Limits.Count];
        bool any = false;
        for (int c = 0; c < slopes.Length; c++)
        {
            double gain = (there.Room(Limits[c]) ?? RoomHere[c]) - RoomHere[c];
            double scale = here.Scale(Limits[c]);
            slopes[c] = Math.Abs(gain) > Least * scale && less != 0 ? Math.Max(0, gain / less) : 0;
            any |= slopes[c] > 0;
        }

        if (any)
        {
            _wires.Add(value);
            _slopes.Add(slopes);
        }

        bool at(int step) => _at[value] + step >= wire.Lowest && _at[value] + step < wire.Options.Count;
    }

    /// <summary>A smaller change than this, as a part of the limit, is rounding.</summary>
    private const double Least = 1e-7;
}
