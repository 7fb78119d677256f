using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Faults.SingleFaults;

namespace WireCheck.Facts.Gather;

/// <summary>Facts of a conductor leg that tell which fuses and sources stand at its ends.</summary>
internal static class ConductorGuardGatherer
{
    internal static void Gather(WiredConductor wire, FactSubject subject, GatherContext context)
    {
        ConductorGuard guard = context.Guards.Of(wire);
        if (guard.Amps is { } amps)
        {
            subject.Set(ConductorGuardFacts.ProtectionRating, amps);
            if (guard.FuseId is not null)
            {
                subject.Set(ConductorGuardFacts.ProtectionId, guard.FuseId);
            }
        }

        if (guard.Together.Count > 0)
        {
            subject.SetNames(ConductorGuardFacts.ProtectedTogether, guard.Together);
        }

        subject.Set(ConductorGuardFacts.UnprotectedCurrent, guard.UnfusedAmps);
        if (guard.UnfusedSource is not null)
        {
            subject.Set(ConductorGuardFacts.UnprotectedSource, guard.UnfusedSource);
        }

        subject.Set(ConductorGuardFacts.FuseFollows, guard.UnfusedSource is { } source && FuseFollows(wire, source, context));
        GatherWayFromBank(wire, subject, context);
        if (context.Guards.IsReturn(wire))
        {
            GatherLostReturns(wire, subject, context);
        }
    }

    /// <summary>True when the way on from the end away from the source, without fuses, comes to a fuse.</summary>
    internal static bool FuseFollows(WiredConductor wire, string source, GatherContext context)
    {
        SourcePoint point = context.Sources.First(s => s.PartId == source);
        bool[] without = Reach.From(context.Graph, point.Plus, e => e.PartId != wire.Part.Id && e.FuseAmps is null);
        foreach ((int near, int far) in new[] { (wire.Element.A, wire.Element.B), (wire.Element.B, wire.Element.A) })
        {
            if (!without[near])
            {
                continue;
            }

            bool[] on = Reach.From(context.Graph, far, e => e.PartId != wire.Part.Id && e.FuseAmps is null);
            if (context.Graph.Edges.Any(e => e.FuseAmps is not null && (on[e.From] || on[e.To])))
            {
                return true;
            }
        }

        return false;
    }

    private static void GatherWayFromBank(WiredConductor wire, FactSubject subject, GatherContext context)
    {
        (int Node, string Bank)? start = StartAtBank(wire, context);
        subject.Set(ConductorGuardFacts.LeavesBank, start is not null);
        if (start is not { } from)
        {
            return;
        }

        int near = from.Node;
        subject.Set(ConductorGuardFacts.BankLeft, from.Bank);
        UnfusedWays all = UnfusedWays.From(context.Graph, near, null);
        subject.Set(ConductorGuardFacts.BankFused, all.Fuses.Count > 0);
        UnfusedWays through = UnfusedWays.From(context.Graph, near, wire.Part.Id);
        if (through.Fuses.Count > 0)
        {
            UnfusedWay longest = through.Fuses.MaxBy(f => f.Metres)!;
            subject.Set(ConductorGuardFacts.DistanceToFuse, longest.Metres);
            subject.Set(ConductorGuardFacts.FirstFuse, longest.FuseId);
            if (through.Fuses.Where(f => !f.Sleeved).MaxBy(f => f.Metres) is { } bare)
            {
                subject.Set(ConductorGuardFacts.BareDistanceToFuse, bare.Metres);
                subject.Set(ConductorGuardFacts.BareFirstFuse, bare.FuseId);
            }
        }
    }

    /// <summary>A bank's positive node, or the outgoing node of its high-side BMS, where the wire starts; null elsewhere.</summary>
    private static (int Node, string Bank)? StartAtBank(WiredConductor wire, GatherContext context)
    {
        if (ConductorGatherer.IsSense(wire.Conductor, context))
        {
            return null;
        }

        List<(int Node, string Bank)> starts =
            [.. context.Wiring.Of<WiredBank>().Select(b => (context.Wiring.Node(b.Part.Id, "+"), b.Part.Id))];
        foreach (WiredBms bms in context.Wiring.Of<WiredBms>().Where(b => b.Bms.Side.Value == BmsSide.High))
        {
            bool[] behind = Reach.From(context.Graph, bms.Path.A, e => e.PartId != bms.Part.Id);
            string bank = starts.Find(s => behind[s.Node]).Bank ?? bms.Part.Id;
            starts.Add((bms.Path.B, bank));
        }

        int found = starts.FindIndex(s => s.Node == wire.Element.A);
        found = found >= 0 ? found : starts.FindIndex(s => s.Node == wire.Element.B);
        return found < 0 ? null : starts[found];
    }

    /// <summary>What this return carries when any other that has a way round it has come off.</summary>
    private static void GatherLostReturns(WiredConductor wire, FactSubject subject, GatherContext context)
    {
        foreach (SingleFault lost in context.SingleFaults.ReturnsWithWayRound)
        {
            if (lost.PartId == wire.Part.Id)
            {
                continue;
            }

            double amps = Math.Abs(lost.Point.Amps(wire.Element));
            double held = subject.Find(ConductorGuardFacts.CurrentWithReturnLost.Name)?.Value as double? ?? -1;
            subject.KeepLargest(ConductorGuardFacts.CurrentWithReturnLost, amps, GatherContext.PlaceOf(lost.Point));
            if (amps > held)
            {
                subject.Set(ConductorGuardFacts.ReturnLost, lost.PartId);
            }
        }
    }
}
