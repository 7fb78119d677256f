using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>A joint without a conductor, as one resistance.</summary>
public sealed class WiredJoint(Joint joint, WiringData data, Resistance element) : WiredPart(joint)
{
    public Joint Joint { get; } = joint;

    public Resistance Element { get; } = element;

    public override IEnumerable<Element> Elements => [Element];

    /// <summary>A joint said to be 0 Ω gets this, Ω: far below any that is measured, and still something to solve with.</summary>
    private const double LeastOhms = 1e-7;

    public override void SetConditions(Conditions conditions) =>
        Element.Ohms = Joint.Resistance is { } given ? Math.Max(LeastOhms, given.Value.Ohms) : data.JointOhms(Joint.JointKind.Value, null, conditions.HighestResistance);
}

/// <summary>How a joint becomes elements.</summary>
public sealed class JointWiring : KindWiring<Joint>
{
    public override WiredPart AddElements(Joint part, WiringBuilder builder) =>
        new WiredJoint(part, builder.Data, builder.Add(
            new Resistance(part.Id, builder.Node(part.First), builder.Node(part.Second), 1)));
}
