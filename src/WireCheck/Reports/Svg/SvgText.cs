using System.Globalization;

namespace WireCheck.Reports.Svg;

/// <summary>Pieces of SVG as text: numbers to a tenth of a pixel, words escaped.</summary>
internal static class SvgText
{
    /// <summary>A length or place, px.</summary>
    internal static string Px(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Words safe between tags and in quoted attributes.</summary>
    internal static string Escape(string words) => Escaping.Html(words);

    /// <summary>A straight line.</summary>
    internal static string Line(double fromX, double fromY, double toX, double toY, string attributes = "") =>
        $"<line x1=\"{Px(fromX)}\" y1=\"{Px(fromY)}\" x2=\"{Px(toX)}\" y2=\"{Px(toY)}\"{attributes}/>";
}
