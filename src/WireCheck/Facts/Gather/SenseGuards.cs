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
        double fuse = LargestFuse(wire, context);
        subject.Set(SenseLeadFacts.Conductor.Unfused, double.IsPositiveInfinity(fuse));
        subject.SetNumber(SenseLeadFacts.Conductor.Fuse, fuse > 0 && double.IsFinite(fuse) ? fuse : null);
        subject.SetNumber(SenseLeadFacts.Conductor.Ampacity, context.Ampacities.Amps(wire.Conductor));
        subject.Set(SenseLeadFacts.Conductor.Size, wire.Conductor.Size.Value.ToString());
        subject.Set(SenseLeadFacts.Conductor.Length, wire.Conductor.Length.Value.Meters);
        subject.Set(SenseLeadFacts.Conductor.Exposed, outside || wire.Conductor.ThroughWall is not null);
    }

    /// <summary>Leads that a BMS tells in short.</summary>
    internal static void Gather(Bms bms, FactSubject subject, GatherContext context)
    {
        if (bms.Sense is not { } sense)
        {
            return;
        }

        subject.Set(SenseLeadFacts.Bms.Unfused, sense.Fuse is null);
        subject.SetNumber(SenseLeadFacts.Bms.Fuse, sense.Fuse?.Value.Amperes);
        subject.SetNumber(SenseLeadFacts.Bms.Ampacity, context.Ampacities.LeadAmps(sense.Size.Value));
        subject.Set(SenseLeadFacts.Bms.Size, sense.Size.Value.ToString());
        subject.Set(SenseLeadFacts.Bms.Length, sense.Length.Value.Meters);
        subject.Set(SenseLeadFacts.Bms.Exposed, false);
    }

    /// <summary>
    /// The fuse between the lead and a pole or tap of a bank, A: on each way the smallest, of all ways and taps the largest; infinite
    /// when an end of the lead is joined to one with no fuse between, 0 when it is joined to none.
    /// </summary>
    private static double LargestFuse(WiredConductor wire, GatherContext context)
    {
        double largest = 0;
        foreach (WiredBank bank in context.Wiring.Of<WiredBank>())
        {
            for (int group = 0; group <= bank.Cells.Series.Value; group++)
            {
                string terminal = group == 0 ? "-"
                    : group == bank.Cells.Series.Value ? "+"
                    : FormattableString.Invariant($"t{group}");
                Guard[] guards = WeakestFuse.Guards(context.Graph, context.Wiring.Node(bank.Part.Id, terminal), 0, wire.Part.Id);
                largest = Math.Max(largest, Math.Max(guards[wire.Element.A].Amps, guards[wire.Element.B].Amps));
            }
        }

        return largest;
    }
}
