using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;

namespace WireCheck.Facts.Gather;

/// <summary>Tells whether the thin leads between cells and a BMS have a fuse at the cell, drawn or told in short.</summary>
internal static class SenseGuards
{
    /// <summary>A lead drawn as a conductor.</summary>
    internal static void Gather(WiredConductor wire, FactSubject subject, GatherContext context)
    {
        if (!ConductorGatherer.IsSense(wire.Conductor, context))
        {
            return;
        }

        bool outside = wire.Conductor.Place?.Value == PartPlace.Outside;
        subject.Set(SenseLeadFacts.Conductor.Unfused, ReachesCells(wire, context));
        subject.Set(SenseLeadFacts.Conductor.Size, wire.Conductor.Size.Value.ToString());
        subject.Set(SenseLeadFacts.Conductor.Length, wire.Conductor.Length.Value.Meters);
        subject.Set(SenseLeadFacts.Conductor.Exposed, outside || wire.Conductor.ThroughWall is not null);
    }

    /// <summary>Leads that a BMS tells in short.</summary>
    internal static void Gather(Bms bms, FactSubject subject)
    {
        if (bms.Sense is not { } sense)
        {
            return;
        }

        subject.Set(SenseLeadFacts.Bms.Unfused, sense.Fuse is null);
        subject.Set(SenseLeadFacts.Bms.Size, sense.Size.Value.ToString());
        subject.Set(SenseLeadFacts.Bms.Length, sense.Length.Value.Meters);
        subject.Set(SenseLeadFacts.Bms.Exposed, false);
    }

    /// <summary>True when an end of the lead is joined to a pole or tap of a bank with no fuse between.</summary>
    private static bool ReachesCells(WiredConductor wire, GatherContext context)
    {
        bool[] fromA = Reach.From(context.Graph, wire.Element.A, e => Passes(e, wire));
        bool[] fromB = Reach.From(context.Graph, wire.Element.B, e => Passes(e, wire));
        foreach (WiredBank bank in context.Wiring.Of<WiredBank>())
        {
            for (int group = 0; group <= bank.Cells.Series.Value; group++)
            {
                string terminal = group == 0 ? "-"
                    : group == bank.Cells.Series.Value ? "+"
                    : FormattableString.Invariant($"t{group}");
                int node = context.Wiring.Node(bank.Part.Id, terminal);
                if (fromA[node] || fromB[node])
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static bool Passes(WiringEdge edge, WiredConductor wire) => edge.PartId != wire.Part.Id && edge.FuseAmps is null;
}
