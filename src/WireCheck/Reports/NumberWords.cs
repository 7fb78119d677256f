using System.Globalization;
using WireCheck.Quantities;

namespace WireCheck.Reports;

/// <summary>Numbers of a report that no rule put into words.</summary>
internal static class NumberWords
{
    private static readonly HashSet<string> WithPrefix = ["A", "V", "Ω", "W", "J", "F", "H", "Hz", "s"];

    /// <summary>A share as a percentage: one decimal above 95 %, so that 99.6 % is not told as 100 %.</summary>
    internal static string Percent(double share)
    {
        string format = share > 0.95 && share < 1 ? "0.0" : "0";
        double percent = format == "0.0" ? Math.Min(99.9, share * 100) : share * 100;
        return percent.ToString(format, CultureInfo.InvariantCulture) + " %";
    }

    /// <summary>A value with its unit, three significant digits; an area and a length in millimetres, a share in percent.</summary>
    internal static string Quantity(double value, string? unit) => unit switch
    {
        "" when value <= 1 => QuantityText.WithUnit(value * 100, "%"),
        null or "" => QuantityText.Plain(value, 3),
        "m" when value < 1 => QuantityText.WithUnit(value * 1e3, "mm"),
        "m²" => QuantityText.WithUnit(value * 1e6, "mm²"),
        "A/m²" => QuantityText.WithUnit(value / 1e6, "A/mm²"),
        "s" => QuantityText.Time(value),
        _ when WithPrefix.Contains(unit) => QuantityText.WithPrefix(value, unit),
        _ => QuantityText.WithUnit(value, unit),
    };

    /// <summary>Whole days, rounded down: a promise is not rounded up.</summary>
    internal static string Days(double days) => Math.Floor(days) switch
    {
        < 1 => "less than a day",
        1 => "1 day",
        var whole => whole.ToString("0", CultureInfo.InvariantCulture) + " days",
    };
}
