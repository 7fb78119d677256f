using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Knowledge;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Facts of a conductor leg: what it carries, what it may carry, how it is ended.</summary>
public sealed class ConductorGatherer : Gatherer<Conductor>
{
    public override void Gather(Conductor part, FactSubject subject, GatherContext context)
    {
        WiredConductor wire = (WiredConductor)context.Wiring[part.Id];
        subject.Set(ConductorFacts.From, part.From.ToString());
        subject.Set(ConductorFacts.To, part.To.ToString());
        subject.Set(ConductorFacts.Size, part.Size.Value.ToString());
        subject.Set(ConductorFacts.Length, part.Length.Value.Meters);
        subject.Set(ConductorFacts.Material, part.Material.Value);
        subject.Set(ConductorFacts.Insulation, part.Insulation.Value);
        subject.Set(ConductorFacts.Strands, (part.Strands?.Value ?? Strands.Fine) switch
        {
            Strands.Solid => "solid",
            Strands.Coarse => "coarse",
            _ => "fine",
        });
        subject.Set(ConductorFacts.Moving, part.Moving?.Value == true);
        subject.Set(ConductorFacts.IsReturn, context.Guards.IsReturn(wire));
        subject.Set(ConductorFacts.IsSense, IsSense(part, context));
        GatherCurrents(wire, subject, context);
        GatherAmpacity(part, subject, context);
        ConductorTables.Gather(part, subject, context);
        GatherEnds(part, subject, context);
        GatherParallel(wire, subject, context);
        JointHeat.OfConductor(wire, subject, context);
        ConductorHeatGathering.Add(wire, subject, context);
        ConductorGuardGatherer.Gather(wire, subject, context);
        context.Coordination.Gather(wire, subject);
        SecondSource.Gather(wire, subject, context);
        SenseGuards.Gather(wire, subject, context);
        SingleFaultGathering.AddCaseTouch(wire, subject, context);
        GatherSizeNeeded(part, subject, context);
        NoteIfAssumed(subject, part, part.Insulation, "insulation", "ampacity", "temperature_limit", "size_needed", "fault_heat_share", "fault_temperature_limit", "short_margin", "worst_margin", "insulation");
    }

    /// <summary>True when an end is a sense input of a BMS.</summary>
    internal static bool IsSense(Conductor part, GatherContext context) =>
        context.Pack.IsSense(part);

    private static void GatherCurrents(WiredConductor wire, FactSubject subject, GatherContext context)
    {
        foreach (OperatingPoint point in context.Box.Points)
        {
            FactPlace place = GatherContext.PlaceOf(point);
            double amps = Math.Abs(point.Amps(wire.Element));
            if (point.Mode.Steady)
            {
                subject.KeepLargest(ConductorFacts.Current, amps, place);
            }

            subject.KeepLargest(ConductorFacts.Drop, Math.Abs(point.Volts(wire.Element.A, wire.Element.B)), place);
        }
    }

    private static void GatherAmpacity(Conductor part, FactSubject subject, GatherContext context)
    {
        subject.Set(ConductorFacts.Ambient, context.Ampacities.AmbientOf(part));
        subject.Set(ConductorFacts.BundleCount, (double)context.Ampacities.BundleCount(part));
        Ampacity? ampacity = context.Ampacities.Of(part);
        subject.Set(ConductorFacts.Ampacity, ampacity?.Amps ?? 0);
        if (ampacity is not null)
        {
            subject.Set(ConductorFacts.AmpacityBasis, string.Join(
                ", ", [$"{ampacity.Source.Work} {ampacity.Source.Clause}".Trim() + $" ({StandingWords.For(ampacity.Source.Standing)})", .. ampacity.Factors.Select(f => f.Words)]));
        }

        if (part.Resistance is { } given)
        {
            Material material = context.Library.Materials[part.Material.Value];
            subject.Set(ConductorFacts.ResistanceRatio, given.Value.OhmsPerMetre
                / context.Library.Conductors.OhmsPerMetre(part.Size.Value, material, 20));
        }
    }

