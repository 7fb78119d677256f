using System.Text;
using WireCheck.Quantities;
using static WireCheck.Reports.Svg.SvgText;

namespace WireCheck.Reports.Svg;

/// <summary>Shares of a whole as bars, in the order given, each with its amount.</summary>
internal static class ShareBars
{
    private const double Row = 22;
    private const double Wide = 300;
    private const double LetterWidth = 6.7;

    /// <summary>Writes the bars.</summary>
    /// <param name="title">What they are shares of.</param>
    /// <param name="id">A name of its own on the page.</param>
    /// <param name="shares">Name, share 0 to 1, and the amount.</param>
    /// <param name="unit">Unit of the amounts.</param>
    internal static string Write(string title, string id, IReadOnlyList<(string Name, double Share, double Amount)> shares, string unit)
    {
        double left = 16 + (shares.Select(s => s.Name.EnumerateRunes().Count()).DefaultIfEmpty(0).Max() * LetterWidth);
        double width = Math.Max(left + Wide + 170, title.Length * LetterWidth * 1.1);
        double height = 40 + (shares.Count * Row);
        StringBuilder svg = new();
        svg.Append($"<svg class=\"plot\" xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"{id}-title\" viewBox=\"0 0 {Px(width)} {Px(height)}\" width=\"{Px(width)}\" height=\"{Px(height)}\">\n");
        svg.Append($"<title id=\"{id}-title\">{Escape(title)}</title>\n<text x=\"8\" y=\"18\" font-weight=\"bold\">{Escape(title)}</text>\n");
        for (int i = 0; i < shares.Count; i++)
        {
            (string name, double share, double amount) = shares[i];
            double y = 32 + (i * Row);
            svg.Append($"<text x=\"8\" y=\"{Px(y + 12)}\">{Escape(name)}</text>");
            svg.Append($"<rect class=\"bar\" x=\"{Px(left)}\" y=\"{Px(y)}\" width=\"{Px(Wide * Math.Clamp(share, 0, 1))}\" height=\"16\"/>");
            string words = $"{QuantityText.WithPrefix(amount, unit)}, {NumberWords.Percent(share)}";
            svg.Append($"<text x=\"{Px(left + (Wide * Math.Clamp(share, 0, 1)) + 6)}\" y=\"{Px(y + 12)}\">{Escape(words)}</text>\n");
        }

        return svg.Append("</svg>\n").ToString();
    }
}
