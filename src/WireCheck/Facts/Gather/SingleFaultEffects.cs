using WireCheck.Circuit.Wiring;
using WireCheck.Faults.SingleFaults;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>What a single fault does to the rest of the box.</summary>
internal static class SingleFaultEffects
{
    /// <summary>Wired loads, converters and inverters that have a voltage with the fault and have none without it.</summary>
    internal static IReadOnlyList<string> LiveBecauseOf(SingleFault fault, GatherContext context)
    {
        double live = context.Data.Assumed("live_above");
        List<string> ids = [];
        foreach (WiredPart part in context.Wiring.Parts)
        {
            if (CannotBeUnplugged(part) && Ends(part, context) is { } ends
                && Volts(ends, fault.Point) > live && Volts(ends, fault.Whole) <= live)
            {
                ids.Add(part.Part.Id);
            }
        }

        return ids;
    }

    /// <summary>Voltage between two nodes, V; 0 where nothing joins them.</summary>
    private static double Volts((int Plus, int Minus) ends, OperatingPoint point) =>
        point.Solution.IsFloating(ends.Plus) || point.Solution.IsFloating(ends.Minus) ? 0 : Math.Abs(point.Volts(ends.Plus, ends.Minus));

    private static bool CannotBeUnplugged(WiredPart part) => part is WiredInverter or WiredConverter or WiredLoad { Load.At: null };

    private static (int Plus, int Minus)? Ends(WiredPart part, GatherContext context) =>
        ConsumerEnds.Of(part, context) is { } ends ? (ends.FeedPlus, ends.FeedMinus) : null;
}
