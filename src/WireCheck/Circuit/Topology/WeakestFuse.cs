namespace WireCheck.Circuit.Topology;

/// <summary>
/// What guards a node against one source. On each path the smallest fuse opens first; of all paths the one whose
/// smallest fuse is largest decides, for that one lets the most current through.
/// </summary>
/// <param name="Amps">Rating of the deciding fuse; infinite when some path has no fuse; 0 when no path exists.</param>
/// <param name="FuseId">Id of the deciding fuse; null when there is none.</param>
/// <param name="LimitAmps">
/// Most that a resistor on the path lets through, A, when the only paths without a fuse pass a resistor; infinite otherwise.
/// </param>
public readonly record struct Guard(double Amps, string? FuseId, double LimitAmps)
{
    /// <summary>The source cannot reach the node.</summary>
    public static Guard NoPath { get; } = new(0, null, 0);

    /// <summary>True when some path carries no fuse.</summary>
    public bool Unfused => double.IsPositiveInfinity(Amps);

    /// <summary>True when the source reaches the node.</summary>
    public bool Reached => Amps > 0;
}

/// <summary>Finds the guard of every node against one source: the widest path, a fuse's rating being its width.</summary>
public static class WeakestFuse
{
    /// <summary>
    /// The guard of each node against a source at <paramref name="start"/>.
    /// </summary>
    /// <param name="graph">The ways.</param>
    /// <param name="start">The source's positive node.</param>
    /// <param name="sourceVolts">Highest voltage of the source, V, for what a resistor lets through.</param>
    /// <param name="without">A part to leave out, such as the conductor in question; null for none.</param>
    public static Guard[] Guards(WiringGraph graph, int start, double sourceVolts, string? without = null)
    {
        Guard[] best = new Guard[graph.NodeCount];
        PriorityQueue<int, double> open = new();
        best[start] = new Guard(double.PositiveInfinity, null, double.PositiveInfinity);
        open.Enqueue(start, 0);
        bool[] done = new bool[graph.NodeCount];
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
                if (edge.PartId == without || (edge.OneWay && edge.From != node) || done[other])
                {
                    continue;
                }

                Guard next = Pass(best[node], edge, sourceVolts);
                if (IsWider(next, best[other]))
                {
                    best[other] = next;
                    open.Enqueue(other, -Width(next));
                }
            }
        }

        return best;
    }

    private static Guard Pass(Guard guard, WiringEdge edge, double sourceVolts)
    {
        double limit = edge.LimitingOhms is { } ohms ? Math.Min(guard.LimitAmps, sourceVolts / ohms) : guard.LimitAmps;
        return edge.FuseAmps is { } amps && amps < guard.Amps
            ? new Guard(amps, edge.PartId, limit)
            : guard with { LimitAmps = limit };
    }

    /// <summary>What a path can carry on: its smallest fuse or its resistor, whichever lets less through.</summary>
    private static double Width(Guard guard) => Math.Min(guard.Amps, guard.LimitAmps);

    private static bool IsWider(Guard next, Guard held) => Width(next) > Width(held);
}
