using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Which single switches stop the banks, and whether one of them can be reached from outside.</summary>
internal static class OutsideStop
{
    /// <summary>
    /// Switches that stop the banks but are described as out of reach, where no switch that may be within reach stops them.
    /// Null when no switch is described as out of reach.
    /// </summary>
    internal static IReadOnlyList<string>? Hidden(GatherContext context)
    {
        List<WiredSwitch> hidden = [];
        List<WiredSwitch> others = [];
        foreach (WiredSwitch wired in context.Wiring.Of<WiredSwitch>())
        {
            (wired.Switch.Reachable?.Value == false ? hidden : others).Add(wired);
        }

        if (hidden.Count == 0 || Everything(context) is not { } everything)
        {
            return null;
        }

        double limit = Banks.AmpsLeavingAll(context.Wiring, everything) * context.Data.Assumed("stopped_share");
        foreach (WiredSwitch wired in others)
        {
            if (Stops(wired, everything, limit, context))
            {
                return [];
            }
        }

        List<string> stops = [];
        foreach (WiredSwitch wired in hidden)
        {
            if (Stops(wired, everything, limit, context))
            {
                stops.Add(wired.Part.Id);
            }
        }

        return stops;
    }

    private static bool Stops(WiredSwitch wired, OperatingPoint everything, double limit, GatherContext context)
    {
        BoxMode mode = everything.Mode;
        HashSet<string> closed = [.. mode.ClosedSwitches];
        if (!closed.Remove(wired.Part.Id))
        {
            return false;
        }

        BoxMode without = new()
        {
            Id = mode.Id,
            Words = mode.Words,
            Added = mode.Added,
            ClosedSwitches = closed,
            Sources = mode.Sources,
            Loads = mode.Loads,
            Watts = mode.Watts,
            OutletsAtRatedPower = mode.OutletsAtRatedPower,
        };
        OperatingPoint point = context.States.Solver.Solve(without, everything.Corner);
        return point.Solution.Outcome == SolveOutcome.Solved && Banks.AmpsLeavingAll(context.Wiring, point) <= limit;
    }

    /// <summary>Everything on at the charge at which most leaves the banks; null when nothing does.</summary>
    private static OperatingPoint? Everything(GatherContext context)
    {
        OperatingPoint? found = null;
        double most = 0;
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            double amps = point.Mode.Id == Modes.Everything ? Banks.AmpsLeavingAll(context.Wiring, point) : 0;
            if (amps > most)
            {
                (most, found) = (amps, point);
            }
        }

        return found;
    }
}
