namespace WireCheck.Circuit.Topology;

/// <summary>
/// The most that several consumers together can draw from a source before a fuse is over its rating: the largest flow through the
/// graph, each fuse good for its rating and all else for any current (Ford and Fulkerson 1956). The fuses that bound it are those of
/// the smallest cut nearest to the source.
/// </summary>
/// <param name="Amps">A; infinite when a consumer is reached without a fuse.</param>
/// <param name="Fuses">Ids of the fuses that bound it, in the order of the alphabet; empty when nothing does.</param>
public sealed record FuseFlow(double Amps, IReadOnlyList<string> Fuses)
{
    /// <summary>Solves it.</summary>
    /// <param name="graph">The ways.</param>
    /// <param name="source">The source's positive node.</param>
    /// <param name="taps">Nodes that consumers draw from; one that the source does not reach adds nothing.</param>
    public static FuseFlow Find(WiringGraph graph, int source, IReadOnlySet<int> taps)
    {
        Dictionary<WiringEdge, double> flow = [];
        double total = 0;
        while (true)
        {
            Dictionary<int, (int Before, WiringEdge Edge)> cameBy = Search(graph, source, taps, flow, out int? reached);
            if (reached is not { } end)
            {
                return new FuseFlow(total, [.. Cut(graph, source, cameBy)]);
            }

            double more = double.PositiveInfinity;
            for (int node = end; node != source; node = cameBy[node].Before)
            {
                more = Math.Min(more, Left(cameBy[node].Edge, cameBy[node].Before, flow));
            }

            if (double.IsPositiveInfinity(more))
            {
                return new FuseFlow(more, []);
            }

            for (int node = end; node != source; node = cameBy[node].Before)
            {
                (int before, WiringEdge edge) = cameBy[node];
                flow[edge] = flow.GetValueOrDefault(edge) + (edge.From == before ? more : -more);
            }

            total += more;
        }
    }

    /// <summary>The shortest way to a tap on which more can flow; how each node was reached, and the tap, null when there is none.</summary>
    private static Dictionary<int, (int Before, WiringEdge Edge)> Search(
        WiringGraph graph, int source, IReadOnlySet<int> taps, Dictionary<WiringEdge, double> flow, out int? reached)
    {
        Dictionary<int, (int Before, WiringEdge Edge)> cameBy = [];
        Queue<int> open = new([source]);
        reached = taps.Contains(source) ? source : null;
        while (reached is null && open.TryDequeue(out int node))
        {
            foreach (WiringEdge edge in graph.At(node))
            {
                int other = edge.Other(node);
                if (other == source || cameBy.ContainsKey(other) || Left(edge, node, flow) <= 0)
                {
                    continue;
                }

                cameBy.Add(other, (node, edge));
                if (taps.Contains(other))
                {
                    reached = other;
                    break;
                }

                open.Enqueue(other);
            }
        }

        return cameBy;
    }

    /// <summary>What can still flow through a way from one of its ends, A.</summary>
    private static double Left(WiringEdge edge, int from, Dictionary<WiringEdge, double> flow)
    {
        double forward = flow.GetValueOrDefault(edge) * (edge.From == from ? 1 : -1);
        double capacity = edge.OneWay && edge.From != from ? 0 : edge.FuseAmps ?? double.PositiveInfinity;
        return capacity - forward;
    }

    private static IEnumerable<string> Cut(WiringGraph graph, int source, Dictionary<int, (int Before, WiringEdge Edge)> cameBy)
    {
        return graph.Edges
            .Where(e => e.FuseAmps is not null && IsNear(e.From) != IsNear(e.To))
            .Select(e => e.PartId).Distinct().Order(StringComparer.Ordinal);

        bool IsNear(int node) => node == source || cameBy.ContainsKey(node);
    }
}
