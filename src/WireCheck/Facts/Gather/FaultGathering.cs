using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Faults;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what a short at a part draws, what shorts do to a conductor, and what a fuse or breaker must break.</summary>
internal static class FaultGathering
{
    internal static void Gather(Part part, FactSubject subject, GatherContext context)
    {
        if (FaultFacts.Of(part.Kind) is { } facts)
        {
            GatherShort(facts, part, subject, context);
        }

        switch (part)
        {
            case Conductor:
                GatherHeat(part.Id, WireFaultFacts.Conductor, subject, context);
                break;
            case Load { Lead: { } lead }:
                subject.Set(LeadFacts.Size, lead.Size.Value.ToString());
                subject.Set(LeadFacts.Ampacity, context.Ampacities.LeadAmps(lead.Size.Value));
                GatherHeat(part.Id, WireFaultFacts.Load, subject, context);
                break;
            case Fuse fuse:
                GatherBreaking(fuse, subject, context);
                GatherSeries(fuse, subject, context);
                break;
            case Bms:
                subject.SetNames(BmsFacts.ReliedOnFor, ReliedOnFor(part.Id, context));
                break;
        }
    }

    private static void GatherShort(FaultFacts facts, Part part, FactSubject subject, GatherContext context)
    {
        double highest = 0;
        foreach (PointFaults point in context.Faults.PointsOf(part.Id))
        {
            highest = Math.Max(highest, point.Highest?.Amps ?? 0);
        }

        subject.SetNumber(facts.Highest, highest > 0 ? highest : null);
        if (LowestOf(part.Id, context) is not { Lowest: { } lowest } worst)
        {
            return;
        }

        subject.Set(facts.Lowest, lowest.Amps);
        subject.Set(facts.Source, lowest.Case.Name);
        subject.Set(facts.At, worst.Point.Place);
        subject.Set(facts.Return, worst.Point.ReturnName);
        subject.SetWord(facts.Guard, lowest.GuardId);
        subject.SetNumber(facts.Multiple, MultipleOf(lowest, context));
        subject.SetWord(facts.ClearedBy, lowest.ClearedBy);
        subject.SetNumber(facts.ClearingTime, lowest.Cleared ? lowest.Seconds : null);
        if (lowest.Cleared)
        {
            subject.SetNames(facts.Dark, context.Faults.Dark(lowest));
        }
    }

    /// <summary>Of the places of a part, the one with the lowest current; null when nothing feeds any.</summary>
    internal static PointFaults? LowestOf(string partId, GatherContext context)
    {
        PointFaults? worst = null;
        foreach (PointFaults point in context.Faults.PointsOf(partId))
        {
            if (point.Lowest is { } outcome && (worst?.Lowest is not { } held || outcome.Amps < held.Amps))
            {
                worst = point;
            }
        }

        return worst;
    }

    /// <summary>A short from a bank over the rating of the fuse or breaker in its way; null without one.</summary>
    internal static double? MultipleOf(FaultOutcome? lowest, GatherContext context) =>
        lowest is { GuardId: { } guard, Case.FromBank: true } && context.Faults.BandOf(guard) is { } band ? lowest.Amps / band.Rating : null;

    private static void GatherHeat(string id, WireFaultFacts facts, FactSubject subject, GatherContext context)
    {
        FaultStudy study = context.Faults;
        bool told = context.UnclearedShorts.IsTeller(id);
        subject.Set(facts.Told, told);
        subject.SetNames(facts.Also, told ? context.UnclearedShorts.Also(id) : []);
        if (study.HottestOf(id) is { } hottest)
        {
            subject.SetNumber(facts.Share, Math.Max(0, hottest.Heat.Share));
            subject.SetNumber(facts.Temperature, hottest.Heat.Celsius);
            subject.Set(facts.Melts, hottest.Heat.Celsius >= FaultWires.MeltingCelsius);
            subject.SetNumber(facts.Lasts, hottest.In.Cleared ? hottest.In.Seconds : null);
            subject.SetNumber(facts.Limit, hottest.Heat.LimitCelsius);
            subject.Set(facts.At, study.PointOf(hottest.In).Place);
            subject.SetNumber(facts.HeatedBy, hottest.In.Amps);
        }

        if (study.SustainedIn(id) is { } sustained)
        {
            subject.SetNumber(facts.Sustained, sustained.Amps);
            subject.Set(facts.SustainedAt, study.PointOf(sustained.In).Place);
            subject.Set(facts.SustainedSource, sustained.In.Case.Name);
        }
    }

