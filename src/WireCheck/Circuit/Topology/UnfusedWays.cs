namespace WireCheck.Circuit.Topology;

/// <summary>A way from a source to the first fuse on it.</summary>
/// <param name="FuseId">The fuse.</param>
/// <param name="Metres">Length of wire before it, m.</param>
/// <param name="Sleeved">Every wire on the way has a sleeve.</param>
public sealed record UnfusedWay(string FuseId, double Metres, bool Sleeved);

/// <summary>The fuses that stand first on the ways from a node, each by the shortest way to it.</summary>
public sealed class UnfusedWays
{
    private readonly double[] _metres;

    private UnfusedWays(IReadOnlyList<UnfusedWay> fuses, double[] metres)
    {
        Fuses = fuses;
        _metres = metres;
    }

    /// <summary>In the order they are reached.</summary>
    public IReadOnlyList<UnfusedWay> Fuses { get; }

    /// <summary>Shortest length of wire to a node with no fuse between, m; infinite where there is no such way.</summary>
    public double MetresTo(int node) => _metres[node];

    /// <summary>Walks from a node along wire, bars and contacts to the fuses; through one conductor only, when one is named.</summary>
    public static UnfusedWays From(WiringGraph graph, int start, string? through)
    {
        double[] metres = new double[graph.NodeCount];
        bool[] sleeved = new bool[graph.NodeCount];
        bool[] done = new bool[graph.NodeCount];
        Array.Fill(metres, double.PositiveInfinity);
        metres[start] = 0;
        sleeved[start] = true;
        PriorityQueue<int, double> open = new();
        open.Enqueue(start, 0);
        Dictionary<string, UnfusedWay> fuses = [];
        while (open.TryDequeue(out int node, out _))
        {
            if (done[node])
            {
                continue;
            }

            done[node] = true;
            foreach (WiringEdge edge in graph.At(node))
            {
                int other = edge.Other(node);
                bool otherWayOut = through is not null && node == start && edge.PartId != through;
                if (otherWayOut || (edge.OneWay && edge.From != node))
                {
                    continue;
                }

                if (edge.FuseAmps is not null)
                {
                    fuses.TryAdd(edge.PartId, new UnfusedWay(edge.PartId, metres[node], sleeved[node]));
                }
                else if (metres[node] + edge.Metres < metres[other])
                {
                    metres[other] = metres[node] + edge.Metres;
                    sleeved[other] = sleeved[node] && (edge.Metres == 0 || edge.Sleeved);
                    open.Enqueue(other, metres[other]);
                }
            }
        }

        return new UnfusedWays([.. fuses.Values], metres);
    }
}
