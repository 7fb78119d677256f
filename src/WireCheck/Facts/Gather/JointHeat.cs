using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Heat;
using WireCheck.Knowledge;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>
/// Heat in joints: the square of the largest lasting current in the warm box times the resistance of the aged joint, which is also what
/// the box is warmed with. A joint of a conductor counts the pauses of loads as the conductor does; a contact without a wire is
/// small and soon warm, and takes the peak.
/// </summary>
internal static class JointHeat
{
    /// <summary>The two ends of a conductor.</summary>
    internal static void OfConductor(WiredConductor wire, FactSubject subject, GatherContext context)
    {
        Conductor conductor = wire.Conductor;
        if (Warmest(wire, context) is not { } warmest)
        {
            return;
        }

        foreach ((ConductorEnd end, Description.TerminalReference at) in new[] { (conductor.FromEnd, conductor.From), (conductor.ToEnd, conductor.To) })
        {
            double watts = warmest.Amps * warmest.Amps * context.Data.JointOhms(end, conductor.Size.Value, aged: true);
            double rise = JointRise.Kelvin(
                watts, WireShape.Of(conductor, context.Library), conductor.Length.Value.Meters, context.Data.Assumed("joint_loss"));
            Keep(
                subject, JointHeatFacts.Conductor, context.Library.Joints[end.Class.Value].HeatsAsPushOn,
                new Heated(warmest.Mode.Point, watts, $"the {end.Class.Value} at {at}", rise < MostRise ? rise : null));
        }
    }

    /// <summary>An estimate beyond this says no more than that the joint does not last, K.</summary>
    private const double MostRise = 200;

    /// <summary>The two contacts of a fuse's holder.</summary>
    internal static void OfFuse(WiredFuse fuse, FactSubject subject, GatherContext context)
    {
        if (fuse.Fuse.Holder is null || Warmest(fuse.Element, context) is not { } warmest)
        {
            return;
        }

        double ohms = context.Data.HolderOhms(fuse.Fuse, aged: true) / 2;
        JointClass? joint = fuse.Fuse.Holder.Class is { } named ? context.Library.Joints.Find(named.Value) : null;
        if (joint is not null || ohms > 0)
        {
            Keep(
                subject, fuse.Fuse.IsBreaker ? JointHeatFacts.Breaker : JointHeatFacts.Fuse,
                joint?.HeatsAsPushOn ?? context.Library.Fuses[fuse.Fuse.Class.Value].Body != "bolted",
                new Heated(warmest.Mode.Point, warmest.Amps * warmest.Amps * ohms, "each contact of its holder", null));
        }
    }

    /// <summary>A joint that is a part of its own.</summary>
    internal static void OfJoint(WiredJoint joint, FactSubject subject, GatherContext context)
    {
        if (Warmest(joint.Element, context) is not { } warmest)
        {
            return;
        }

        double ohms = joint.Joint.Resistance?.Value.Ohms ?? context.Data.JointOhms(joint.Joint.JointKind.Value, null, aged: true);
        Keep(
            subject, JointHeatFacts.Joint, context.Library.Joints[joint.Joint.JointKind.Value].HeatsAsPushOn,
            new Heated(warmest.Mode.Point, warmest.Amps * warmest.Amps * ohms, "the joint", null));
    }

    /// <summary>The warm mode in which an element carries the most, and what it carries, A; null when no mode lasts.</summary>
    internal static (HeatedMode Mode, double Amps)? Warmest(Element element, GatherContext context)
    {
        HeatedMode? most = null;
        foreach (HeatedMode mode in context.Heat.Modes)
        {
            if (most is null || Math.Abs(mode.Point.Amps(element)) > Math.Abs(most.Point.Amps(element)))
            {
                most = mode;
            }
        }

        return most is null ? null : (most, Math.Abs(most.Point.Amps(element)));
    }

    /// <summary>The warm mode in which a conductor and its ends make the most heat, and the steady current that does so, A; null when no mode lasts.</summary>
    internal static (HeatedMode Mode, double Amps)? Warmest(WiredConductor wire, GatherContext context)
    {
        int place = ConductorHeatGathering.PlaceOf(wire, context);
        HeatedMode? most = null;
        foreach (HeatedMode mode in context.Heat.Modes)
        {
            if (most is null || mode.ConductorAmps[place] > most.ConductorAmps[place])
            {
                most = mode;
            }
        }

        return most is null ? null : (most, most.ConductorAmps[place]);
    }

    private static void Keep(FactSubject subject, JointHeatFacts facts, bool pushOn, Heated joint)
    {
        (Fact power, Fact place) = pushOn ? (facts.PushOnPower, facts.PushOnWhere) : (facts.BoltedPower, facts.BoltedWhere);
        if (subject.Find(power.Name)?.Value is not double held || joint.Watts > held)
        {
            subject.KeepLargest(power, joint.Watts, GatherContext.PlaceOf(joint.Point));
            subject.Set(place, joint.Where);
            subject.SetNumber(pushOn ? facts.PushOnRise : facts.BoltedRise, joint.Rise);
        }
    }

    private sealed record Heated(OperatingPoint Point, double Watts, string Where, double? Rise);
}
