using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what reaches a consumer: voltage, what is lost on the way and what cannot be delivered.</summary>
internal static class ConsumerGathering
{
    /// <summary>Sets all facts of a consumer that come from solved points.</summary>
    internal static void Add(Part part, ConsumerFacts facts, FactSubject subject, GatherContext context)
    {
        WiredPart wired = context.Wiring[part.Id];
        PathIntents.Add(wired, facts, subject, context);
        if (ConsumerEnds.Of(wired, context) is not { } ends)
        {
            return;
        }

        WiredBank? bank = ends.Bank(context);
        if (bank is not null)
        {
            subject.SetNumber(facts.NominalVoltage, Banks.NominalVolts(context, bank.Cells));
        }

        AddHighest(ends, facts, subject, context);
        AddLowest(wired, ends, bank, facts, subject, context);
        if (bank is not null)
        {
            AddDrop(wired, ends, bank, facts, subject, context);
        }

        if (wired is not WiredMeter)
        {
            AddUndelivered(wired, facts, subject, context);
        }
    }

    private static void AddHighest(ConsumerEnds ends, ConsumerFacts facts, FactSubject subject, GatherContext context)
    {
        double live = context.Data.Assumed("live_above");
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            if (!JoinedNodes.Are(point, ends.FeedPlus, ends.FeedMinus, context))
            {
                continue;
            }

            double volts = point.Volts(ends.FeedPlus, ends.FeedMinus);
            if (volts > live)
            {
                volts += Banks.RiseToEndOfCharge(context.Wiring, point, ends.FeedPlus);
            }

            subject.Largest(facts.VoltageHigh, volts, point);
        }
    }

    private static void AddLowest(
        WiredPart wired, ConsumerEnds ends, WiredBank? bank, ConsumerFacts facts, FactSubject subject, GatherContext context)
    {
        foreach (OperatingPoint point in context.SolvedPoints())
        {
            bool surge = ConsumerPoint.IsOwnSurge(wired.Part, point.Mode, context);
            if ((!point.Mode.Steady && !surge) || VoltsWorking(wired, ends, point, context) is not { } volts)
            {
                continue;
            }

            if (point.Mode.Steady)
            {
                subject.Smallest(facts.VoltageLow, volts, point);
            }

            // Behind a converter the feed from the bank is the converter's concern.
            if (bank is not null)
            {
                subject.Smallest(facts.SurgeVoltageLow, volts, point);
            }
        }
    }

    /// <summary>Voltage at a consumer while it works, V; where the wiring cannot carry it uncut, the voltage at which it cut off.</summary>
    private static double? VoltsWorking(WiredPart wired, ConsumerEnds ends, OperatingPoint point, GatherContext context)
    {
        if (ConsumerPoint.Working(wired, point, context) is { } working)
        {
            return working.Volts(ends.Plus, ends.Minus);
        }

        double sag = wired is IPoweredInput ? point.Inputs.First(i => i.Id == wired.Part.Id).SagVolts : double.NaN;
        return double.IsFinite(sag) ? sag : null;
    }

    private static void AddDrop(
        WiredPart wired, ConsumerEnds ends, WiredBank bank, ConsumerFacts facts, FactSubject subject, GatherContext context)
    {
        int plus = context.Wiring.Node(bank.Part.Id, "+");
        int minus = context.Wiring.Node(bank.Part.Id, "-");
        OperatingPoint? worst = null;
        double most = double.NegativeInfinity;
        foreach (OperatingPoint point in context.SteadyPoints()
            .Where(p => !p.Mode.Sources.Values.Contains(SourceState.Powered)))
        {
            if (ConsumerPoint.Working(wired, point, context) is not { } working)
            {
                continue;
            }

            double drop = working.Volts(plus, minus) - working.Volts(ends.Plus, ends.Minus);
            subject.Largest(facts.FeedDrop, drop, point);
            subject.Largest(facts.DropShare, drop / Banks.NominalVolts(context, bank.Cells), point);
            if (drop > most)
            {
                (most, worst) = (drop, working);
            }
        }

        if (worst is null)
        {
            return;
        }

        CurrentFlow flow = context.States.FlowAt(worst);
        if (CurrentPath.Of(flow, ends.Plus, ends.Minus).GreatestDrop(flow) is { } greatest)
        {
            subject.Set(facts.GreatestDropPart, greatest.PartId);
            subject.SetNumber(facts.GreatestDrop, greatest.Volts);
        }
    }

    private static void AddUndelivered(WiredPart wired, ConsumerFacts facts, FactSubject subject, GatherContext context)
    {
        foreach (OperatingPoint point in context.Box.Points)
        {
            double watts = point.Undeliverable.Contains(wired.Part.Id)
                ? ConsumerPoint.AskedWatts(wired, point.Mode, context)
                : 0;
            subject.Largest(facts.UndeliveredPower, watts, point);
        }

        if (ConsumerEnds.Of(wired, context) is { } ends)
        {
            subject.SetWord(facts.NoWayBackTo, NoWayBackTo(ends, context));
            subject.SetWord(facts.FedBy, ends.Bank(context) is null ? ends.FeedingConverter(context)?.Part.Id : null);
        }
    }

    /// <summary>The first source that feeds its positive, when its negative leads back to none of those; null otherwise.</summary>
    private static string? NoWayBackTo(ConsumerEnds ends, GatherContext context)
    {
        bool[] back = Reach.From(context.Graph, ends.FeedMinus, _ => true);
        SourcePoint[] feeds = [.. context.Sources.Where(s => context.Guards.Against(s)[ends.FeedPlus].Reached)];
        return Array.Exists(feeds, s => back[s.Minus]) ? null : feeds.FirstOrDefault()?.PartId;
    }
}
