using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Knowledge;
using WireCheck.States;
using WireCheck.Tolerances;

namespace WireCheck.Sheets;

/// <summary>
/// A new box as it stands on the bench: half charged, copper at 20 °C, new joints, fresh cells with their direct-current
/// resistance; as it is described and at every end of its tolerances.
/// </summary>
internal sealed class BenchBox
{
    private readonly IReadOnlyList<SolvedBox> _corners;
    private readonly Dictionary<OperatingPoint, FirmNodes> _firm = [];

    internal BenchBox(Pack pack, Library library)
    {
        Tolerances = ToleranceSet.Of(pack, library);
        Library = library;
        Described = Solve(ToleranceCorner.Described, pack);
        _corners = [Described, .. ToleranceCorner.All(Tolerances).Select(c => Solve(c, pack))];
    }

    internal Library Library { get; }

    internal ToleranceSet Tolerances { get; }

    /// <summary>The box as it is described.</summary>
    internal SolvedBox Described { get; }

    /// <summary>An expected value with the band over all corners of the tolerances.</summary>
    internal sealed record Band(double Expected, double Lowest, double Highest);

    /// <summary>A value of the new box in a mode; null where the mode has no solution as described.</summary>
    /// <param name="mode">Id of the mode.</param>
    /// <param name="value">The value at a solved point; null where it has none.</param>
    internal Band? In(string mode, Func<BoxWiring, OperatingPoint, double?> value)
    {
        double? expected = null;
        double lowest = double.PositiveInfinity;
        double highest = double.NegativeInfinity;
        foreach (SolvedBox box in _corners)
        {
            if (Point(box, mode) is { } point && value(box.Wiring, point) is double found)
            {
                expected = box == Described ? found : expected;
                lowest = Math.Min(lowest, found);
                highest = Math.Max(highest, found);
            }
        }

        return expected is double there ? new Band(there, lowest, highest) : null;
    }

    /// <summary>The voltage between two terminals of a part in a mode: nothing where they are not joined or the mode has no solution.</summary>
    /// <param name="mode">Id of the mode.</param>
    /// <param name="at">The part, the terminal at the red probe and the one at the black probe.</param>
    internal Band? Volts(string mode, ProbePair at) => In(mode, (wiring, point) => at.Volts(wiring, point));

    /// <summary>True where the voltage of a pair holds into the test burden in a mode; false where a meter alone shows it.</summary>
    internal bool Holds(string mode, ProbePair at)
    {
        if (Point(Described, mode) is not { } point)
        {
            return false;
        }

        if (!_firm.TryGetValue(point, out FirmNodes? firm))
        {
            _firm[point] = firm = new FirmNodes(Described.Wiring, point);
        }

        return at.Holds(Described.Wiring, firm);
    }

    /// <summary>Lowest and highest of a value over all corners of a quantity that needs no solution.</summary>
    internal Band Of(Func<BoxWiring, double> value) => new(
        value(Described.Wiring), _corners.Min(b => value(b.Wiring)), _corners.Max(b => value(b.Wiring)));

    /// <summary>What the bands are made of, in a sentence.</summary>
    internal string Words =>
        "Bands are solved at every end of these tolerances, either way: "
        + string.Join(", ", Tolerances.Varied.Select(t => FormattableString.Invariant(
            $"{t.Means} {t.Share * 100:0.#} % ({(t.Source is null ? "declared" : $"assumed, {StandingWords.For(t.Source.Standing)}")})")))
        + ". Add what your meter may be off by.";

    private SolvedBox Solve(ToleranceCorner corner, Pack pack)
    {
        (Pack built, WiringData data) = corner.Build(pack, Library, onTheBench: true);
        return SolvedBox.Solve(built, data);
    }

    private static OperatingPoint? Point(SolvedBox box, string mode)
    {
        foreach (OperatingPoint point in box.In(mode))
        {
            if (point.Corner is { Charge: Charge.Nominal, HighestResistance: false } && point.Solution.Outcome == SolveOutcome.Solved)
            {
                return point;
            }
        }

        return null;
    }
}
