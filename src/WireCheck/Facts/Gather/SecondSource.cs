using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Facts.Catalogue;

namespace WireCheck.Facts.Gather;

/// <summary>
/// Looks for a conductor with a source at each end of which only one stands behind a fuse. Only sources that can drive more
/// than its ampacity count.
/// </summary>
internal static class SecondSource
{
    internal static void Gather(WiredConductor wire, FactSubject subject, GatherContext context)
    {
        ConductorGuard guard = context.Guards.Of(wire);
        double ampacity = context.Ampacities.Amps(wire.Conductor);
        if (guard.UnfusedSource is not { } unfused || guard.UnfusedAmps <= ampacity)
        {
            return;
        }

        SourcePoint near = context.Sources.First(s => s.PartId == unfused);
        bool[] fromNear = Reach.From(context.Graph, near.Plus, e => e.PartId != wire.Part.Id && e.FuseAmps is null);
        foreach (SourcePoint far in context.Sources)
        {
            if (far.PartId == unfused || Math.Min(far.LimitAmps, context.Guards.ShortAmps(far, wire)) <= ampacity)
            {
                continue;
            }

            bool[] fromFar = Reach.From(context.Graph, far.Plus, e => e.PartId != wire.Part.Id);
            foreach ((int one, int other) in new[] { (wire.Element.A, wire.Element.B), (wire.Element.B, wire.Element.A) })
            {
                Guard at = context.Guards.Against(far)[other];
                if (fromNear[one] && fromFar[other] && at is { Reached: true, Unfused: false, FuseId: { } fuse })
                {
                    subject.Set(ConductorGuardFacts.SecondSource, far.PartId);
                    subject.Set(ConductorGuardFacts.SecondSourceFuse, fuse);
                    subject.Set(ConductorGuardFacts.UnfusedReach, ReachOf(near, one, wire, context));
                    return;
                }
            }
        }
    }

    /// <summary>Wire from the unfused source through this conductor, m.</summary>
    private static double ReachOf(SourcePoint source, int near, WiredConductor wire, GatherContext context) =>
        UnfusedWays.From(context.Graph, source.Plus, null).MetresTo(near) + wire.Conductor.Length.Value.Meters;
}
