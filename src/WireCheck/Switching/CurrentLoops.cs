namespace WireCheck.Switching;

/// <summary>
/// Tells which ways between nodes lie in a loop with a source. Along all others no current can flow, whatever the parts are:
/// a way that is in no loop at all, or only in loops without a source (a biconnected block of the graph without one).
/// Blocks by the depth-first search of Hopcroft and Tarjan, Algorithm 447, Communications of the ACM 16 (1973).
/// </summary>
internal sealed class CurrentLoops
{
    private readonly int[] _from;
    private readonly int[] _to;
    private readonly int[] _first;
    private readonly int[] _ways;
    private readonly int[] _entered;
    private readonly int[] _lowest;
    private readonly int[] _stack;
    private int _stacked;
    private int _clock;

    /// <summary>Prepares a graph; a way whose two ends are one node is in no loop.</summary>
    internal CurrentLoops(int nodes, int[] from, int[] to)
    {
        (_from, _to) = (from, to);
        Open = new bool[from.Length];
        Gives = new bool[from.Length];
        Carries = new bool[from.Length];
        _entered = new int[nodes];
        _lowest = new int[nodes];
        _stack = new int[from.Length];
        _first = new int[nodes + 1];
        for (int way = 0; way < from.Length; way++)
        {
            _first[from[way] + 1]++;
            _first[to[way] + 1]++;
        }

        for (int node = 0; node < nodes; node++)
        {
            _first[node + 1] += _first[node];
        }

        int[] next = [.. _first];
        _ways = new int[2 * from.Length];
        for (int way = 0; way < from.Length; way++)
        {
            _ways[next[from[way]]++] = way;
            _ways[next[to[way]]++] = way;
        }
    }

    /// <summary>Ways that do not conduct at the moment.</summary>
    internal bool[] Open { get; }

    /// <summary>Ways that are sources at the moment.</summary>
    internal bool[] Gives { get; }

    /// <summary>Ways that lie in a loop with a source, as last found.</summary>
    internal bool[] Carries { get; }

    /// <summary>Finds the loops of the ways as they stand.</summary>
    internal void Find()
    {
        Array.Clear(_entered);
        Array.Clear(Carries);
        (_clock, _stacked) = (0, 0);
        for (int node = 0; node < _entered.Length; node++)
        {
            if (_entered[node] == 0)
            {
                Visit(node, -1);
            }
        }
    }

    private void Visit(int node, int cameBy)
    {
        _entered[node] = _lowest[node] = ++_clock;
        for (int at = _first[node]; at < _first[node + 1]; at++)
        {
            int way = _ways[at];
            int other = _from[way] == node ? _to[way] : _from[way];
            if (Open[way] || way == cameBy || other == node)
            {
                continue;
            }

            if (_entered[other] == 0)
            {
                int below = _stacked;
                _stack[_stacked++] = way;
                Visit(other, way);
                _lowest[node] = Math.Min(_lowest[node], _lowest[other]);
                if (_lowest[other] >= _entered[node])
                {
                    TakeBlock(below);
                }
            }
            else if (_entered[other] < _entered[node])
            {
                _stack[_stacked++] = way;
                _lowest[node] = Math.Min(_lowest[node], _entered[other]);
            }
        }
    }

    private void TakeBlock(int below)
    {
        bool gives = false;
        for (int i = below; i < _stacked; i++)
        {
            gives |= Gives[_stack[i]];
        }

        for (int i = below; gives && i < _stacked; i++)
        {
            Carries[_stack[i]] = true;
        }

        _stacked = below;
    }
}
