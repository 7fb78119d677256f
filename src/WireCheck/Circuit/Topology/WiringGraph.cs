using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Topology;

/// <summary>
/// The box as nodes and the ways between them: wire, bars, joints, fuses, contacts, shunt, BMS, diodes. What
/// consumes or supplies power is no way: a load, a coil, a meter, a converter and the inside of a bank that stands alone are
/// left out, so that a positive and a negative side can be told apart. Every contact counts as closed.
/// </summary>
public sealed class WiringGraph
{
    private readonly List<WiringEdge>[] _at;

    private WiringGraph(int nodes, IReadOnlyList<WiringEdge> edges)
    {
        Edges = edges;
        _at = new List<WiringEdge>[nodes];
        for (int i = 0; i < nodes; i++)
        {
            _at[i] = [];
        }

        foreach (WiringEdge edge in edges)
        {
            _at[edge.From].Add(edge);
            _at[edge.To].Add(edge);
        }
    }

    /// <summary>Number of nodes, the same as the network's.</summary>
    public int NodeCount => _at.Length;

    public IReadOnlyList<WiringEdge> Edges { get; }

    /// <summary>The ways that end on a node.</summary>
    public IReadOnlyList<WiringEdge> At(int node) => _at[node];

    /// <summary>Builds the graph of a wired box.</summary>
    public static WiringGraph Of(BoxWiring wiring)
    {
        List<WiringEdge> edges = [];
        foreach (WiredPart part in wiring.Parts)
        {
            edges.AddRange(Ways(part));
        }

        WiringGraph graph = new(wiring.Network.NodeCount, edges);
        WiringEdge[] stacked = [.. WaysThroughStackedBanks(wiring, graph)];
        return stacked.Length == 0 ? graph : new WiringGraph(wiring.Network.NodeCount, [.. edges, .. stacked]);
    }

    /// <summary>
    /// The inside of each bank that stands in series with another. What the lower one drives goes through the upper one, and
    /// what comes back to the upper one through the lower.
    /// </summary>
    private static IEnumerable<WiringEdge> WaysThroughStackedBanks(BoxWiring wiring, WiringGraph graph)
    {
        WiredBank[] banks = [.. wiring.Of<WiredBank>()];
        if (banks.Length < 2)
        {
            yield break;
        }

        HashSet<WiredBank> stacked = [];
        foreach (WiredBank lower in banks)
        {
            bool[] joined = Reach.From(graph, wiring.Node(lower.Part.Id, "+"), e => e.LimitingOhms is null && !e.OneWay);
            foreach (WiredBank upper in banks)
            {
                if (upper != lower && joined[wiring.Node(upper.Part.Id, "-")])
                {
                    stacked.Add(lower);
                    stacked.Add(upper);
                }
            }
        }

        foreach (WiredBank bank in banks.Where(stacked.Contains))
        {
            yield return new WiringEdge(bank.Part.Id, wiring.Node(bank.Part.Id, "-"), wiring.Node(bank.Part.Id, "+")) { OneWay = true };
        }
    }

    private static IEnumerable<WiringEdge> Ways(WiredPart part)
    {
        string id = part.Part.Id;
        return part switch
        {
            WiredConductor wire => [Way(id, wire.Element) with
            {
                Metres = wire.Conductor.Length.Value.Meters,
                Sleeved = wire.Conductor.Sleeve?.Value == true,
            }],
            WiredFuse fuse => [Way(id, fuse.Element) with { FuseAmps = fuse.Fuse.Rating.Value.Amperes }],
            WiredResistor resistor => [Way(id, resistor.Element) with { LimitingOhms = resistor.Resistor.Resistance.Value.Ohms }],
            WiredDiode diode => [Way(id, diode.Element) with { OneWay = true }],
            WiredBms bms => bms.ChargePath is null ? [Way(id, bms.Path)] : [Way(id, bms.Path), Way(id, bms.ChargePath)],
            WiredSwitch wired => wired.Poles.Select(p => Way(id, p)),
            WiredRelay relay => relay.Rest is null ? [Way(id, relay.Make)] : [Way(id, relay.Make), Way(id, relay.Rest)],
            WiredPort port => [Way(id, port.Plus), Way(id, port.Minus)],
            WiredLoad { LeadPlus: not null, LeadMinus: not null } load => [Way(id, load.LeadPlus), Way(id, load.LeadMinus)],
            WiredConverter { NegativeTie: not null } converter => [Way(id, converter.NegativeTie)],
            WiredJoint or WiredBusbar or WiredShunt => part.Elements.Select(e => Way(id, e)),
            _ => [],
        };
    }

    private static WiringEdge Way(string id, Element element) => new(id, element.A, element.B);
}
