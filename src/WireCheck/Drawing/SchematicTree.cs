namespace WireCheck.Drawing;

/// <summary>One way down from a node.</summary>
/// <param name="Wire">The wire it follows, or null.</param>
/// <param name="Symbol">The symbol it passes or ends in, or null.</param>
/// <param name="Node">Where it arrives; null when it ends there, in a load or in a reference to another place.</param>
/// <param name="Flipped">The symbol is reached by its bottom pin.</param>
internal sealed record Branch(DrawnWire? Wire, Symbol? Symbol, string? Node, bool Flipped = false);

/// <summary>
/// The positive side of a schematic as a tree that hangs from the bank's positive terminal, and the way back from
/// the negative rail. What does not fit a tree, a second way round or a wire between branches, is a reference.
/// </summary>
internal sealed class SchematicTree
{
    private readonly Schematic _schematic;
    private readonly Dictionary<string, List<Branch>> _at = new(StringComparer.Ordinal);
    private readonly Dictionary<string, IReadOnlyList<Branch>> _below = new(StringComparer.Ordinal);
    private readonly Dictionary<string, bool> _positive = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (string Node, Branch By)> _parents = new(StringComparer.Ordinal);

    internal SchematicTree(Schematic schematic, string plus, string minus)
    {
        _schematic = schematic;
        Plus = plus;
        Minus = minus;
        Join();
        Spread();
        NegativeHub = Hub();
    }

    /// <summary>The bank's positive terminal.</summary>
    internal string Plus { get; }

    /// <summary>The bank's negative terminal.</summary>
    internal string Minus { get; }

    /// <summary>The node of the negative side on which most wires end.</summary>
    internal string NegativeHub { get; }

    /// <summary>True when the node hangs from the positive terminal.</summary>
    internal bool IsPositive(string node) => _positive.TryGetValue(node, out bool positive) && positive;

    /// <summary>
    /// The branches below a node of the positive side: those without a fuse first, then in the order of their fuses.
    /// </summary>
    internal IReadOnlyList<Branch> Below(string node)
    {
        if (!_below.TryGetValue(node, out IReadOnlyList<Branch>? below))
        {
            below = [.. _at.GetValueOrDefault(node, []).Where(b => IsTreeEdge(node, b)).Concat(Ends(node)).OrderBy(OrderOf)];
            _below.Add(node, below);
        }

        return below;
    }

    /// <summary>Wires at a node that are no part of the tree.</summary>
    internal IEnumerable<DrawnWire> OtherWires(string node) => _schematic.Wires
        .Where(w => (w.From == node || w.To == node) && w.From != w.To && !IsTreeWire(w));

    /// <summary>The way from a node to the root of its side, nearest first.</summary>
    internal IReadOnlyList<Branch> WayToRoot(string node)
    {
        List<Branch> way = [];
        while (_parents.TryGetValue(node, out (string Node, Branch By) parent))
        {
            way.Add(parent.By);
            node = parent.Node;
        }

        return way;
    }

    /// <summary>
    /// From the positive terminal along the heaviest branches to the first busbar, or to the first node where the
    /// box spreads out: the trunk.
    /// </summary>
    internal IReadOnlyList<Branch> Trunk()
    {
        List<Branch> trunk = [];
        string node = Plus;
        while (!_schematic.Bars.ContainsKey(node))
        {
            Branch? heaviest = Below(node).Where(b => b.Node is not null).MaxBy(Weight);
            if (heaviest is null || Weight(heaviest) * 2 < Below(node).Sum(Weight))
            {
                break;
            }

            trunk.Add(heaviest);
            node = heaviest.Node!;
        }

        return trunk;
    }

    private void Join()
    {
        foreach (DrawnWire wire in _schematic.Wires.Where(w => w.From != w.To))
        {
            Add(wire.From, new Branch(wire, null, wire.To));
            Add(wire.To, new Branch(wire, null, wire.From));
        }

        foreach (Symbol symbol in _schematic.Symbols.Where(s => s.Passes))
        {
            Add(symbol.Top.Node, new Branch(null, symbol, symbol.Bottom.Node));
            Add(symbol.Bottom.Node, new Branch(null, symbol, symbol.Top.Node, Flipped: true));
        }
    }

    private void Add(string node, Branch branch)
    {
        if (!_at.TryGetValue(node, out List<Branch>? list))
        {
            _at.Add(node, list = []);
        }

        list.Add(branch);
    }

    /// <summary>Breadth first from both terminals at once, so that a node belongs to the nearer one.</summary>
    private void Spread()
    {
        Queue<string> open = new([Plus, Minus]);
        _positive[Plus] = true;
        _positive[Minus] = false;
        while (open.TryDequeue(out string? node))
        {
            foreach (Branch branch in _at.GetValueOrDefault(node, []))
            {
                if (_positive.TryAdd(branch.Node!, _positive[node]))
                {
                    _parents[branch.Node!] = (node, branch);
                    open.Enqueue(branch.Node!);
                }
            }
        }
    }

    private string Hub()
    {
        string hub = Minus;
        int most = 0;
        foreach (string node in _at.Keys.Where(n => _positive.TryGetValue(n, out bool positive) && !positive))
        {
            int wires = _at[node].Count(b => b.Wire is not null);
            if (wires > most)
            {
                (hub, most) = (node, wires);
            }
        }

        return hub;
    }

    private bool IsTreeEdge(string node, Branch branch) =>
        branch.Node is not null && _parents.TryGetValue(branch.Node, out (string Node, Branch By) parent)
        && parent.Node == node && ReferenceEquals(parent.By, branch);

    private bool IsTreeWire(DrawnWire wire) =>
        (_parents.TryGetValue(wire.To, out (string Node, Branch By) to) && to.By.Wire == wire && IsPositive(wire.To))
        || (_parents.TryGetValue(wire.From, out (string Node, Branch By) from) && from.By.Wire == wire && IsPositive(wire.From));

    /// <summary>Symbols that end at a node: loads, and those that join two branches.</summary>
    private IEnumerable<Branch> Ends(string node)
    {
        foreach (Symbol symbol in _schematic.Symbols.Where(s => s.Shape != SymbolShape.Cells || s != _schematic.Bank))
        {
            bool isTree = symbol.Passes
                && (IsTreeEdge(symbol.Top.Node, symbol) || IsTreeEdge(symbol.Bottom.Node, symbol));
            if (!isTree && EntryOf(symbol) == node)
            {
                yield return new Branch(null, symbol, null, Flipped: symbol.Top.Node != node);
            }
        }
    }

    private bool IsTreeEdge(string node, Symbol symbol) =>
        _at.GetValueOrDefault(node, []).Any(b => b.Symbol == symbol && IsTreeEdge(node, b));

    /// <summary>The pin by which a symbol hangs: its top one where that is positive.</summary>
    private string? EntryOf(Symbol symbol) =>
        IsPositive(symbol.Top.Node) ? symbol.Top.Node : IsPositive(symbol.Bottom.Node) ? symbol.Bottom.Node : null;

    private int Weight(Branch branch) =>
        branch.Node is null ? 1 : 1 + Below(branch.Node).Sum(Weight);

    private int OrderOf(Branch branch) => FirstFuse(branch) is int.MaxValue ? -1 : FirstFuse(branch);

    private int FirstFuse(Branch branch)
    {
        int own = branch.Symbol is { } symbol && _schematic.FuseOrder.TryGetValue(symbol.Part, out int place) ? place : int.MaxValue;
        return branch.Node is null ? own : Below(branch.Node).Select(FirstFuse).Append(own).Min();
    }
}
