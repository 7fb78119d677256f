namespace WireCheck.Drawing;

/// <summary>
/// Gives a schematic its places: the bank at the left, the positive rail above, the negative below, branches
/// between them in columns. Each column keeps the width of its words to itself, so that no words meet.
/// </summary>
public sealed class SchematicLayout
{
    private const double BankX = 40;
    private const double Gap = 18;
    private const double Lead = 26;

    private readonly PlacedDrawing _drawing = new();
    private readonly Schematic _schematic;
    private readonly SchematicTree _tree;
    private readonly SheetWords _words;
    private readonly ColumnLayout _columns;

    private SchematicLayout(Schematic schematic, SchematicTree tree, Func<string, string?> extra)
    {
        _schematic = schematic;
        _tree = tree;
        _words = new SheetWords(extra);
        _columns = new ColumnLayout(schematic, tree, _words, _drawing);
    }

    /// <summary>Lays a schematic out.</summary>
    /// <param name="schematic">The box.</param>
    /// <param name="extra">What is known of a wire besides size and length; null when nothing is.</param>
    public static PlacedDrawing Place(Schematic schematic, Func<string, string?> extra)
    {
        string plus = schematic.Bank?.Top.Node ?? "";
        string minus = schematic.Bank?.Bottom.Node ?? "";
        SchematicLayout layout = new(schematic, new SchematicTree(schematic, plus, minus), extra);
        layout.PlaceAll();
        return layout._drawing;
    }

    private void PlaceAll()
    {
        // The words of wires are told where they are first drawn, so the rails come before references to them.
        IReadOnlyList<Branch> trunk = _tree.Trunk();
        IReadOnlyList<Branch> back = _tree.WayToRoot(_tree.NegativeHub);
        List<(Branch Branch, List<Caption> Words)> top = [.. trunk.Select(b => (b, WordsOf(b)))];
        List<(Branch Branch, List<Caption> Words)> bottom = [.. back.Reverse().Select(b => (b, WordsOf(b)))];
        foreach (Branch branch in trunk.Concat(back))
        {
            _columns.Placed(branch);
        }

        double topY = 40 + HeightOf(top);
        List<Caption> bank = _schematic.Bank is { } symbol ? _columns.WordsOf(symbol) : [];
        double x = BankX + Lead + bank.Select(c => PlacedDrawing.WidthOf(c.Words)).DefaultIfEmpty(0).Max() + Gap;
        _drawing.Line(LineKind.Node, null, BankX, topY, x, topY);
        x = PlaceTrunk(top, x, topY);
        x = PlaceRest(x, topY);
        double hubY = Math.Max(_columns.Deepest, topY + 120 + (bank.Count * PlacedDrawing.LineHeight)) + 30;
        double backY = hubY + HeightOf(bottom) + 50;
        double backX = PlaceBack(bottom, backY);
        PlaceHub(hubY, backX, backY);
        if (_schematic.Bank is { } cells)
        {
            _drawing.Add(new PlacedSymbol(cells, BankX, topY, backY - topY, Lying: false, Flipped: false));
            _columns.PlaceWords(bank, BankX + Lead, topY + 40);
        }
    }

    /// <summary>The trunk along the top, with what hangs from it before the branches spread.</summary>
    private double PlaceTrunk(List<(Branch Branch, List<Caption> Words)> trunk, double x, double y)
    {
        string node = _tree.Plus;
        foreach ((Branch branch, List<Caption> words) in trunk)
        {
            double hung = _columns.PlaceHung(node, branch, x, y);
            double length = Math.Max(hung, WidthOf(words));
            PlaceLying(branch, words, x, y, length);
            x += length;
            node = branch.Node!;
        }

        return x + _columns.PlaceNode(node, x, y) + Gap;
    }

    /// <summary>What hangs on neither rail stands at the right, joined by references.</summary>
    private double PlaceRest(double x, double y)
    {
        foreach (Symbol symbol in _schematic.Symbols.Where(s => s != _schematic.Bank && !_columns.IsPlaced(s)))
        {
            x += _columns.PlaceAlone(symbol, x, y) + Gap;
        }

        foreach (DrawnBar bar in _schematic.Bars.Values.Where(b => b.Part != _tree.NegativeHub && !_columns.IsPlaced(b)))
        {
            x += _columns.PlaceAlone(bar, x, y) + Gap;
        }

        foreach (DrawnWire wire in _schematic.Wires.Where(w => !_words.IsTold(w) && !_columns.WillDrop(w)))
        {
            x += _columns.PlaceAlone(wire, x, y) + Gap;
        }

        return x;
    }

    /// <summary>The way back along the bottom, from the bank's negative terminal to the negative rail.</summary>
    private double PlaceBack(List<(Branch Branch, List<Caption> Words)> back, double y)
    {
        double x = BankX;
        foreach ((Branch branch, List<Caption> words) in back)
        {
            double length = WidthOf(words);
            PlaceLying(branch, words, x, y, length);
            x += length;
        }

        return x;
    }

    /// <summary>The negative rail, as wide as what returns to it.</summary>
    private void PlaceHub(double y, double backX, double backY)
    {
        (double left, double right) = _columns.PlaceDrops(y);
        left = Math.Min(left, backX);
        right = Math.Max(right, backX);
        bool isBar = _schematic.Bars.TryGetValue(_tree.NegativeHub, out DrawnBar? bar);
        _drawing.Line(isBar ? LineKind.Bar : LineKind.Node, bar?.Part, left, y, right, y);
        _drawing.Line(LineKind.Node, null, backX, y, backX, backY);
        if (bar is not null)
        {
            _columns.PlaceWords(bar.Captions, right + 4, y + 4);
        }
    }

    private void PlaceLying(Branch branch, List<Caption> words, double x, double y, double length)
    {
        if (branch.Symbol is { } symbol)
        {
            _drawing.Add(new PlacedSymbol(symbol, x, y, length, Lying: true, branch.Flipped));
        }
        else if (branch.Wire is { } wire)
        {
            _columns.PlaceWire(wire, x, y, x + length, y);
        }

        _columns.PlaceWords(words, x, y - 22 - ((words.Count - 1) * PlacedDrawing.LineHeight));
    }

    private List<Caption> WordsOf(Branch branch) =>
        branch.Symbol is { } symbol ? _columns.WordsOf(symbol) : _words.Of(branch.Wire!);

    private static double WidthOf(IEnumerable<Caption> words) =>
        Math.Max(60, words.Select(c => PlacedDrawing.WidthOf(c.Words)).DefaultIfEmpty(0).Max() + Gap);

    private static double HeightOf(IEnumerable<(Branch Branch, List<Caption> Words)> items) =>
        20 + (items.Select(i => i.Words.Count).DefaultIfEmpty(0).Max() * PlacedDrawing.LineHeight);
}
