using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;

namespace WireCheck.Facts.Gather;

/// <summary>Which of the metal case, earth and a vehicle's chassis a direct-current side is joined to.</summary>
internal static class EarthBonds
{
    private const string VehicleNode = "vehicle";

    /// <summary>
    /// Names of the joined ones, following wire, closed contacts, plugs, the bond of the case and every declared outside
    /// link. A vehicle's outlet has its chassis for a negative.
    /// </summary>
    internal static IReadOnlyList<string> Of(GatherContext context, params int[] starts)
    {
        bool[] reached = new bool[context.Graph.NodeCount];
        Stack<int> open = new(starts);
        IReadOnlyList<(int, int)> links = Links(context);
        while (open.TryPop(out int node))
        {
            if (reached[node])
            {
                continue;
            }

            reached[node] = true;
            foreach (WiringEdge edge in context.Graph.At(node))
            {
                open.Push(edge.Other(node));
            }

            foreach ((int first, int second) in links)
            {
                if (first == node || second == node)
                {
                    open.Push(first == node ? second : first);
                }
            }
        }

        List<string> names = [];
        foreach (string name in WiringBuilder.EverywhereNodes)
        {
            if (reached[context.Wiring.Node(name, "")])
            {
                names.Add(name);
            }
        }

        return names;
    }

    /// <summary>Pairs of nodes that something outside the drawn wiring joins.</summary>
    private static List<(int First, int Second)> Links(GatherContext context)
    {
        List<(int, int)> links = [];
        foreach (OutsideLink link in context.Pack.OutsideLinks)
        {
            links.Add((context.Wiring.Node(link.First), context.Wiring.Node(link.Second)));
        }

        if (context.Pack.Surroundings.Enclosure?.BondedTo is { } bond)
        {
            links.Add((context.Wiring.Node("case", ""), context.Wiring.Node(bond)));
        }

        foreach (WiredVehicle vehicle in context.Wiring.Of<WiredVehicle>())
        {
            links.Add((context.Wiring.Node(VehicleNode, ""), vehicle.Minus));
        }

        return links;
    }
}
