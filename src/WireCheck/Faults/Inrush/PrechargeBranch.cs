using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;

namespace WireCheck.Faults.Inrush;

/// <summary>
/// A resistor found to go round a contact. A description does not say what a resistor is for: one that joins the two sides of
/// an open contact, with a source on one side and capacitors on the other, is a precharge.
/// </summary>
internal sealed record PrechargeBranch(
    WiredResistor Resistor, WiredPart Contact, IReadOnlyList<WiredPart> WorkedBy, IReadOnlyList<InrushCapacitor> Capacitors)
{
    /// <summary>The relay whose coil hangs on what the branch charges: it pulls in by itself on the way up. Null when none does.</summary>
    internal WiredRelay? PullsIn { get; init; }

    /// <summary>Every precharge of a box; a box without resistors or capacitors costs nothing.</summary>
    internal static IReadOnlyList<PrechargeBranch> In(BoxWiring wiring, IReadOnlyList<InrushCapacitor> capacitors)
    {
        List<PrechargeBranch> found = [];
        WiredResistor[] resistors = [.. wiring.Of<WiredResistor>()];
        if (resistors.Length == 0 || capacitors.Count == 0)
        {
            return found;
        }

        WiringGraph graph = WiringGraph.Of(wiring);
        Search search = new(wiring, graph, capacitors, [.. SourcePoint.In(wiring).Where(s => wiring[s.PartId] is WiredBank)]);
        foreach (WiredPart contact in wiring.Parts)
        {
            if (contact is not (WiredRelay or WiredSwitch))
            {
                continue;
            }

            foreach ((int a, int b) in Ways(contact))
            {
                bool[] sideA = Side(graph, a, contact.Part.Id);
                bool[] sideB = Side(graph, b, contact.Part.Id);
                if (sideA[b])
                {
                    continue;
                }

                foreach (WiredResistor resistor in resistors)
                {
                    if (Joins(resistor, sideA, sideB)
                        && (search.Of(resistor, contact, (a, b), sideA, sideB)
                            ?? search.Of(resistor, contact, (b, a), sideB, sideA)) is { } branch)
                    {
                        found.Add(branch);
                    }
                }
            }
        }

        return found;
    }

    private static IEnumerable<(int A, int B)> Ways(WiredPart contact)
    {
        if (contact is WiredRelay relay)
        {
            yield return (relay.Make.A, relay.Make.B);
        }
        else if (contact is WiredSwitch wired)
        {
            foreach (Circuit.Elements.Contact pole in wired.Poles)
            {
                yield return (pole.A, pole.B);
            }
        }
    }

    /// <summary>What is joined to a node without the contact and without passing a resistor.</summary>
    private static bool[] Side(WiringGraph graph, int node, string contact) =>
        Reach.From(graph, node, e => e.PartId != contact && e.LimitingOhms is null && !e.OneWay);

    private static bool Joins(WiredResistor resistor, bool[] one, bool[] other) =>
        (one[resistor.Element.A] && other[resistor.Element.B]) || (one[resistor.Element.B] && other[resistor.Element.A]);

    private static bool[] Without(WiringGraph graph, int node, string contact, string part) =>
        Reach.From(graph, node, e => e.PartId != contact && e.PartId != part && e.LimitingOhms is null && !e.OneWay);

    private sealed record Search(
        BoxWiring Wiring, WiringGraph Graph, IReadOnlyList<InrushCapacitor> Capacitors, IReadOnlyList<SourcePoint> Banks)
    {
        /// <summary>The branch with a bank on the near side and capacitors on the far one; null when they are not there.</summary>
        internal PrechargeBranch? Of(
            WiredResistor resistor, WiredPart contact, (int Near, int Far) ends, bool[] nearSide, bool[] farSide)
        {
            List<InrushCapacitor> charged = [];
            foreach (InrushCapacitor capacitor in Capacitors)
            {
                if (farSide[capacitor.Plus] != farSide[capacitor.Minus])
                {
                    charged.Add(capacitor);
                }
            }

            if (charged.Count == 0 || !Banks.Any(b => nearSide[b.Plus] || nearSide[b.Minus]))
            {
                return null;
            }

            List<WiredPart> workedBy = [];
            foreach (WiredPart part in Wiring.Parts)
            {
                if (part != contact && part is WiredRelay or WiredSwitch
                    && !Joins(
                        resistor,
                        Without(Graph, ends.Near, contact.Part.Id, part.Part.Id),
                        Without(Graph, ends.Far, contact.Part.Id, part.Part.Id)))
                {
                    workedBy.Add(part);
                }
            }

            return new PrechargeBranch(resistor, contact, workedBy, charged)
            {
                PullsIn = contact is WiredRelay { CoilElement: { } coil } relay && farSide[coil.A] != farSide[coil.B] ? relay : null,
            };
        }
    }
}
