using System.Text;
using WireCheck.Quantities;
using static WireCheck.Reports.Svg.SvgText;

namespace WireCheck.Reports.Svg;

/// <summary>A plot as SVG: grid with units, curves with dashes of their own, a key at the right.</summary>
internal static class PlotSvg
{
    /// <summary>The style of plots on a page.</summary>
    internal const string Style = """

        .plot { font: 11px "DejaVu Sans Mono", Consolas, Menlo, monospace; color: CanvasText; }
        .plot text { fill: currentColor; }
        .plot .grid { stroke: currentColor; stroke-width: 0.4; opacity: 0.35; }
        .plot .fine { stroke-width: 0.25; opacity: 0.22; }
        .plot .frame, .plot .curve { stroke: currentColor; fill: none; }
        .plot .curve { stroke-width: 1.8; }
        .plot .range { fill: currentColor; opacity: 0.12; }
        .plot .bar { fill: currentColor; opacity: 0.55; }
        """;

    private const double Left = 74;
    private const double Top = 34;
    private const double Wide = 460;
    private const double High = 300;
    private const double KeyX = Left + Wide + 24;
    private const double LetterWidth = 6.7;

    private static readonly string[] Dashes = ["", "8 4", "2 3", "9 3 2 3", "14 4", "5 2 1 2 1 2", "1 5", "12 3 3 3 3 3"];

    /// <summary>Writes a plot.</summary>
    /// <param name="plot">The plot.</param>
    /// <param name="id">A name of its own on the page, of letters, digits and dashes.</param>
    internal static string Write(Plot plot, string id)
    {
        double keyWidth = plot.Curves.Select(c => c.Name).Append(plot.Range?.Name ?? "").Max(n => n.EnumerateRunes().Count()) * LetterWidth;
        double width = KeyX + 40 + keyWidth + 16;
        double height = Math.Max(Top + High + 56, Top + ((plot.Curves.Count + 2) * 18));
        StringBuilder svg = new();
        svg.Append($"<svg class=\"plot\" xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"{id}-title\" viewBox=\"0 0 {Px(width)} {Px(height)}\" width=\"{Px(width)}\" height=\"{Px(height)}\">\n");
        svg.Append($"<title id=\"{id}-title\">{Escape(plot.Title)}</title>\n");
        svg.Append($"<text x=\"{Px(Left)}\" y=\"18\" font-weight=\"bold\">{Escape(plot.Title)}</text>\n");
        WriteGrid(svg, plot);
        if (plot.Range is { } range && range.To > range.From)
        {
            double from = PlaceX(plot.X, range.From);
            double to = PlaceX(plot.X, range.To);
            svg.Append($"<rect class=\"range\" x=\"{Px(from)}\" y=\"{Px(Top)}\" width=\"{Px(to - from)}\" height=\"{Px(High)}\"/>\n");
        }

        svg.Append($"<clipPath id=\"{id}-clip\"><rect x=\"{Px(Left)}\" y=\"{Px(Top)}\" width=\"{Px(Wide)}\" height=\"{Px(High)}\"/></clipPath>\n");
        for (int i = 0; i < plot.Curves.Count; i++)
        {
            WriteCurve(svg, plot, i, id);
        }

        WriteKey(svg, plot);
        svg.Append($"<rect class=\"frame\" x=\"{Px(Left)}\" y=\"{Px(Top)}\" width=\"{Px(Wide)}\" height=\"{Px(High)}\"/>\n</svg>\n");
        return svg.ToString();
    }

    private static string DashOf(int curve) => Dashes[curve % Dashes.Length] is { Length: > 0 } dash ? $" stroke-dasharray=\"{dash}\"" : "";

    private static double Share(PlotAxis axis, double value) => axis.Logarithmic
        ? Math.Log(value / axis.From) / Math.Log(axis.To / axis.From)
        : (value - axis.From) / (axis.To - axis.From);

    private static double PlaceX(PlotAxis axis, double value) => Left + (Wide * Math.Clamp(Share(axis, value), 0, 1));

    private static double PlaceY(PlotAxis axis, double value) => Top + (High * (1 - Share(axis, value)));

    private static void WriteGrid(StringBuilder svg, Plot plot)
    {
        foreach ((double value, bool named) in PlotTicks.Of(plot.X))
        {
            double x = PlaceX(plot.X, value);
            svg.Append(Line(x, Top, x, Top + High, named ? " class=\"grid\"" : " class=\"grid fine\"")).Append('\n');
            if (named)
            {
                svg.Append($"<text x=\"{Px(x)}\" y=\"{Px(Top + High + 16)}\" text-anchor=\"middle\">{Escape(Number(value))}</text>\n");
            }
        }

        foreach ((double value, bool named) in PlotTicks.Of(plot.Y))
        {
            double y = PlaceY(plot.Y, value);
            svg.Append(Line(Left, y, Left + Wide, y, named ? " class=\"grid\"" : " class=\"grid fine\"")).Append('\n');
            if (named)
            {
                svg.Append($"<text x=\"{Px(Left - 6)}\" y=\"{Px(y + 4)}\" text-anchor=\"end\">{Escape(Number(value))}</text>\n");
            }
        }

        svg.Append($"<text x=\"{Px(Left + (Wide / 2))}\" y=\"{Px(Top + High + 36)}\" text-anchor=\"middle\">{Escape(Named(plot.X))}</text>\n");
        svg.Append($"<text transform=\"translate(14 {Px(Top + (High / 2))}) rotate(-90)\" text-anchor=\"middle\">{Escape(Named(plot.Y))}</text>\n");
    }

    private static string Number(double value) =>
        value is >= 1e-3 or 0 ? QuantityText.Plain(value, 6) : QuantityText.Plain(value, 1);

    private static string Named(PlotAxis axis) => axis.Unit.Length == 0 ? axis.Name : $"{axis.Name}, {axis.Unit}";

    private static void WriteCurve(StringBuilder svg, Plot plot, int place, string id)
    {
        StringBuilder path = new();
        foreach (PlotPoint point in plot.Curves[place].Points.Where(p => double.IsFinite(p.X) && double.IsFinite(p.Y)))
        {
            if (plot.Y.Logarithmic && point.Y <= 0)
            {
                continue;
            }

            path.Append(path.Length == 0 ? 'M' : 'L').Append(Px(PlaceX(plot.X, point.X))).Append(' ')
                .Append(Px(Math.Clamp(PlaceY(plot.Y, point.Y), -4000, 4000)));
        }

        if (path.Length > 0)
        {
            svg.Append($"<path class=\"curve\" clip-path=\"url(#{id}-clip)\" d=\"{path}\"{DashOf(place)}/>\n");
        }
    }

    private static void WriteKey(StringBuilder svg, Plot plot)
    {
        double y = Top + 8;
        for (int i = 0; i < plot.Curves.Count; i++, y += 18)
        {
            svg.Append($"<path class=\"curve\" d=\"M{Px(KeyX)} {Px(y)} H{Px(KeyX + 32)}\"{DashOf(i)}/>");
            svg.Append($"<text x=\"{Px(KeyX + 40)}\" y=\"{Px(y + 4)}\">{Escape(plot.Curves[i].Name)}</text>\n");
        }

        if (plot.Range is { } range)
        {
            svg.Append($"<rect class=\"range\" x=\"{Px(KeyX)}\" y=\"{Px(y - 5)}\" width=\"32\" height=\"10\"/>");
            svg.Append($"<text x=\"{Px(KeyX + 40)}\" y=\"{Px(y + 4)}\">{Escape(range.Name)}</text>\n");
        }
    }
}
