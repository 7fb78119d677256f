using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Knowledge;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Facts of a fuse or breaker: its load, its voltage, and the weakest wire it guards.</summary>
public sealed class FuseGatherer : Gatherer<Fuse>
{
    public override void Gather(Fuse part, FactSubject subject, GatherContext context)
    {
        WiredFuse fuse = (WiredFuse)context.Wiring[part.Id];
        OvercurrentFacts facts = OvercurrentFacts.Of(part.Kind);
        FuseClass known = context.Library.Fuses[part.Class.Value];
        double rating = part.Rating.Value.Amperes;
        subject.Set(facts.Class, part.Class.Value);
        subject.Set(facts.Style, part.IsBreaker ? "breaker" : known.Body == "clips" ? "clip" : known.Body);
        subject.Set(facts.Rating, rating);
        subject.Set(facts.UsableRating, rating * (part.AmbientFactor?.Value.DecimalFractions ?? known.Ambient.At(context.HottestInsideCelsius)));
        foreach (double made in known.Ratings)
        {
            if (made > rating)
            {
                subject.Set(facts.NextRating, made);
                break;
            }
        }

        subject.Set(facts.Volts, Math.Min(part.Volts.Value.Volts, part.Holder?.Volts?.Value.Volts ?? double.MaxValue));
        OperatingPoint? most = null;
        foreach (OperatingPoint point in context.Box.Steady)
        {
            double amps = Math.Abs(point.Amps(fuse.Element));
            most = most is null || amps > Math.Abs(most.Amps(fuse.Element)) ? point : most;
            subject.KeepLargest(facts.Current, amps, GatherContext.PlaceOf(point));
        }

        if (most is not null)
        {
            subject.SetWord(facts.FaultThrough, TurnedDiodes.Drawing(Math.Abs(most.Amps(fuse.Element)), most, context));
        }

        GatherVoltage(fuse, facts, subject, context);
        GatherWeakest(fuse, facts, subject, context);
        FusePlace.Gather(fuse, facts, subject, context);
        subject.SetWord(facts.Reset, part.Reset?.Value switch { BreakerReset.Auto => "auto", BreakerReset.Manual => "manual", _ => null });
        if (part.Holder is { } holder)
        {
            subject.Set(facts.HolderRating, holder.Rating.Value.Amperes);
            NoteIfAssumed(subject, part, holder.Rating, "holder rating");
            if (holder.Lead is { } lead)
            {
                subject.Set(facts.HolderLeadSize, lead.Value.ToString());
                subject.Set(facts.HolderLeadAmpacity, context.Ampacities.LeadAmps(lead.Value));
            }
        }

        JointHeat.OfFuse(fuse, subject, context);
        InrushGathering.AddFuse(part, subject, context);
        NoteIfAssumed(subject, part, part.Volts, "voltage rating");
    }

    /// <summary>The highest voltage of any source that reaches it; a charger's where it is more than the bank's.</summary>
    private static void GatherVoltage(WiredFuse fuse, OvercurrentFacts facts, FactSubject subject, GatherContext context)
    {
        foreach (SourcePoint source in context.Sources)
        {
            Guard[] guards = context.Guards.Against(source);
            if (guards[fuse.Element.A].Reached || guards[fuse.Element.B].Reached)
            {
                subject.KeepLargest(facts.HighestVoltage, source.Volts, new FactPlace($"{source.PartId} at its highest voltage", "full"));
            }
        }
    }

    /// <summary>Highest voltage of any source that reaches a fuse, V; 0 when none does.</summary>
    internal static double HighestVolts(WiredFuse fuse, GatherContext context)
    {
        double highest = 0;
        foreach (SourcePoint source in context.Sources)
        {
            Guard[] guards = context.Guards.Against(source);
            if (guards[fuse.Element.A].Reached || guards[fuse.Element.B].Reached)
            {
                highest = Math.Max(highest, source.Volts);
            }
        }

        return highest;
    }

