using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;

namespace WireCheck.Facts.Gather;

/// <summary>Facts of a joint without a conductor.</summary>
public sealed class JointGatherer : Gatherer<Joint>
{
    public override void Gather(Joint part, FactSubject subject, GatherContext context) =>
        JointHeat.OfJoint((WiredJoint)context.Wiring[part.Id], subject, context);
}
