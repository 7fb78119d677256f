namespace WireCheck.Drawing;

/// <summary>Places the branches that hang between the rails, each in a column of its own width.</summary>
internal sealed class ColumnLayout(Schematic schematic, SchematicTree tree, SheetWords words, PlacedDrawing drawing)
{
    private const double WordsAfter = 12;
    private const double WordsAfterSymbol = 18;
    private const double Gap = 18;
    private const double BarLead = 24;
    private const double LeastSymbol = 44;

    private readonly HashSet<Symbol> _placedSymbols = [];
    private readonly HashSet<string> _placedBars = new(StringComparer.Ordinal);
    private readonly List<(DrawnWire Wire, double X, double Y)> _drops = [];

    /// <summary>Lowest place any column reaches, px.</summary>
    internal double Deepest { get; private set; }

    internal bool IsPlaced(Symbol symbol) => _placedSymbols.Contains(symbol);

    internal bool IsPlaced(DrawnBar bar) => _placedBars.Contains(bar.Part);

    /// <summary>True when the wire goes straight down to the negative rail.</summary>
    internal bool WillDrop(DrawnWire wire) => _drops.Any(d => d.Wire == wire);

    /// <summary>Notes that a branch is drawn elsewhere, along a rail.</summary>
    internal void Placed(Branch branch)
    {
        if (branch.Symbol is { } symbol)
        {
            _placedSymbols.Add(symbol);
        }
    }

    /// <summary>The captions of a symbol and a line for each wire at its sides.</summary>
    internal List<Caption> WordsOf(Symbol symbol) =>
    [
        .. symbol.Captions,
        .. symbol.Sides.SelectMany(pin => tree.OtherWires(pin.Node).Select(wire => words.AtPin(pin, wire))),
    ];

    /// <summary>What hangs from a node of the trunk besides the trunk; the width it takes.</summary>
    internal double PlaceHung(string node, Branch trunk, double x, double y) =>
        PlaceRow(node, [.. tree.Below(node).Where(b => b != trunk)], x, y, null);

    /// <summary>A node and everything below it; the width it takes.</summary>
    internal double PlaceNode(string node, double x, double y)
    {
        IReadOnlyList<Branch> below = tree.Below(node);
        schematic.Bars.TryGetValue(node, out DrawnBar? bar);
        if (bar is null && below.Count + tree.OtherWires(node).Count() < 2)
        {
            return PlaceRow(node, below, x, y, null);
        }

        if (bar is not null)
        {
            _placedBars.Add(node);
        }

        drawing.Line(LineKind.Node, null, x, y, x, y + BarLead);
        PlaceWords(bar?.Captions ?? [], x + WordsAfter, y + BarLead - 6);
        double width = PlaceRow(node, below, x, y + BarLead, bar);
        return Math.Max(width, WordsAfter + WidthOf(bar?.Captions ?? []));
    }

    /// <summary>A symbol that hangs on neither rail, all its wires as references.</summary>
    internal double PlaceAlone(Symbol symbol, double x, double y)
    {
        List<Caption> lines =
        [
            .. WordsOf(symbol),
            .. new[] { symbol.Top, symbol.Bottom }.SelectMany(p => tree.OtherWires(p.Node).Select(w => words.AtPin(p, w))),
        ];
        return PlaceSymbol(symbol, lines, x, y, flipped: false).Width;
    }

    /// <summary>A busbar that hangs on neither rail.</summary>
    internal double PlaceAlone(DrawnBar bar, double x, double y)
    {
        _placedBars.Add(bar.Part);
        PlaceWords(bar.Captions, x, y - 6);
        double width = PlaceRow(bar.Part, [], x, y, bar);
        return Math.Max(width, WidthOf(bar.Captions));
    }

    /// <summary>A wire none of whose ends is drawn.</summary>
    internal double PlaceAlone(DrawnWire wire, double x, double y)
    {
        List<Caption> lines = [new Caption($"from {wire.From}"), .. words.Of(wire, wire.To)];
        return PlaceReference(wire, lines, x, y);
    }

    /// <summary>Draws what goes straight down to the negative rail; its leftmost and rightmost place.</summary>
    internal (double Left, double Right) PlaceDrops(double railY)
    {
        foreach ((DrawnWire wire, double x, double y) in _drops)
        {
            PlaceWire(wire, x, y, x, railY);
        }

        return _drops.Count == 0 ? (double.MaxValue, double.MinValue) : (_drops.Min(d => d.X), _drops.Max(d => d.X));
    }

