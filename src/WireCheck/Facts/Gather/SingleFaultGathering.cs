using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Faults.SingleFaults;

using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what single faults do: a battery lost while it is charged, a BMS that no longer opens, a wire on the case.</summary>
internal static class SingleFaultGathering
{
    /// <summary>The consumer that the source puts furthest over its window when the battery is gone.</summary>
    internal static void AddLostBattery(WiredPart source, LostBatteryFacts facts, FactSubject subject, GatherContext context)
    {
        // A mains charger holds its voltage without a battery; of these it is not to be taken for granted.
        bool unknown = source is WiredCharger
        {
            Charger: { OutputWithoutBattery: null, ChargerKind.Value: ChargerKind.Solar or ChargerKind.Trickle },
        };
        if (context.LostBatteries.OpenVolts(source) is not { } most)
        {
            return;
        }

        List<(WiredPart Part, ConsumerEnds Ends, double Limit)> consumers = Windowed(context);
        if (!consumers.Any(c => unknown || c.Limit < most))
        {
            return;
        }

        double live = context.Data.Assumed("live_above");
        double worst = unknown ? double.NegativeInfinity : 0;
        foreach (LostBattery lost in context.LostBatteries.Of(source))
        {
            foreach ((WiredPart part, ConsumerEnds ends, double limit) in consumers)
            {
                double volts = SingleFaultEffects.VoltsWithoutBattery(lost, ends, context);
                double over = volts - limit;
                if (volts > live && over > worst && !StandsSoAnyway(ends, limit, volts, context))
                {
                    worst = over;
                    subject.Set(facts.Load, part.Part.Id);
                    subject.SetNumber(facts.Voltage, volts);
                    subject.SetNumber(facts.Limit, limit);
                    subject.Set(facts.Opened, lost.OpenedId);
                    subject.Set(facts.Unknown, unknown);
                }
            }
        }
    }

    /// <summary>True when a consumer is above its limit with the battery too, as high as without: the lost battery changes nothing.</summary>
    private static bool StandsSoAnyway(ConsumerEnds ends, double limit, double volts, GatherContext context)
    {
        double highest = 0;
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            if (point.Solution.Island(ends.FeedPlus) == point.Solution.Island(ends.FeedMinus))
            {
                highest = Math.Max(highest, point.Volts(ends.FeedPlus, ends.FeedMinus));
            }
        }

        return highest > limit && highest >= volts;
    }

    /// <summary>The source that would bring the cells highest behind a BMS that does not open.</summary>
    internal static void AddStuckBms(WiredBms bms, FactSubject subject, GatherContext context)
    {
        IReadOnlyList<WiredBank> banks = Banks.BanksBehind(context, bms);
        if (banks.Count == 0)
        {
            return;
        }

        if (HighestCharge(banks[0], context) is { } highest)
        {
            subject.Set(StuckBmsFacts.OverchargeSource, highest.PartId);
            subject.Set(StuckBmsFacts.OverchargeBypasses, CellsCharging.IsBypassed(highest.PartId, context));
            subject.SetNumber(StuckBmsFacts.OverchargeVoltage, highest.Volts);
            subject.SetNumber(StuckBmsFacts.OverchargeLimit, context.Stacks.HighestVolts(banks[0]));
        }
    }

    /// <summary>The source that would bring a bank highest, a panel at its voltage in frost; null when none charges it.</summary>
    internal static SourcePoint? HighestCharge(WiredBank bank, GatherContext context)
    {
        SourcePoint? highest = null;
        foreach (SourcePoint source in context.Sources)
        {
            WiredPart part = context.Wiring[source.PartId];
            bool charges = part is WiredCharger or WiredPanel or WiredVehicle && Banks.ChargedFrom(context, source.Plus) == bank;
            highest = charges && source.Volts > (highest?.Volts ?? 0) ? source : highest;
        }

        return highest;
    }

    internal static void AddCaseTouch(WiredConductor wire, FactSubject subject, GatherContext context)
    {
        Conductor part = wire.Conductor;
        if (!context.CaseTouch.IsMetal || !SingleFaultEffects.IsPositive(wire, context) || ConductorGatherer.IsSense(part, context))
        {
            return;
        }

        if (WallPasses.MustPass(part, context.Pack))
        {
            subject.Set(CaseTouchFacts.PassageNotSaid, part.ThroughWall is null);
        }

        if (part.Place?.Value == PartPlace.Outside && part.ThroughWall is null)
        {
            return;
        }

        subject.Set(CaseTouchFacts.NearMetal, true);
        subject.Set(CaseTouchFacts.Sleeved, part.Sleeve?.Value == true);
        subject.SetWord(CaseTouchFacts.WallPassage, part.ThroughWall?.Value switch
        {
            WallPassage.Grommet => "grommet",
            WallPassage.Gland => "gland",
            WallPassage.Bare => "bare",
            _ => null,
        });
        if (context.Wiring.Find<WiredFuse>(context.Guards.Of(wire).FuseId) is not { } fuse)
        {
            return;
        }

        foreach (int node in new[] { wire.Element.A, wire.Element.B })
        {
            if (context.CaseTouch.AmpsThrough(fuse, node) is { } amps)
            {
                subject.KeepSmallest(CaseTouchFacts.Current, amps, new FactPlace(States.Modes.Idle, context.CaseTouch.Corner.Words));
                subject.SetNumber(CaseTouchFacts.FuseRating, fuse.Fuse.Rating.Value.Amperes);
                subject.Set(CaseTouchFacts.FuseId, fuse.Part.Id);
            }
        }
    }

    /// <summary>Consumers of direct current that tell the highest voltage they are made for.</summary>
    internal static List<(WiredPart Part, ConsumerEnds Ends, double Limit)> Windowed(GatherContext context)
    {
        List<(WiredPart, ConsumerEnds, double)> consumers = [];
        foreach (WiredPart part in context.Wiring.Parts)
        {
            double? limit = part.Part switch
            {
                Load load => load.Window?.Value.To.Volts,
                Converter converter => converter.Window.Value.To.Volts,
                Inverter inverter => inverter.Window.Value.To.Volts,
                _ => null,
            };
            if (limit is { } volts && ConsumerEnds.Of(part, context) is { } ends)
            {
                consumers.Add((part, ends, volts));
            }
        }

        return consumers;
    }
}