    private static void GatherBreaking(Fuse fuse, FactSubject subject, GatherContext context)
    {
        OvercurrentFacts facts = OvercurrentFacts.Of(fuse.Kind);
        if (context.Faults.HighestThrough(fuse.Id) is { } highest)
        {
            subject.SetNumber(facts.FaultCurrent, highest.Amps);
            subject.Set(facts.FaultAt, context.Faults.PointOf(highest.In).Place);
        }

        double volts = FuseGatherer.HighestVolts((WiredFuse)context.Wiring[fuse.Id], context);
        subject.SetNumber(facts.BreakingCapacity, context.Faults.BandOf(fuse.Id)?.BreakingAt(volts));
    }

    /// <summary>Of the devices above it whose bands meet its own and that darken more than it does, the nearest in rating.</summary>
    private static void GatherSeries(Fuse fuse, FactSubject subject, GatherContext context)
    {
        OvercurrentFacts facts = OvercurrentFacts.Of(fuse.Kind);
        SeriesPair? same = null;
        SeriesPair? other = null;
        foreach (SeriesPair pair in context.Faults.Pairs)
        {
            if (pair.DownstreamId != fuse.Id || pair.OverlapFrom is null || !DarkensMore(pair, context.Faults))
            {
                continue;
            }

            if (((WiredFuse)context.Wiring[pair.UpstreamId]).Fuse.Class.Value == fuse.Class.Value)
            {
                same = same is null || pair.Ratio < same.Ratio ? pair : same;
            }
            else
            {
                other = other is null || pair.Ratio < other.Ratio ? pair : other;
            }
        }

        if (same is not null)
        {
            subject.Set(facts.SameClassAbove, same.UpstreamId);
            subject.SetNumber(facts.SameClassRatio, same.Ratio);
            subject.SetNumber(facts.SameClassFrom, same.OverlapFrom);
            subject.SetNames(facts.SameClassDark, context.Faults.DarkAfter(same.UpstreamId));
        }

        if (other is not null)
        {
            subject.Set(facts.OtherClassAbove, other.UpstreamId);
            subject.SetNumber(facts.OtherClassRatio, other.Ratio);
            subject.SetNumber(facts.OtherClassFrom, other.OverlapFrom);
            subject.SetNames(facts.OtherClassDark, context.Faults.DarkAfter(other.UpstreamId));
        }
    }

    private static bool DarkensMore(SeriesPair pair, FaultStudy study)
    {
        IReadOnlyList<string> anyway = study.DarkAfter(pair.DownstreamId);
        foreach (string id in study.DarkAfter(pair.UpstreamId))
        {
            if (!anyway.Contains(id))
            {
                return true;
            }
        }

        return false;
    }

    private static IEnumerable<string> ReliedOnFor(string bms, GatherContext context)
    {
        foreach (WiredConductor wire in context.Wiring.Of<WiredConductor>())
        {
            if (context.Guards.IsReturn(wire) || ConductorGatherer.IsSense(wire.Conductor, context)
                || context.Guards.Of(wire).UnfusedSource is not { } source || ConductorGuardGatherer.FuseFollows(wire, source, context))
            {
                continue;
            }

            foreach (PointFaults point in context.Faults.PointsOf(wire.Part.Id))
            {
                if (point.Lowest is { Cleared: false, Case.FromBank: true } lowest && lowest.Bms?.Id == bms
                    && lowest.SustainedAmps > context.Ampacities.Amps(wire.Conductor))
                {
                    yield return wire.Part.Id;
                    break;
                }
            }
        }
    }
}
