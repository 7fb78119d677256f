using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;

namespace WireCheck.Faults;

/// <summary>
/// The own return of a place: the negative terminal beside it; else the return busbar that is nearest by length of wire, through
/// whatever the place feeds; else the negative of the first bank.
/// </summary>
internal sealed class ReturnFinder
{
    /// <summary>Length that stands for a part on the way, m: enough to prefer the way through fewer parts.</summary>
    private const double PartMetres = 1e-3;

    private readonly BoxWiring _wiring;
    private readonly Pole[] _poles;
    private readonly int[] _nearest;
    private readonly string[] _names;
    private readonly string? _bank;

    internal ReturnFinder(BoxWiring wiring, WiringGraph graph, Pole[] poles)
    {
        _wiring = wiring;
        _poles = poles;
        _nearest = new int[graph.NodeCount];
        _names = new string[graph.NodeCount];
        Array.Fill(_nearest, -1);
        _bank = wiring.Parts.OfType<WiredBank>().FirstOrDefault()?.Part.Id;
        FindBars(graph);
    }

    /// <summary>Node and name of the return of a terminal; null when the box has no negative at all.</summary>
    internal (int Node, string Name)? Of(int node, string partId, string terminal)
    {
        if (BesideIt(partId, terminal) is { } beside)
        {
            return beside;
        }

        return _nearest[node] >= 0 ? (_nearest[node], _names[_nearest[node]])
            : _bank is null ? null
            : (_wiring.Node(_bank, "-"), $"{_bank}.-");
    }

    private (int, string)? BesideIt(string partId, string terminal)
    {
        string? other = terminal.EndsWith('+') ? terminal[..^1] + "-"
            : terminal == "86" ? "85"
            : _wiring.Find<WiredBank>(partId) is not null ? "-"
            : null;
        if (other is null || other == terminal || !_wiring.Nodes.TryGetValue((partId, other), out int node)
            || _poles[node] != Pole.Negative)
        {
            return null;
        }

        return (node, $"{partId}.{other}");
    }

    /// <summary>Walks out from every return busbar at once.</summary>
    private void FindBars(WiringGraph graph)
    {
        PriorityQueue<int, double> open = new();
        double[] metres = new double[graph.NodeCount];
        Array.Fill(metres, double.PositiveInfinity);
        foreach (KeyValuePair<(string Part, string Terminal), int> named in _wiring.Nodes)
        {
            if (_poles[named.Value] == Pole.Negative && _wiring.Pack.Find(named.Key.Part) is Busbar)
            {
                _names[named.Value] = named.Key.Terminal.Length == 0 ? named.Key.Part : $"{named.Key.Part}.{named.Key.Terminal}";
                _nearest[named.Value] = named.Value;
                metres[named.Value] = 0;
                open.Enqueue(named.Value, 0);
            }
        }

        List<int>?[] across = Across(graph.NodeCount);
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
                Reach(node, edge.Other(node), edge.Metres + PartMetres, metres, open);
            }

            foreach (int other in across[node] ?? [])
            {
                Reach(node, other, PartMetres, metres, open);
            }
        }
    }

    private void Reach(int node, int other, double step, double[] metres, PriorityQueue<int, double> open)
    {
        if (metres[node] + step < metres[other])
        {
            metres[other] = metres[node] + step;
            _nearest[other] = _nearest[node];
            open.Enqueue(other, metres[other]);
        }
    }

    /// <summary>Nodes joined by what takes power between the poles, which is no way for current in the graph.</summary>
    private List<int>?[] Across(int nodes)
    {
        List<int>?[] across = new List<int>?[nodes];
        foreach (WiredPart part in _wiring.Parts)
        {
            if (part is WiredLoad or WiredRelay or WiredMeter or IPoweredInput)
            {
                foreach (Circuit.Elements.Element element in part.Elements)
                {
                    (across[element.A] ??= []).Add(element.B);
                    (across[element.B] ??= []).Add(element.A);
                }
            }
        }

        return across;
    }
}
