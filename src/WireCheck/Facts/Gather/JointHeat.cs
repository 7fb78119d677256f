using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Heat;
using WireCheck.Knowledge;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Heat in joints: the square of the largest steady current times the resistance of the aged joint.</summary>
internal static class JointHeat
{
    /// <summary>The two ends of a conductor.</summary>
    internal static void OfConductor(WiredConductor wire, FactSubject subject, GatherContext context)
    {
        Conductor conductor = wire.Conductor;
        (OperatingPoint point, double amps) = Largest(wire.Element, context);
        foreach ((ConductorEnd end, Description.TerminalReference at) in new[] { (conductor.FromEnd, conductor.From), (conductor.ToEnd, conductor.To) })
        {
            double watts = amps * amps * context.Data.JointOhms(end, conductor.Size.Value, aged: true);
            double rise = JointRise.Kelvin(
                watts, WireShape.Of(conductor, context.Library), conductor.Length.Value.Meters, context.Data.Assumed("joint_loss"));
            Keep(subject, JointHeatFacts.Conductor, context.Library.Joints[end.Class.Value], point, watts, $"the {end.Class.Value} at {at}", rise < MostRise ? rise : null);
        }
    }

    /// <summary>An estimate beyond this says no more than that the joint does not last, K.</summary>
    private const double MostRise = 200;

    /// <summary>The two contacts of a fuse's holder.</summary>
    internal static void OfFuse(WiredFuse fuse, FactSubject subject, GatherContext context)
    {
        if (fuse.Fuse.Holder is null)
        {
            return;
        }

        (OperatingPoint point, double amps) = Largest(fuse.Element, context);
        double ohms = context.Data.HolderOhms(fuse.Fuse, aged: true) / 2;
        JointHeatFacts facts = fuse.Fuse.IsBreaker ? JointHeatFacts.Breaker : JointHeatFacts.Fuse;
        JointClass? joint = fuse.Fuse.Holder.Class is { } named ? context.Library.Joints.Find(named.Value) : null;
        if (joint is not null)
        {
            Keep(subject, facts, joint, point, amps * amps * ohms, "each contact of its holder");
        }
        else if (ohms > 0)
        {
            KeepAs(subject, facts, context.Library.Fuses[fuse.Fuse.Class.Value].Body != "bolted", point, amps * amps * ohms, "each contact of its holder");
        }
    }

    /// <summary>A joint that is a part of its own.</summary>
    internal static void OfJoint(WiredJoint joint, FactSubject subject, GatherContext context)
    {
        (OperatingPoint point, double amps) = Largest(joint.Element, context);
        double ohms = joint.Joint.Resistance?.Value.Ohms ?? context.Data.JointOhms(joint.Joint.JointKind.Value, null, aged: true);
        Keep(subject, JointHeatFacts.Joint, context.Library.Joints[joint.Joint.JointKind.Value], point, amps * amps * ohms, "the joint");
    }

    /// <summary>The steady point at which an element carries the most, and what it carries, A.</summary>
    internal static (OperatingPoint Point, double Amps) Largest(Element element, GatherContext context)
    {
        OperatingPoint most = context.Box.Steady.MaxBy(p => Math.Abs(p.Amps(element)))!;
        return (most, Math.Abs(most.Amps(element)));
    }

    private static void Keep(FactSubject subject, JointHeatFacts facts, JointClass joint, OperatingPoint point, double watts, string where, double? rise = null) =>
        KeepAs(subject, facts, joint.HeatsAsPushOn, point, watts, where, rise);

    private static void KeepAs(FactSubject subject, JointHeatFacts facts, bool pushOn, OperatingPoint point, double watts, string where, double? rise = null)
    {
        (Fact power, Fact place) = pushOn ? (facts.PushOnPower, facts.PushOnWhere) : (facts.BoltedPower, facts.BoltedWhere);
        if (subject.Find(power.Name)?.Value is not double held || watts > held)
        {
            subject.KeepLargest(power, watts, GatherContext.PlaceOf(point));
            subject.Set(place, where);
            subject.SetNumber(pushOn ? facts.PushOnRise : facts.BoltedRise, rise);
        }
    }
}
