using System.Globalization;
using WireCheck.Text;

namespace WireCheck.Knowledge;

/// <summary>
/// A number with a unit as the tool's own tables write it, turned into SI; degrees Celsius stay. Descriptions are
/// read with many more units by their own reader.
/// </summary>
internal static class TableValue
{
    private static readonly Dictionary<string, (double Factor, string Unit)> Units = new(StringComparer.Ordinal)
    {
        [""] = (1, ""),
        ["%"] = (0.01, ""),
        ["°C"] = (1, "°C"),
        ["K"] = (1, "K"),
        ["V"] = (1, "V"),
        ["A"] = (1, "A"),
        ["Ω"] = (1, "Ω"),
        ["W"] = (1, "W"),
        ["kΩ"] = (1e3, "Ω"),
        ["mΩ"] = (1e-3, "Ω"),
        ["µF"] = (1e-6, "F"),
        ["µH"] = (1e-6, "H"),
        ["s"] = (1, "s"),
    };

    /// <summary>The number in SI and its SI unit.</summary>
    internal static (double Number, string Unit) Parse(string text, Position at)
    {
        int space = text.IndexOf(' ', StringComparison.Ordinal);
        string number = space < 0 ? text : text[..space];
        string unit = space < 0 ? string.Empty : text[(space + 1)..];
        return double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            && Units.TryGetValue(unit, out (double Factor, string Unit) known)
            ? (value * known.Factor, known.Unit)
            : throw new KnowledgeException($"{at}: '{text}' is no value of a table");
    }
}
