using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Facts.Catalogue;

namespace WireCheck.Facts.Gather;

/// <summary>Where a fuse stands: in which pole, and beside which others.</summary>
internal static class FusePlace
{
    internal static void Gather(WiredFuse fuse, OvercurrentFacts facts, FactSubject subject, GatherContext context)
    {
        bool inReturn = context.Poles[fuse.Element.A] == Pole.Negative && context.Poles[fuse.Element.B] == Pole.Negative;
        subject.Set(facts.InReturn, inReturn);
        if (inReturn)
        {
            subject.SetWord(facts.UnfusedFeed, UnfusedFeed(fuse, context));
        }

        subject.SetNames(facts.Beside, Beside(fuse, context));
        subject.SetWord(facts.Marked, fuse.Fuse.Marked?.Value);
        subject.Set(facts.OthersMarked, AnyMarked(context));
    }

    /// <summary>A consumer, coil or port whose current comes back through this fuse alone and whose feed has none; null when every feed has its own.</summary>
    private static string? UnfusedFeed(WiredFuse fuse, GatherContext context)
    {
        foreach (SourcePoint source in context.Sources)
        {
            if (context.Wiring[source.PartId] is not WiredBank)
            {
                continue;
            }

            bool[] still = Reach.From(context.Graph, source.Minus, e => e.PartId != fuse.Part.Id, against: true);
            Guard[] guards = context.Guards.Against(source);
            foreach (PowerTap tap in PowerTap.In(context.Wiring))
            {
                if (!still[tap.Minus] && guards[tap.Plus] is { Reached: true, Unfused: true })
                {
                    return tap.PartId;
                }
            }
        }

        return null;
    }

    /// <summary>Other fuses between the same two pieces of wiring: wire, bars and joints alone join their ends.</summary>
    private static List<string> Beside(WiredFuse fuse, GatherContext context)
    {
        List<string> beside = [];
        bool[] one = Joined(fuse.Element.A, context);
        if (one[fuse.Element.B])
        {
            return beside;
        }

        bool[] other = Joined(fuse.Element.B, context);
        foreach (WiredFuse candidate in context.Wiring.Of<WiredFuse>())
        {
            (int a, int b) = (candidate.Element.A, candidate.Element.B);
            if (candidate.Part.Id != fuse.Part.Id && ((one[a] && other[b]) || (one[b] && other[a])))
            {
                beside.Add(candidate.Part.Id);
            }
        }

        return beside;
    }

    private static bool[] Joined(int node, GatherContext context) => Reach.From(
        context.Graph, node, e => context.Wiring[e.PartId] is WiredConductor or WiredJoint or WiredBusbar);

    private static bool AnyMarked(GatherContext context)
    {
        foreach (WiredFuse fuse in context.Wiring.Of<WiredFuse>())
        {
            if (fuse.Fuse.Marked is not null)
            {
                return true;
            }
        }

        return false;
    }
}