    private static void GatherEnds(Conductor part, FactSubject subject, GatherContext context)
    {
        double area = ConductorTable.Area(part.Size.Value);
        double under = context.Data.Assumed("end_size_under");
        double over = context.Data.Assumed("end_size_over");
        List<string> unfit = [];
        (double Amps, string Where)? lowest = null;
        foreach ((ConductorEnd end, Description.TerminalReference at) in new[] { (part.FromEnd, part.From), (part.ToEnd, part.To) })
        {
            JointClass joint = context.Library.Joints[end.Class.Value];

            // Gauge sizes never meet a metric limit to the last digit.
            if (area < joint.SmallestArea * (1 - under) || area > joint.LargestArea * (1 + over))
            {
                unfit.Add(FormattableString.Invariant(
                    $"{joint.Name} at {at}, which takes {joint.SmallestArea * 1e6:0.##} to {joint.LargestArea * 1e6:0.##} mm²"));
            }

            if (joint.CurrentLimit(area) is { } amps && amps < (lowest?.Amps ?? double.PositiveInfinity))
            {
                lowest = (amps, $"{joint.Name} at {at}");
            }
        }

        subject.Set(ConductorFacts.UnfitEnds, unfit);
        subject.Set(ConductorFacts.SolderEnd, new[] { part.FromEnd, part.ToEnd }.Any(e => context.Library.Joints[e.Class.Value].Solder));
        if (lowest is { } found)
        {
            subject.Set(ConductorFacts.EndRating, found.Amps);
            subject.Set(ConductorFacts.EndRatingWhere, found.Where);
        }
    }

    private static void GatherParallel(WiredConductor wire, FactSubject subject, GatherContext context)
    {
        WiredConductor[] beside = [.. BesideAndSelf(wire, context)];
        subject.Set(ConductorFacts.ParallelCount, (double)beside.Length);
        if (beside.Length < 2)
        {
            return;
        }

        OperatingPoint most = context.Box.Steady.MaxBy(p => beside.Sum(b => Math.Abs(p.Amps(b.Element))))!;
        double mean = beside.Average(b => Math.Abs(most.Amps(b.Element)));
        if (mean > 0)
        {
            subject.KeepLargest(ConductorFacts.ParallelShare, Math.Abs(most.Amps(wire.Element)) / mean, GatherContext.PlaceOf(most));
        }
    }

    /// <summary>All conductors between the same two terminals, itself included.</summary>
    internal static IEnumerable<WiredConductor> BesideAndSelf(WiredConductor wire, GatherContext context) =>
        context.Graph.At(wire.Element.A)
            .Where(e => e.Other(wire.Element.A) == wire.Element.B)
            .Select(e => context.Wiring.Find<WiredConductor>(e.PartId))
            .OfType<WiredConductor>();

    private static void GatherSizeNeeded(Conductor part, FactSubject subject, GatherContext context)
    {
        double amps = Math.Max(NumberOf(subject, ConductorFacts.Current), NumberOf(subject, ConductorGuardFacts.ProtectionRating));
        amps = Math.Max(amps, NumberOf(subject, ConductorGuardFacts.CurrentWithReturnLost));
        foreach (WiredFuse fuse in context.Wiring.Of<WiredFuse>())
        {
            if (context.Guards.OnlyWayTo(fuse).Any(w => w.Part.Id == part.Id))
            {
                amps = Math.Max(amps, fuse.Fuse.Rating.Value.Amperes);
            }
        }

        if (context.Ampacities.SizeNeeded(part, amps) is { } size)
        {
            subject.Set(ConductorFacts.SizeNeeded, size.ToString());
        }
    }

    private static double NumberOf(FactSubject subject, Fact fact) => subject.Find(fact.Name)?.Value as double? ?? 0;
}
