namespace WireCheck.Circuit.Topology;

/// <summary>Which nodes current from one node can reach.</summary>
public static class Reach
{
    /// <summary>
    /// Nodes reachable from <paramref name="start"/> along ways that <paramref name="passes"/> allows; one-way
    /// ways are followed forward only, or backward only when <paramref name="against"/> is set (nodes that current
    /// can come from).
    /// </summary>
    public static bool[] From(WiringGraph graph, int start, Func<WiringEdge, bool> passes, bool against = false)
    {
        bool[] reached = new bool[graph.NodeCount];
        Stack<int> open = new();
        reached[start] = true;
        open.Push(start);
        while (open.TryPop(out int node))
        {
            foreach (WiringEdge edge in graph.At(node))
            {
                int other = edge.Other(node);
                bool forward = !edge.OneWay || (against ? edge.To == node : edge.From == node);
                if (forward && !reached[other] && passes(edge))
                {
                    reached[other] = true;
                    open.Push(other);
                }
            }
        }

        return reached;
    }
}
