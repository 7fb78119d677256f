using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Charging;

/// <summary>
/// A full box with every source plugged in and none giving power: no mains, dark, engine off. What flows back into a source
/// flows most with the switches on the way closed, and with some open where those open a shorter way, so both are solved.
/// </summary>
internal static class WithoutPower
{
    /// <summary>Name of the mode with the switches closed.</summary>
    internal const string SwitchedOn = "left-plugged-switched-on";

    /// <summary>The states that have a solution; none for a box without a source.</summary>
    internal static IReadOnlyList<OperatingPoint> Find(SolvedBox box, StateSolver states)
    {
        Dictionary<string, SourceState> dark = [];
        foreach (ChargeSource source in ChargeSource.In(box.Wiring))
        {
            dark[source.Id] = SourceState.Unpowered;
        }

        List<OperatingPoint> found = [];
        foreach (bool closed in dark.Count == 0 ? Array.Empty<bool>() : [false, true])
        {
            BoxMode mode = ChargingModes.Quiet(
                box, closed ? SwitchedOn : Modes.LeftPlugged,
                closed ? "all switches closed, everything plugged in but without power" : "all switches open, everything plugged in but without power",
                closed, dark);
            foreach (Corner corner in box.Corners)
            {
                if (corner.Charge == Charge.Full)
                {
                    OperatingPoint point = states.Solve(mode, corner);
                    if (point.Solution.Outcome == SolveOutcome.Solved)
                    {
                        found.Add(point);
                    }
                }
            }
        }

        return found;
    }
}
