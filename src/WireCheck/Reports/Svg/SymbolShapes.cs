using WireCheck.Drawing;
using static WireCheck.Reports.Svg.SvgText;

namespace WireCheck.Reports.Svg;

/// <summary>
/// The outline of each symbol, upright, its body between -12 and 12 px of its middle. Shapes after IEC 60617 where
/// it has one: cell, fuse, switch, contact, coil, diode, resistor, lamp, converter.
/// </summary>
internal static class SymbolShapes
{
    /// <summary>Half the height of a body, px.</summary>
    internal const double Half = 12;

    private const string Box = "<rect x=\"-10\" y=\"-12\" width=\"20\" height=\"24\"/>";
    private const string SlantedContact = "<path d=\"M0 -12 V-8 M0 12 V8 L-9 -7\"/>";

    /// <summary>The body of a symbol around its middle.</summary>
    internal static string Body(SymbolShape shape) => shape switch
    {
        SymbolShape.Cells => "<path d=\"M-14 -9 H14 M-14 3 H14 M0 -12 V-9 M0 9 V12\"/><path class=\"thick\" d=\"M-7 -3 H7 M-7 9 H7\"/>",
        SymbolShape.Bms => Box + "<path d=\"M-5 -5 L0 0 L5 -5 M-5 3 L0 8 L5 3\"/>",
        SymbolShape.Fuse => "<rect x=\"-5\" y=\"-12\" width=\"10\" height=\"24\"/><path d=\"M0 -12 V12\"/>",
        SymbolShape.Breaker => SlantedContact + "<path d=\"M-3 -11 L3 -5 M3 -11 L-3 -5\"/>",
        SymbolShape.Switch => SlantedContact + "<path d=\"M-5 0 H-12 M-12 -4 V4\"/>",
        SymbolShape.PushButton => SlantedContact + "<path d=\"M-5 0 H-12 M-9 -4 H-12 V4 H-9\"/>",
        SymbolShape.Contact => SlantedContact,
        SymbolShape.RestContact => "<path d=\"M0 -12 V-8 H-8 M0 12 V8 L-7 -10\"/>",
        SymbolShape.Coil => "<rect x=\"-11\" y=\"-8\" width=\"22\" height=\"16\"/><path d=\"M0 -12 V-8 M0 8 V12\"/>",
        SymbolShape.Shunt => "<rect x=\"-5\" y=\"-12\" width=\"10\" height=\"24\"/><path d=\"M5 -7 H12 M5 7 H12\"/>",
        SymbolShape.Meter => "<circle r=\"12\"/><path d=\"M-6 5 L5 -6 M5 -6 V-1 M5 -6 H0\"/>",
        SymbolShape.Diode => "<path d=\"M-8 -7 H8 L0 7 Z M-8 7 H8 M0 -12 V12\"/>",
        SymbolShape.Resistor => "<rect x=\"-5\" y=\"-12\" width=\"10\" height=\"24\"/>",
        SymbolShape.Converter => Box + "<path d=\"M-10 12 L10 -12 M-7 -7 H-1 M-7 -4 H-1 M1 5 H7 M1 8 H7\"/>",
        SymbolShape.Inverter => Box + "<path d=\"M-10 12 L10 -12 M-7 -7 H-1 M-7 -4 H-1 M0 7 q2 -4 4 0 q2 4 4 0\"/>",
        SymbolShape.Port => "<path d=\"M0 -12 V-4 M-9 6 A9 9 0 0 1 9 6 M0 12 V1\"/>",
        SymbolShape.Load => "<circle r=\"12\"/><path d=\"M-8.5 -8.5 L8.5 8.5 M8.5 -8.5 L-8.5 8.5\"/>",
        SymbolShape.Charger => Box + "<path d=\"M-10 12 L10 -12 M-8 -5 q2 -4 4 0 q2 4 4 0 M1 5 H7 M1 8 H7\"/>",
        SymbolShape.Panel => Box + "<path d=\"M-10 -4 H10 M-10 4 H10 M0 -12 V12\"/>",
        SymbolShape.Vehicle => "<circle r=\"12\"/><path d=\"M-4 0 H4 M0 -4 V4\"/>",
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "no outline"),
    };

    /// <summary>A placed symbol with the leads to its pins.</summary>
    internal static string Draw(PlacedSymbol placed)
    {
        double middle = placed.Lying || placed.Symbol.Shape == SymbolShape.Cells ? placed.Length / 2 : Math.Min(placed.Length / 2, 22);
        string turn = placed.Lying ? " rotate(-90)" : "";
        string flip = placed.Flipped ? " rotate(180)" : "";
        return $"<g transform=\"translate({Px(placed.X)} {Px(placed.Y)}){turn}\">"
            + Line(0, 0, 0, middle - Half) + Line(0, middle + Half, 0, placed.Length)
            + $"<g class=\"body\" transform=\"translate(0 {Px(middle)}){flip}\">{Body(placed.Symbol.Shape)}</g></g>";
    }
}
