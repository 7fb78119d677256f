using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.States;

namespace WireCheck.Numbers;

/// <summary>One conductor leg in one state.</summary>
/// <param name="Id">Id of the leg.</param>
/// <param name="Amps">Current from its <c>from</c> to its <c>to</c>, A.</param>
/// <param name="DropVolts">Voltage lost along it with its joints, V, with the sign of the current.</param>
/// <param name="LossWatts">Heat in it and its joints, W.</param>
public sealed record ConductorNumbers(string Id, double Amps, double DropVolts, double LossWatts);

/// <summary>One terminal in one state.</summary>
/// <param name="Name">Its name: <c>k-inv.30</c>, or the id alone.</param>
/// <param name="Volts">Voltage above the negative of the first bank, or above <see cref="Above"/>, V; null where it is joined to nothing.</param>
public sealed record TerminalNumbers(string Name, double? Volts)
{
    /// <summary>
    /// What the voltage is told above where nothing joins it to the first bank's negative: the negative terminal of its own
    /// island, as of a panel or of a converter with an isolated output. Null for the bank's negative.
    /// </summary>
    public string? Above { get; init; }

    /// <summary>
    /// A meter alone shows the voltage, and the test burden takes it away: it comes through the leakage of a diode, or the like.
    /// By what counts as live the terminal is dead.
    /// </summary>
    public bool Stray { get; init; }
}

/// <summary>One part in one state.</summary>
/// <param name="Id">Id of the part.</param>
/// <param name="Kind">Kind of part.</param>
/// <param name="State">Its state in words.</param>
/// <param name="Amps">Current through or into it, A; null for a part that carries none of its own.</param>
/// <param name="Watts">Power it takes (of a source: gives, negative), W; null where it has no meaning.</param>
public sealed record PartNumbers(string Id, string Kind, string State, double? Amps, double? Watts);

/// <summary>One state of a box in numbers.</summary>
public sealed record StateNumbers(
    string Mode,
    string Words,
    string Corner,
    bool Solved,
    double ResidualAmps,
    IReadOnlyList<ConductorNumbers> Conductors,
    IReadOnlyList<TerminalNumbers> Terminals,
    IReadOnlyList<PartNumbers> Parts);

/// <summary>Every state of a box in numbers, without judging any.</summary>
public static class ModeNumbers
{
    /// <summary>All states, mode by mode and corner by corner; only one mode's when it is named.</summary>
    public static IReadOnlyList<StateNumbers> Of(SolvedBox box, string? mode = null) =>
        [.. box.Points.Where(p => mode is null || p.Mode.Id == mode).Select(p => OfPoint(box.Wiring, p))];

    private static StateNumbers OfPoint(BoxWiring wiring, OperatingPoint point) => new(
        point.Mode.Id,
        point.Mode.Words,
        point.Corner.Words,
        point.Solution.Outcome == SolveOutcome.Solved,
        point.Solution.WorstResidualAmps,
        [.. wiring.Of<WiredConductor>().Select(w => OfConductor(w, point))],
        new TerminalVoltages(wiring, point).All(),
        [.. wiring.Parts.Where(p => p is not WiredConductor).Select(p => PartStates.Of(p, point))]);

    private static ConductorNumbers OfConductor(WiredConductor wire, OperatingPoint point)
    {
        double amps = point.Amps(wire.Element);
        double drop = point.Volts(wire.Element.A, wire.Element.B);
        return new ConductorNumbers(wire.Part.Id, amps, drop, amps * drop);
    }
}
