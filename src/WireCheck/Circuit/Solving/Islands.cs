using WireCheck.Circuit.Elements;

namespace WireCheck.Circuit.Solving;

/// <summary>
/// Which nodes hang together by elements that tie. Between islands no voltage is defined, so each gets a
/// foothold of its own.
/// </summary>
internal sealed class Islands(Network network)
{
    private readonly int[] _leader = new int[network.NodeCount];

    /// <summary>The smallest node of a node's island.</summary>
    internal int Of(int node)
    {
        while (_leader[node] != node)
        {
            _leader[node] = _leader[_leader[node]];
            node = _leader[node];
        }

        return node;
    }

    /// <summary>Finds the islands anew.</summary>
    internal void Find(Element[] elements)
    {
        for (int i = 0; i < _leader.Length; i++)
        {
            _leader[i] = i;
        }

        foreach (Element element in elements)
        {
            if (element.Ties)
            {
                int a = Of(element.A);
                int b = Of(element.B);
                _leader[Math.Max(a, b)] = Math.Min(a, b);
            }
        }
    }
}
