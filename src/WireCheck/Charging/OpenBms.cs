using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Charging;

/// <summary>A charge with every BMS open, as after its cut-off.</summary>
/// <param name="Mode">The mode that charges.</param>
/// <param name="Point">The solved point.</param>
/// <param name="CellAmps">Largest current that still flows into a cell, A: what no BMS can stop.</param>
/// <param name="SourceVolts">Highest voltage between the poles of a source that is not behind a controller, V.</param>
public sealed record OpenBms(BoxMode Mode, OperatingPoint Point, double CellAmps, double SourceVolts)
{
    /// <summary>One charge with the BMS open; null when it has no solution.</summary>
    /// <param name="states">A solver of the box.</param>
    /// <param name="wiring">The box.</param>
    /// <param name="sources">The sources of the mode whose voltage is asked for.</param>
    /// <param name="mode">The mode.</param>
    /// <param name="corner">The corner.</param>
    internal static OpenBms? Find(
        StateSolver states, BoxWiring wiring, IEnumerable<ChargeSource> sources, BoxMode mode, Corner corner)
    {
        OperatingPoint point = states.Solve(mode, corner, bmsConducts: false);
        if (point.Solution.Outcome != SolveOutcome.Solved)
        {
            return null;
        }

        double cellAmps = 0;
        foreach (WiredBank bank in wiring.Of<WiredBank>())
        {
            cellAmps = Math.Max(cellAmps, BankCharge.Of(wiring, bank, point).CellAmps);
        }

        double volts = 0;
        foreach (ChargeSource source in sources)
        {
            volts = Math.Max(volts, source.Volts(point));
        }

        return new OpenBms(mode, point, cellAmps, volts);
    }
}
