using WireCheck.Circuit.Wiring;
using WireCheck.Facts.Gather;
using WireCheck.Faults.SingleFaults;
using WireCheck.States;

namespace WireCheck.Numbers;

/// <summary>A conductor that a single fault overloads.</summary>
/// <param name="Id">Id of the leg.</param>
/// <param name="Amps">Current with the fault, A.</param>
/// <param name="Ampacity">What it is good for, A.</param>
public sealed record OverloadedConductor(string Id, double Amps, double Ampacity);

/// <summary>A consumer that a single fault gives too many volts.</summary>
/// <param name="Id">Id of the consumer.</param>
/// <param name="Volts">Voltage with the fault, V.</param>
/// <param name="Limit">Highest voltage it is made for, V.</param>
public sealed record OverdrivenConsumer(string Id, double Volts, double Limit);

/// <summary>What one fault does to the box.</summary>
/// <param name="What">The fault in words: "k-inv welded".</param>
/// <param name="PartId">The part or conductor.</param>
/// <param name="Mode">Mode it is solved in.</param>
/// <param name="Conductors">Conductors over their ampacity because of it, each at its worst corner.</param>
/// <param name="Consumers">Consumers above their window because of it.</param>
/// <param name="StaysOn">What then cannot be switched off by hand.</param>
/// <param name="Dark">What no longer works.</param>
public sealed record SingleFaultRow(
    string What,
    string PartId,
    string Mode,
    IReadOnlyList<OverloadedConductor> Conductors,
    IReadOnlyList<OverdrivenConsumer> Consumers,
    IReadOnlyList<string> StaysOn,
    IReadOnlyList<string> Dark);

/// <summary>Single faults in numbers: one thing wrong at a time, without judging any.</summary>
public static class SingleFaultNumbers
{
    /// <summary>Every fault of a box in a fixed order: BMS, contacts, fuses, returns, sources that lose the battery, wires on a bonded case.</summary>
    public static IReadOnlyList<SingleFaultRow> Of(SolvedBox box)
    {
        GatherContext context = new(box);
        List<SingleFaultRow> rows = [];
        AddStuckBms(rows, context);
        Add(rows, context.SingleFaults.BmsOpen, "stuck open", context);
        foreach (WiredRelay relay in context.Wiring.Of<WiredRelay>())
        {
            if (context.SingleFaults.Welded(relay) is { } welded)
            {
                Add(rows, [welded], "welded", context);
            }
        }

        Add(rows, context.SingleFaults.FusesOpen, "open", context);
        Add(rows, context.SingleFaults.ReturnsWithWayRound, "off", context);
        Add(rows, context.SingleFaults.ReturnsWithoutWayRound, "off", context);
        AddLostBatteries(rows, context);
        AddCaseTouches(rows, context);
        return rows;
    }

    /// <summary>Rows of one kind of fault; the corners of one part make one row with the worst of each.</summary>
    private static void Add(List<SingleFaultRow> rows, IReadOnlyList<SingleFault> faults, string what, GatherContext context)
    {
        foreach (IGrouping<string, SingleFault> part in faults.GroupBy(f => f.PartId, StringComparer.Ordinal))
        {
            rows.Add(new SingleFaultRow(
                $"{part.Key} {what}",
                part.Key,
                part.First().Point.Mode.Id,
                [.. part.SelectMany(f => SingleFaultEffects.OverAmpacities(f, context))
                    .GroupBy(o => o.ConductorId, StringComparer.Ordinal)
                    .Select(g => new OverloadedConductor(g.Key, g.Max(o => o.Amps), g.First().Ampacity))],
                [.. part.SelectMany(f => SingleFaultEffects.OverVoltages(f, context))
                    .GroupBy(o => o.PartId, StringComparer.Ordinal)
                    .Select(g => new OverdrivenConsumer(g.Key, g.Max(o => o.Volts), g.First().Limit))],
                [.. part.Where(f => f.Kind == SingleFaultKind.ContactWelded).SelectMany(f => SingleFaultEffects.LiveBecauseOf(f, context)).Distinct(StringComparer.Ordinal)],
                [.. part.SelectMany(f => SingleFaultEffects.Dark(f, context)).Distinct(StringComparer.Ordinal)]));
        }
    }

    /// <summary>A BMS that no longer opens changes nothing until a source goes too high: then the cells are what is over its limit.</summary>
    private static void AddStuckBms(List<SingleFaultRow> rows, GatherContext context)
    {
        foreach (WiredBms bms in context.Wiring.Of<WiredBms>())
        {
            OverdrivenConsumer? cells = SingleFaultEffects.OverCharge(bms, context) is { } over
                ? new OverdrivenConsumer(over.PartId, over.Volts, over.Limit)
                : null;
            rows.Add(new SingleFaultRow(
                $"{bms.Part.Id} stuck closed", bms.Part.Id, Modes.ChargingAll, [], cells is null ? [] : [cells], [], []));
        }
    }

    private static void AddLostBatteries(List<SingleFaultRow> rows, GatherContext context)
    {
        foreach (WiredPart source in context.Wiring.Parts)
        {
            foreach (LostBattery lost in context.LostBatteries.OpenVolts(source) is null ? [] : context.LostBatteries.Of(source))
            {
                List<OverdrivenConsumer> over = [];
                foreach (OverVoltage consumer in SingleFaultEffects.OverVoltages(lost, context))
                {
                    over.Add(new OverdrivenConsumer(consumer.PartId, consumer.Volts, consumer.Limit));
                }

                rows.Add(new SingleFaultRow(
                    $"{lost.OpenedId} open while {source.Part.Id} charges", lost.OpenedId, lost.Point.Mode.Id, [], over, [], []));
            }
        }
    }

    private static void AddCaseTouches(List<SingleFaultRow> rows, GatherContext context)
    {
        if (!context.CaseTouch.IsBonded)
        {
            return;
        }

        foreach (WiredConductor wire in context.Wiring.Of<WiredConductor>())
        {
            if (SingleFaultEffects.IsPositive(wire, context) && context.CaseTouch.AmpsInto(wire.Element.B) is { } amps)
            {
                double ampacity = context.Ampacities.Amps(wire.Conductor);
                rows.Add(new SingleFaultRow(
                    $"{wire.Part.Id} on the case", wire.Part.Id, Modes.Idle,
                    amps > ampacity ? [new OverloadedConductor(wire.Part.Id, amps, ampacity)] : [], [], [], []));
            }
        }
    }
}
