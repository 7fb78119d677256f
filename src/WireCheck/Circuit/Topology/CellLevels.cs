using WireCheck.Circuit.Wiring;

namespace WireCheck.Circuit.Topology;

/// <summary>Two terminals of cells that are joined although they stand at different heights in the stack.</summary>
/// <param name="Bank">A bank.</param>
/// <param name="Terminal">Its terminal.</param>
/// <param name="OtherBank">The other bank, or the same.</param>
/// <param name="OtherTerminal">That one's terminal.</param>
public sealed record LevelClash(string Bank, string Terminal, string OtherBank, string OtherTerminal);

/// <summary>
/// How many cells each node stands above the lowest one it hangs together with through cells. What is joined by wire
/// stands at one height, and each cell lifts by one; where that does not come out, cells are shorted.
/// </summary>
public sealed class CellLevels
{
    private readonly int[] _component;
    private readonly int?[] _level;
    private readonly int[] _set;

    private CellLevels(int[] component, int components)
    {
        _component = component;
        _level = new int?[components];
        _set = new int[components];
    }

    /// <summary>Terminals joined at different heights; empty in a sound box.</summary>
    public IReadOnlyList<LevelClash> Clashes { get; private set; } = [];

    /// <summary>Cells that a node stands above the bottom of its stack; null when no cell's terminal is joined to it.</summary>
    public int? LevelOf(int node) => _level[_component[node]];

    /// <summary>True when two nodes are joined by wire.</summary>
    public bool Joined(int node, int other) => _component[node] == _component[other];

    /// <summary>True when two nodes hang together through wire and cells.</summary>
    public bool Together(int node, int other) =>
        LevelOf(node) is not null && LevelOf(other) is not null && _set[_component[node]] == _set[_component[other]];

    /// <summary>Finds the heights along the ways that <paramref name="passes"/> allows.</summary>
    public static CellLevels Of(BoxWiring wiring, WiringGraph graph, Func<WiringEdge, bool> passes)
    {
        int[] component = Components(graph, passes, out int count);
        CellLevels levels = new(component, count);
        levels.Climb([.. wiring.Of<WiredBank>().SelectMany(b => Terminals(b, wiring))]);
        return levels;
    }

    /// <summary>The terminals of a bank from bottom to top, each with its node.</summary>
    internal static IReadOnlyList<CellTerminal> Terminals(WiredBank bank, BoxWiring wiring)
    {
        List<CellTerminal> terminals = [];
        for (int k = 0; k <= bank.Cells.Series.Value; k++)
        {
            string name = NameOf(bank, k);
            terminals.Add(new CellTerminal(bank.Part.Id, name, k, wiring.Node(bank.Part.Id, name)));
        }

        return terminals;
    }

    /// <summary>Name of the terminal above k cells of a bank.</summary>
    internal static string NameOf(WiredBank bank, int k) =>
        k == 0 ? "-" : k == bank.Cells.Series.Value ? "+" : FormattableString.Invariant($"t{k}");

    private static int[] Components(WiringGraph graph, Func<WiringEdge, bool> passes, out int count)
    {
        int[] component = new int[graph.NodeCount];
        Array.Fill(component, -1);
        count = 0;
        Stack<int> open = new();
        for (int start = 0; start < component.Length; start++)
        {
            if (component[start] >= 0)
            {
                continue;
            }

            component[start] = count;
            open.Push(start);
            while (open.TryPop(out int node))
            {
                foreach (WiringEdge edge in graph.At(node))
                {
                    int other = edge.Other(node);
                    if (component[other] < 0 && passes(edge))
                    {
                        component[other] = count;
                        open.Push(other);
                    }
                }
            }

            count++;
        }

        return component;
    }

    /// <summary>Gives each component a height, bank by bank, and notes where two heights meet.</summary>
    private void Climb(IReadOnlyList<CellTerminal> terminals)
    {
        List<LevelClash> clashes = [];
        int sets = 0;
        CellTerminal? first;
        while ((first = terminals.FirstOrDefault(t => _level[_component[t.Node]] is null)) is not null)
        {
            sets++;
            Place(first, 0, sets);
            bool moved = true;
            while (moved)
            {
                moved = false;
                foreach (CellTerminal placed in terminals)
                {
                    if (_set[_component[placed.Node]] == sets && _level[_component[placed.Node]] is { } height)
                    {
                        foreach (CellTerminal other in terminals)
                        {
                            if (other.Bank == placed.Bank && _level[_component[other.Node]] is null)
                            {
                                Place(other, height + other.Cells - placed.Cells, sets);
                                moved = true;
                            }
                        }
                    }
                }
            }
        }

        Lower(sets);
        for (int i = 0; i < terminals.Count; i++)
        {
            for (int j = i + 1; j < terminals.Count; j++)
            {
                if (Joined(terminals[i].Node, terminals[j].Node) && Clash(terminals[i], terminals[j], terminals))
                {
                    clashes.Add(new LevelClash(terminals[i].Bank, terminals[i].Name, terminals[j].Bank, terminals[j].Name));
                }
            }
        }

        Clashes = clashes;
    }

    private void Place(CellTerminal terminal, int level, int set)
    {
        _level[_component[terminal.Node]] = level;
        _set[_component[terminal.Node]] = set;
    }

    /// <summary>Counts from the lowest component of each set.</summary>
    private void Lower(int sets)
    {
        for (int set = 1; set <= sets; set++)
        {
            int lowest = int.MaxValue;
            for (int c = 0; c < _level.Length; c++)
            {
                lowest = _set[c] == set && _level[c] is { } level ? Math.Min(lowest, level) : lowest;
            }

            for (int c = 0; c < _level.Length; c++)
            {
                _level[c] = _set[c] == set ? _level[c] - lowest : _level[c];
            }
        }
    }

    /// <summary>
    /// Joined terminals clash when they lie at different heights of one bank, or when their banks, joined elsewhere too,
    /// would have to stand at different heights.
    /// </summary>
    private bool Clash(CellTerminal one, CellTerminal other, IReadOnlyList<CellTerminal> terminals)
    {
        if (one.Bank == other.Bank)
        {
            return true;
        }

        foreach (CellTerminal a in terminals)
        {
            foreach (CellTerminal b in terminals)
            {
                if (a.Bank == one.Bank && b.Bank == other.Bank && Joined(a.Node, b.Node)
                    && a.Cells - b.Cells != one.Cells - other.Cells)
                {
                    return true;
                }
            }
        }

        return false;
    }
}

/// <summary>A terminal of a bank.</summary>
/// <param name="Bank">The bank.</param>
/// <param name="Name">The terminal.</param>
/// <param name="Cells">Cells it stands above the bank's negative.</param>
/// <param name="Node">Its node.</param>
internal sealed record CellTerminal(string Bank, string Name, int Cells, int Node);
