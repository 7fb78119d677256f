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
/// <param name="Mode">The mode in which it makes the most heat.</param>
/// <param name="Amps">The current there, A; of a conductor the steady one that heats as much where loads pause.</param>
/// <param name="Watts">Heat it makes when aged, W.</param>
/// <param name="RiseKelvin">About how much warmer it is than its wire, K; null where it has no wire of its own.</param>
/// <param name="Celsius">About how warm that makes it, °C; null where it has no wire of its own.</param>
/// <param name="TestAmps">Test current for the bench, A.</param>
/// <param name="NewVolts">Drop to expect at the test current when new, V.</param>
/// <param name="AgedVolts">The same when aged: more wants a second look, V.</param>
public sealed record JointNumbers(
    string Part, string Where, string Mode, double Amps, double Watts, double? RiseKelvin, double? Celsius, double TestAmps, double NewVolts, double AgedVolts)
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
                Add(joints, context, JointHeat.Warmest(fuse.Element, context), new Joint(
                    fuse.Part.Id, "both contacts of its holder", context.Data.HolderOhms(fuse.Fuse, aged: false), aged, fuse.Fuse.Rating.Value.Amperes, null));
            }
        }

        foreach (WiredJoint joint in context.Wiring.Of<WiredJoint>())
        {
            double Ohms(bool aged) => joint.Joint.Resistance?.Value.Ohms ?? context.Data.JointOhms(joint.Joint.JointKind.Value, null, aged);
            Add(joints, context, JointHeat.Warmest(joint.Element, context), new Joint(
                joint.Part.Id, "itself", Ohms(false), Ohms(true), double.MaxValue, null));
        }

        return [.. joints.OrderByDescending(j => j.Watts).ThenBy(j => j.Part, StringComparer.Ordinal).ThenBy(j => j.Where, StringComparer.Ordinal)];
    }

    private static void AddEnds(WiredConductor wire, GatherContext context, List<JointNumbers> joints)
    {
        Conductor conductor = wire.Conductor;
        foreach ((ConductorEnd end, Description.TerminalReference at) in new[] { (conductor.FromEnd, conductor.From), (conductor.ToEnd, conductor.To) })
        {
            double Ohms(bool aged) => context.Data.JointOhms(end, conductor.Size.Value, aged);
            Add(joints, context, JointHeat.Warmest(wire, context), new Joint(
                wire.Part.Id, $"{end.Class.Value} at {at}", Ohms(false), Ohms(true), context.Ampacities.Amps(conductor), wire));
        }
    }

    private static void Add(List<JointNumbers> joints, GatherContext context, (HeatedMode Mode, double Amps)? warmest, Joint joint)
    {
        if (warmest is not { } warm)
        {
            return;
        }

        double watts = warm.Amps * warm.Amps * joint.Aged;
        double? rise = null;
        double? celsius = null;
        if (joint.Wire is { } wire)
        {
            rise = JointRise.Kelvin(
                watts, WireShape.Of(wire.Conductor, context.Library), wire.Conductor.Length.Value.Meters, context.Data.Assumed("joint_loss"));
            celsius = warm.Mode.ConductorCelsius[ConductorHeatGathering.PlaceOf(wire, context)] + rise;
        }

        double test = context.Data.Assumed("joint_test_current");
        test = joint.Ampacity >= test ? test : context.Data.Assumed("joint_test_current_small");
        joints.Add(new JointNumbers(
            joint.Part, joint.Where, warm.Mode.Mode.Id, warm.Amps, watts, rise, celsius, test, test * joint.New, test * joint.Aged));
    }

    private sealed record Joint(string Part, string Where, double New, double Aged, double Ampacity, WiredConductor? Wire);
}
