namespace WireCheck.Drawing;

/// <summary>What a line on the sheet stands for.</summary>
public enum LineKind
{
    /// <summary>A wire, or part of one.</summary>
    Wire,

    /// <summary>A busbar, drawn thick.</summary>
    Bar,

    /// <summary>A node with several wires, or the lead of a symbol: no part of its own.</summary>
    Node,
}

/// <summary>A straight line.</summary>
/// <param name="Kind">What it stands for.</param>
/// <param name="Part">The wire or bar it draws; null for a node.</param>
/// <param name="FromX">Where it begins, px from the left.</param>
/// <param name="FromY">Where it begins, px from the top.</param>
/// <param name="ToX">Where it ends, px from the left.</param>
/// <param name="ToY">Where it ends, px from the top.</param>
public sealed record PlacedLine(LineKind Kind, string? Part, double FromX, double FromY, double ToX, double ToY);

/// <summary>A symbol between two points, upright or lying.</summary>
/// <param name="Symbol">The symbol.</param>
/// <param name="X">Place of its first pin, px.</param>
/// <param name="Y">Place of its first pin, px.</param>
/// <param name="Length">From pin to pin, px.</param>
/// <param name="Lying">True when it runs to the right, false when it runs down.</param>
/// <param name="Flipped">Its bottom pin comes first.</param>
public sealed record PlacedSymbol(Symbol Symbol, double X, double Y, double Length, bool Lying, bool Flipped);

/// <summary>A line of words.</summary>
/// <param name="X">Left edge, px.</param>
/// <param name="Y">Baseline, px.</param>
/// <param name="Words">The words, not escaped.</param>
/// <param name="Part">The part it introduces, before whose name a mark may stand; or null.</param>
public sealed record PlacedLabel(double X, double Y, string Words, string? Part);

/// <summary>The head of a reference: the line goes on elsewhere.</summary>
/// <param name="X">Its tip, px from the left.</param>
/// <param name="Y">Its tip, px from the top.</param>
public sealed record PlacedReference(double X, double Y);

/// <summary>A dot where a joint lies on a line.</summary>
/// <param name="Part">Id of the joint.</param>
/// <param name="X">Its middle, px from the left.</param>
/// <param name="Y">Its middle, px from the top.</param>
public sealed record PlacedDot(string Part, double X, double Y);

/// <summary>A drawing whose every piece has its place; sizes in px of a sheet that may be scaled.</summary>
public sealed class PlacedDrawing
{
    /// <summary>Height of a line of words, px.</summary>
    public const double LineHeight = 14;

    /// <summary>Size of the letters, px.</summary>
    public const double FontSize = 11;

    /// <summary>Width given to one letter, px; the letters are of even width.</summary>
    public const double LetterWidth = 6.7;

    /// <summary>Room before the words for a mark, px.</summary>
    public const double MarkWidth = 14;

    private readonly List<PlacedLine> _lines = [];
    private readonly List<PlacedSymbol> _symbols = [];
    private readonly List<PlacedLabel> _labels = [];
    private readonly List<PlacedReference> _references = [];
    private readonly List<PlacedDot> _dots = [];

    public double Width { get; private set; }

    public double Height { get; private set; }

    public IReadOnlyList<PlacedLine> Lines => _lines;

    public IReadOnlyList<PlacedSymbol> Symbols => _symbols;

    public IReadOnlyList<PlacedLabel> Labels => _labels;

    public IReadOnlyList<PlacedReference> References => _references;

    public IReadOnlyList<PlacedDot> Dots => _dots;

    /// <summary>Width of words with the room for their mark, px.</summary>
    public static double WidthOf(string words) => MarkWidth + (words.EnumerateRunes().Count() * LetterWidth);

    internal void Line(LineKind kind, string? part, double fromX, double fromY, double toX, double toY)
    {
        _lines.Add(new PlacedLine(kind, part, fromX, fromY, toX, toY));
        Reach(Math.Max(fromX, toX), Math.Max(fromY, toY));
    }

    internal void Add(PlacedSymbol symbol)
    {
        _symbols.Add(symbol);
        Reach(symbol.X + (symbol.Lying ? symbol.Length : 20), symbol.Y + (symbol.Lying ? 20 : symbol.Length));
    }

    internal void Label(double x, double y, Caption caption)
    {
        _labels.Add(new PlacedLabel(x + MarkWidth, y, caption.Words, caption.Part));
        Reach(x + WidthOf(caption.Words), y + LineHeight);
    }

    internal void Reference(double x, double y) => _references.Add(new PlacedReference(x, y));

    internal void Dot(string part, double x, double y) => _dots.Add(new PlacedDot(part, x, y));

    private void Reach(double x, double y)
    {
        Width = Math.Max(Width, x + Margin);
        Height = Math.Max(Height, y + Margin);
    }

    /// <summary>Room around the drawing, px.</summary>
    private const double Margin = 24;
}
