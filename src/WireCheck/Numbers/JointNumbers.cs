using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Gather;
using WireCheck.Heat;
using WireCheck.States;

namespace WireCheck.Numbers;

/// <summary>One joint: an end of a conductor, the two contacts of a fuse's holder, a joint of its own.</summary>
/// <param name="Part">The conductor, fuse or joint it belongs to.</param>
/// <param name="Where">Where it sits, in words.</param>
/// <param name="Mode">The mode of its largest lasting current.</param>
/// <param name="Amps">That current, A.</param>
/// <param name="Watts">Heat it makes when aged, W.</param>
/// <param name="RiseKelvin">About how much warmer it is than its wire, K; null where it has no wire of its own.</param>
/// <param name="TestAmps">Test current for the bench, A.</param>
/// <param name="NewVolts">Drop to expect at the test current when new, V.</param>
/// <param name="AgedVolts">The same when aged: more wants a second look, V.</param>
public sealed record JointNumbers(
    string Part, string Where, string Mode, double Amps, double Watts, double? RiseKelvin, double TestAmps, double NewVolts, double AgedVolts)
{
    /// <summary>All joints, most heat first.</summary>
    internal static IReadOnlyList<JointNumbers> Of(GatherContext context)
    {
        List<JointNumbers> joints = [];
        foreach (WiredConductor wire in context.Wiring.Of<WiredConductor>())
        {
            AddEnds(wire, context, joints);
        }

        foreach (WiredFuse fuse in context.Wiring.Of<WiredFuse>())
        {
            double aged = context.Data.HolderOhms(fuse.Fuse, aged: true);
            if (aged > 0)
            {
                joints.Add(Make(fuse.Part.Id, "both contacts of its holder", fuse.Element, (context.Data.HolderOhms(fuse.Fuse, aged: false), aged),
                    null, fuse.Fuse.Rating.Value.Amperes, context));
            }
        }

        foreach (WiredJoint joint in context.Wiring.Of<WiredJoint>())
        {
            double Ohms(bool aged) => joint.Joint.Resistance?.Value.Ohms ?? context.Data.JointOhms(joint.Joint.JointKind.Value, null, aged);
            joints.Add(Make(joint.Part.Id, "itself", joint.Element, (Ohms(false), Ohms(true)), null, double.MaxValue, context));
        }

        return [.. joints.OrderByDescending(j => j.Watts).ThenBy(j => j.Part, StringComparer.Ordinal).ThenBy(j => j.Where, StringComparer.Ordinal)];
    }

    private static void AddEnds(WiredConductor wire, GatherContext context, List<JointNumbers> joints)
    {
        Conductor conductor = wire.Conductor;
        foreach ((ConductorEnd end, Description.TerminalReference at) in new[] { (conductor.FromEnd, conductor.From), (conductor.ToEnd, conductor.To) })
        {
            double Ohms(bool aged) => context.Data.JointOhms(end, conductor.Size.Value, aged);
            joints.Add(Make(
                wire.Part.Id, $"{end.Class.Value} at {at}", wire.Element, (Ohms(false), Ohms(true)), conductor, context.Ampacities.Amps(conductor), context));
        }
    }

    private static JointNumbers Make(
        string part, string where, Element element, (double New, double Aged) ohms, Conductor? wire, double ampacity, GatherContext context)
    {
        (OperatingPoint point, double amps) = JointHeat.Largest(element, context);
        double watts = amps * amps * ohms.Aged;
        double? rise = wire is null ? null : JointRise.Kelvin(
            watts, WireShape.Of(wire, context.Library), wire.Length.Value.Meters, context.Data.Assumed("joint_loss"));
        double test = context.Data.Assumed("joint_test_current");
        test = ampacity >= test ? test : context.Data.Assumed("joint_test_current_small");
        return new JointNumbers(part, where, point.Mode.Id, amps, watts, rise, test, test * ohms.New, test * ohms.Aged);
    }
}
