using WireCheck.Circuit.Elements;

namespace WireCheck.Circuit.Solving;

/// <summary>
/// Which nodes hang together. Where nothing reaches from one island to another no voltage is defined between them,
/// so each gets a foothold of its own.
/// </summary>
internal sealed class Islands
{
    private readonly int[] _leader;

    internal Islands(int nodes) => _leader = new int[nodes];

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

    /// <summary>Finds the islands of what ties firmly: resistances, closed contacts, plugged sources.</summary>
    internal void FindTied(Element[] elements)
    {
        Clear();
        foreach (Element element in elements)
        {
            if (element.Ties)
            {
                Join(element.A, element.B);
            }
        }
    }

    /// <summary>Finds the islands of all that is neither open nor unplugged, the two pairs of a converter apart.</summary>
    internal void FindReached(Element[] elements)
    {
        Clear();
        foreach (Element element in elements)
        {
            if (element.Reaches)
            {
                Join(element.A, element.B);
                if (element is ConverterStage stage)
                {
                    Join(stage.OutA, stage.OutB);
                }
            }
        }
    }

    private void Clear()
    {
        for (int i = 0; i < _leader.Length; i++)
        {
            _leader[i] = i;
        }
    }

    private void Join(int first, int second)
    {
        int a = Of(first);
        int b = Of(second);
        _leader[Math.Max(a, b)] = Math.Min(a, b);
    }
}