    internal void PlaceWire(DrawnWire wire, double fromX, double fromY, double toX, double toY)
    {
        drawing.Line(LineKind.Wire, wire.Id, fromX, fromY, toX, toY);
        if (wire.IsJoint)
        {
            drawing.Dot(wire.Id, (fromX + toX) / 2, fromY == toY ? fromY : fromY + 10);
        }
    }

    internal void PlaceWords(IReadOnlyList<Caption> lines, double x, double y)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            drawing.Label(x, y + (i * PlacedDrawing.LineHeight), lines[i]);
        }

        Deepest = Math.Max(Deepest, y + (lines.Count * PlacedDrawing.LineHeight));
    }

    private static double WidthOf(IEnumerable<Caption> lines) =>
        lines.Select(c => PlacedDrawing.WidthOf(c.Words)).DefaultIfEmpty(0).Max();

    /// <summary>Branches side by side under one line; the width they take.</summary>
    private double PlaceRow(string node, IReadOnlyList<Branch> below, double x, double y, DrawnBar? bar)
    {
        double cursor = x;
        double last = x;
        foreach (Branch branch in below)
        {
            last = cursor;
            cursor += PlaceBranch(branch, cursor, y) + Gap;
        }

        foreach (DrawnWire wire in tree.OtherWires(node))
        {
            last = cursor;
            cursor += PlaceReference(wire, words.Of(wire, wire.Other(node)), cursor, y) + Gap;
        }

        if (bar is not null)
        {
            drawing.Line(LineKind.Bar, bar.Part, x - 12, y, last + 12, y);
        }
        else if (last > x)
        {
            drawing.Line(LineKind.Node, null, x, y, last, y);
        }

        Deepest = Math.Max(Deepest, y);
        return Math.Max(cursor - x - Gap, 0);
    }

    private double PlaceBranch(Branch branch, double x, double y)
    {
        if (branch.Wire is { } wire)
        {
            List<Caption> lines = words.Of(wire);
            double end = y + Math.Max(48, (lines.Count * PlacedDrawing.LineHeight) + 22);
            PlaceWire(wire, x, y, x, end);
            PlaceWords(lines, x + WordsAfter, y + 16);
            return Math.Max(WordsAfter + WidthOf(lines), PlaceNode(branch.Node!, x, end));
        }

        Symbol symbol = branch.Symbol!;
        SymbolPin far = branch.Flipped ? symbol.Top : symbol.Bottom;
        List<DrawnWire> atFar = branch.Node is null ? [.. tree.OtherWires(far.Node)] : [];
        DrawnWire? drop = tree.IsPositive(far.Node) ? null : atFar.Find(w => w.Other(far.Node) == tree.NegativeHub && !WillDrop(w) && !words.IsTold(w));
        List<Caption> captions = [.. WordsOf(symbol), .. atFar.Where(w => w != drop).Select(w => words.AtPin(far, w))];
        (double width, double bottom) = PlaceSymbol(symbol, captions, x, y, branch.Flipped);
        if (branch.Node is not null)
        {
            return Math.Max(width, PlaceNode(branch.Node, x, bottom));
        }

        return drop is null ? width : Math.Max(width, PlaceDrop(drop, x, bottom));
    }

    private double PlaceDrop(DrawnWire wire, double x, double y)
    {
        List<Caption> lines = words.Of(wire);
        PlaceWords(lines, x + WordsAfter, y + 16);
        _drops.Add((wire, x, y));
        return WordsAfter + WidthOf(lines);
    }

    private (double Width, double Bottom) PlaceSymbol(Symbol symbol, List<Caption> lines, double x, double y, bool flipped)
    {
        _placedSymbols.Add(symbol);
        double height = Math.Max(LeastSymbol, (lines.Count * PlacedDrawing.LineHeight) + 16);
        drawing.Add(new PlacedSymbol(symbol, x, y, height, Lying: false, flipped));
        PlaceWords(lines, x + WordsAfterSymbol, y + 16);
        Deepest = Math.Max(Deepest, y + height);
        return (WordsAfterSymbol + WidthOf(lines), y + height);
    }

    private double PlaceReference(DrawnWire wire, List<Caption> lines, double x, double y)
    {
        double end = y + Math.Max(34, lines.Count * PlacedDrawing.LineHeight);
        PlaceWire(wire, x, y, x, end);
        drawing.Reference(x, end);
        PlaceWords(lines, x + WordsAfter, y + 16);
        return WordsAfter + WidthOf(lines);
    }
}
