using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Faults.SingleFaults;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>A conductor that a fault overloads.</summary>
internal sealed record OverAmpacity(string ConductorId, double Amps, double Ampacity);

/// <summary>A consumer that a fault gives too many volts.</summary>
internal sealed record OverVoltage(string PartId, double Volts, double Limit);

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
                && Volts(ends, fault.Point, context) > live && Volts(ends, fault.Whole, context) <= live)
            {
                ids.Add(part.Part.Id);
            }
        }

        return ids;
    }

    /// <summary>Conductors that are over their ampacity with the fault and not without it, the worst first.</summary>
    internal static IReadOnlyList<OverAmpacity> OverAmpacities(SingleFault fault, GatherContext context)
    {
        List<OverAmpacity> over = [];
        foreach (WiredConductor wire in context.Wiring.Of<WiredConductor>())
        {
            double amps = Math.Abs(fault.Point.Amps(wire.Element));
            double ampacity = context.Ampacities.Amps(wire.Conductor);
            if (amps > ampacity && Math.Abs(fault.Whole.Amps(wire.Element)) <= ampacity)
            {
                over.Add(new OverAmpacity(wire.Part.Id, amps, ampacity));
            }
        }

        over.Sort((a, b) => (b.Amps / b.Ampacity).CompareTo(a.Amps / a.Ampacity));
        return over;
    }

    /// <summary>Consumers that are above their window with the fault and not without it.</summary>
    internal static IReadOnlyList<OverVoltage> OverVoltages(SingleFault fault, GatherContext context)
    {
        List<OverVoltage> over = [];
        foreach ((WiredPart part, ConsumerEnds ends, double limit) in SingleFaultGathering.Windowed(context))
        {
            double volts = Volts((ends.FeedPlus, ends.FeedMinus), fault.Point, context);
            if (volts > limit && Volts((ends.FeedPlus, ends.FeedMinus), fault.Whole, context) <= limit)
            {
                over.Add(new OverVoltage(part.Part.Id, volts, limit));
            }
        }

        return over;
    }

    /// <summary>Consumers above their window when a source has lost its battery.</summary>
    internal static IReadOnlyList<OverVoltage> OverVoltages(LostBattery lost, GatherContext context)
    {
        double live = context.Data.Assumed("live_above");
        List<OverVoltage> over = [];
        foreach ((WiredPart part, ConsumerEnds ends, double limit) in SingleFaultGathering.Windowed(context))
        {
            double volts = VoltsWithoutBattery(lost, ends, context);
            if (volts > live && volts > limit)
            {
                over.Add(new OverVoltage(part.Part.Id, volts, limit));
            }
        }

        return over;
    }

    /// <summary>
    /// Voltage at a consumer when a source has lost its battery, V. Behind a converter it does not follow the source further up.
    /// </summary>
    internal static double VoltsWithoutBattery(LostBattery lost, ConsumerEnds ends, GatherContext context)
    {
        double volts = Volts((ends.FeedPlus, ends.FeedMinus), lost.Point, context);
        bool direct = lost.Point.Solution.Island(ends.FeedPlus) == lost.Point.Solution.Island(ends.FeedMinus);
        return direct && volts > context.Data.Assumed("live_above") ? volts + lost.RiseVolts : volts;
    }

    /// <summary>The bank behind a BMS that does not open, where some source goes over its limit; null where none does.</summary>
    internal static OverVoltage? OverCharge(WiredBms bms, GatherContext context)
    {
        if (Banks.BanksBehind(context, bms) is not [{ } bank, ..])
        {
            return null;
        }

        double limit = context.Stacks.HighestVolts(bank);
        return SingleFaultGathering.HighestCharge(bank, context) is { } highest && highest.Volts > limit
            ? new OverVoltage(bank.Part.Id, highest.Volts, limit)
            : null;
    }

    /// <summary>A conductor with both ends on the positive side.</summary>
    internal static bool IsPositive(WiredConductor wire, GatherContext context) =>
        context.Poles[wire.Element.A] == Pole.Positive && context.Poles[wire.Element.B] == Pole.Positive;

    /// <summary>Loads, converters and inverters that work without the fault and have no feed with it.</summary>
    internal static IReadOnlyList<string> Dark(SingleFault fault, GatherContext context)
    {
        List<string> dark = [];
        foreach (WiredPart part in context.Wiring.Parts)
        {
            bool works = part switch
            {
                WiredLoad { Inverter: { } inverter } => IsOn(inverter, fault.Whole) && !IsOn(inverter, fault.Point),
                IPoweredInput => IsOn(part.Part.Id, fault.Whole) && !IsOn(part.Part.Id, fault.Point),
                WiredLoad load => ConsumerPoint.LoadAmps(load, fault.Whole) > WorkingAmps && ConsumerPoint.LoadAmps(load, fault.Point) <= WorkingAmps,
                _ => false,
            };
            if (works)
            {
                dark.Add(part.Part.Id);
            }
        }

        return dark;
    }

    /// <summary>Less than this is a leakage, not a load at work, A.</summary>
    private const double WorkingAmps = 1e-6;

    private static bool IsOn(string id, OperatingPoint point) => point.Inputs.Any(i => i.Id == id && i.On);

    /// <summary>Voltage between two nodes, V; 0 where nothing joins them.</summary>
    internal static double Volts((int Plus, int Minus) ends, OperatingPoint point, GatherContext context) =>
        JoinedNodes.Are(point, ends.Plus, ends.Minus, context) ? Math.Abs(point.Volts(ends.Plus, ends.Minus)) : 0;

    private static bool CannotBeUnplugged(WiredPart part) => part is WiredInverter or WiredConverter or WiredLoad { Load.At: null };

    private static (int Plus, int Minus)? Ends(WiredPart part, GatherContext context) =>
        ConsumerEnds.Of(part, context) is { } ends ? (ends.FeedPlus, ends.FeedMinus) : null;
}
