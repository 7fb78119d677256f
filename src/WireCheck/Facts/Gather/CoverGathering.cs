using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers whether bare live metal is covered and cells stay where they are.</summary>
internal static class CoverGathering
{
    internal static void Add(Cells part, FactSubject subject, GatherContext context)
    {
        subject.Set(CoverFacts.Cells.LiveAtRest, true);
        if (part.Covered is { } covered)
        {
            subject.Set(CoverFacts.Cells.Covered, covered.Value);
        }

        subject.Set(CoverFacts.Cells.Boxed, context.Pack.Surroundings.Enclosure is not null);
        if (context.Pack.Surroundings.Enclosure?.HoldDown is { } hold)
        {
            subject.Set(CoverFacts.Cells.HeldDown, hold.Value);
        }
    }

    internal static void Add(Busbar part, FactSubject subject, GatherContext context)
    {
        if (part.Covered is { } covered)
        {
            subject.Set(CoverFacts.Busbar.Covered, covered.Value);
        }

        foreach (OperatingPoint point in context.SolvedPoints())
        {
            if (point.Mode.Id == Modes.Stored)
            {
                subject.Set(CoverFacts.Busbar.LiveAtRest, IsLive(part, point, context.Wiring));
                return;
            }
        }
    }

    private static bool IsLive(Busbar part, OperatingPoint point, BoxWiring wiring)
    {
        int zero = wiring.Network.Reference;
        foreach (KeyValuePair<(string Part, string Terminal), int> node in wiring.Nodes)
        {
            if (node.Key.Part == part.Id && point.Solution.Island(node.Value) == point.Solution.Island(zero)
                && Math.Abs(point.Volts(node.Value, zero)) > wiring.Data.Assumed("live_above"))
            {
                return true;
            }
        }

        return false;
    }
}
