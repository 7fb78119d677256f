using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>What a consumer does at one solved point.</summary>
internal static class ConsumerPoint
{
    /// <summary>Less than this is a leakage, not a consumer at work, A.</summary>
    private const double DrawingAmps = 1e-6;

    /// <summary>Current a load takes, A.</summary>
    internal static double LoadAmps(WiredLoad load, OperatingPoint point)
    {
        double amps = 0;
        foreach (Circuit.Elements.Element? element in
            new Circuit.Elements.Element?[] { load.PowerElement, load.CurrentElement, load.ResistanceElement })
        {
            amps += element is null ? 0 : point.Amps(element);
        }

        return amps;
    }

    /// <summary>
    /// The point, if the consumer works in it, as though nothing cut off by itself; null when it stands idle, has no feed or
    /// cannot be served.
    /// </summary>
    internal static OperatingPoint? Working(WiredPart part, OperatingPoint point, GatherContext context)
    {
        string id = part.Part.Id;
        if (point.Undeliverable.Contains(id))
        {
            return null;
        }

        switch (part)
        {
            case IPoweredInput:
                InputState state = point.Inputs.First(i => i.Id == id);
                return state.On || state.CutOff ? context.States.AsThoughNotCutOff(point) : null;
            case WiredLoad load:
                bool asked = point.Mode.Watts.TryGetValue(id, out double watts)
                    ? watts > 0
                    : point.Mode.Load(id) is LoadUse.Full or LoadUse.Surge;
                OperatingPoint? uncut = asked ? context.States.AsThoughNotCutOff(point) ?? point : null;
                return uncut is not null && LoadAmps(load, uncut) > DrawingAmps ? uncut : null;
            default:
                return StandbyGathering.AmpsOf(part, point) > DrawingAmps ? point : null;
        }
    }

    /// <summary>True for the moment in which this consumer, or a load on it, surges.</summary>
    internal static bool IsOwnSurge(Part part, BoxMode mode, GatherContext context)
    {
        if (mode.Steady || !mode.Id.StartsWith(BmsGatherer.SurgePrefix, StringComparison.Ordinal))
        {
            return false;
        }

        string starting = mode.Id[BmsGatherer.SurgePrefix.Length..];
        return starting == part.Id || (context.Pack.Find(starting) is Load load && load.At?.Value == part.Id);
    }

    /// <summary>Power that a mode asks of a consumer, W: of a converter or inverter at its output.</summary>
    internal static double AskedWatts(WiredPart part, BoxMode mode, GatherContext context)
    {
        ModeSetter.Apply(context.Wiring, mode);
        return part switch
        {
            WiredLoad load => load.AskedWatts,
            WiredInverter inverter => inverter.Element.Watts,
            WiredConverter { Outlet.Watts: > 0 } converter => converter.Outlet.Watts,
            WiredConverter converter => Quantities.PowerValue.ToWatts(converter.Converter.Power.Value),
            _ => 0,
        };
    }
}