    private static void GatherWeakest(WiredFuse fuse, OvercurrentFacts facts, FactSubject subject, GatherContext context)
    {
        List<Weakest> downstream = [.. Downstream(fuse, context).OrderBy(c => c.Amps)];
        if (downstream.Count == 0)
        {
            return;
        }

        Weakest weakest = downstream[0];
        double rating = fuse.Fuse.Rating.Value.Amperes;
        subject.SetNames(facts.AlsoOver, downstream.Skip(1).Where(c => c.Amps < rating).Select(c => c.Words).Distinct());
        subject.Set(facts.WeakestConductor, weakest.Id);
        subject.Set(facts.WeakestIsBefore, weakest.Before);
        subject.Set(facts.WeakestSize, weakest.Size.ToString());
        subject.Set(facts.WeakestAmpacity, weakest.Amps);
        subject.Set(facts.NextStandardRating, context.Library.StandardRatings.NextAtOrAbove(weakest.Amps) ?? rating);
        if (context.Library.StandardRatings.LargestAtOrBelow(weakest.Amps) is { } fits)
        {
            subject.Set(facts.LargestRatingThatFits, fits);
        }

        if (weakest.Conductor is not null && context.Ampacities.SizeNeeded(weakest.Conductor, rating) is { } size)
        {
            subject.Set(facts.SizeNeeded, size.ToString());
        }
    }

    /// <summary>
    /// Feeds, leads of plugged loads and the holder's own leads for which this fuse is what limits the current; and the wires
    /// before it on the only way from the bank, whose load it alone limits.
    /// </summary>
    private static IEnumerable<Weakest> Downstream(WiredFuse fuse, GatherContext context)
    {
        double rating = fuse.Fuse.Rating.Value.Amperes;
        foreach (WiredConductor wire in context.Wiring.Of<WiredConductor>())
        {
            if (!context.Guards.IsReturn(wire) && !ConductorGatherer.IsSense(wire.Conductor, context)
                && context.Guards.Of(wire) is { } guard && guard.FuseId == fuse.Part.Id && guard.Amps >= rating)
            {
                double together = ConductorGatherer.BesideAndSelf(wire, context).Sum(w => context.Ampacities.Amps(w.Conductor));
                yield return new Weakest(wire.Part.Id, wire.Conductor.Size.Value, together, wire.Conductor);
            }
        }

        foreach (WiredConductor wire in context.Guards.OnlyWayTo(fuse))
        {
            yield return new Weakest(wire.Part.Id, wire.Conductor.Size.Value, context.Ampacities.Amps(wire.Conductor), wire.Conductor) { Before = true };
        }

        foreach (WiredLoad load in context.Wiring.Of<WiredLoad>())
        {
            if (load is { LeadPlus: { } lead, Load.Lead: { } described } && GuardAt(lead.B, context) == fuse.Part.Id)
            {
                yield return new Weakest($"the lead of {load.Part.Id}", described.Size.Value, context.Ampacities.LeadAmps(described.Size.Value), null);
            }
        }

        if (fuse.Fuse.Holder?.Lead is { } own)
        {
            yield return new Weakest($"the lead of its holder", own.Value, context.Ampacities.LeadAmps(own.Value), null);
        }
    }

    private static string? GuardAt(int node, GatherContext context) =>
        context.Sources.Where(s => context.Wiring[s.PartId] is WiredBank)
            .Select(s => context.Guards.Against(s)[node])
            .Where(g => g is { Reached: true, Unfused: false })
            .OrderByDescending(g => g.Amps)
            .Select(g => g.FuseId)
            .FirstOrDefault();

    private sealed record Weakest(string Id, ConductorSize Size, double Amps, Conductor? Conductor)
    {
        internal bool Before { get; init; }

        internal string Words => $"{Id} ({Size}, {Keeping.Words(Math.Round(Amps, 1), "A")})";
    }
}
