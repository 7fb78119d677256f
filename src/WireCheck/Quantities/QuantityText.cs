using System.Globalization;

namespace WireCheck.Quantities;

/// <summary>Numbers as a builder reads them: three significant digits, a unit and its prefix.</summary>
public static class QuantityText
{
    /// <summary>Significant digits that a wire, a fuse and a meter on the bench are worth.</summary>
    public const int UsualDigits = 3;

    private static readonly (double Factor, string Prefix)[] Prefixes =
        [(1e6, "M"), (1e3, "k"), (1, ""), (1e-3, "m"), (1e-6, "µ"), (1e-9, "n")];

    /// <summary>What is smaller is what solving leaves over, not a reading: a thousandth of the smallest prefix.</summary>
    private const double Nothing = 1e-12;

    /// <summary>
    /// A value in its SI unit as a builder would write it: metres as mm below one, seconds as h or days, shares
    /// as per cent, °C and K without a prefix, everything else with the prefix that fits.
    /// </summary>
    /// <param name="value">The value in the unit.</param>
    /// <param name="siUnit">Its SI unit, such as A, Ω, m, s, °C; empty for a share of one.</param>
    public static string Of(double value, string siUnit) => siUnit switch
    {
        "" => WithUnit(value * 100, "%"),
        "s" => Time(value),
        "°C" or "K" => WithUnit(value, siUnit),
        "m" when Math.Abs(value) < 1 => WithUnit(value * 1000, "mm"),
        "m²" => WithUnit(value * 1e6, "mm²"),
        _ => WithPrefix(value, siUnit),
    };

    /// <summary>With the prefix that leaves one to three digits before the point: <c>0.0123</c> A is <c>12.3 mA</c>.</summary>
    public static string WithPrefix(double value, string unit, int digits = UsualDigits)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return $"{Plain(value, digits)} {unit}";
        }

        double rounded = Round(Math.Abs(value), digits);
        if (rounded < Nothing)
        {
            return $"0 {unit}";
        }

        foreach ((double factor, string prefix) in Prefixes)
        {
            // A little under the factor, since 1000 µ rounded can fall short of 1 m by its last bit.
            if (rounded >= factor * (1 - 1e-9))
            {
                return $"{Plain(value / factor, digits)} {prefix}{unit}";
            }
        }

        return $"{Plain(value / 1e-9, digits)} n{unit}";
    }

    /// <summary>Without a prefix: <c>61.3 °C</c>.</summary>
    public static string WithUnit(double value, string unit, int digits = UsualDigits) =>
        unit.Length == 0 ? Plain(value, digits) : $"{Plain(value, digits)} {unit}";

    /// <summary>How many digits two values need to read as two: 55.02 °C above 55 °C is not "55 °C above 55 °C". At most six.</summary>
    public static int DigitsApart(double one, double other)
    {
        int digits = UsualDigits;
        while (digits < 6 && one != other && Plain(one, digits) == Plain(other, digits))
        {
            digits++;
        }

        return digits;
    }

    /// <summary>A number of significant digits, without trailing zeros or an exponent.</summary>
    public static string Plain(double value, int digits)
    {
        if (!double.IsFinite(value))
        {
            return double.IsNaN(value) ? "not a number" : value > 0 ? "without limit" : "minus without limit";
        }

        double rounded = Round(value, digits);
        return rounded == 0 ? "0" : rounded.ToString("0.############", CultureInfo.InvariantCulture);
    }

    /// <summary>A time in the unit a builder would say: <c>40 s</c>, <c>20 min</c>, <c>6 h</c>, <c>12 days</c>.</summary>
    public static string Time(double seconds, int digits = UsualDigits)
    {
        double size = Math.Abs(seconds);
        return size switch
        {
            < 1 => WithPrefix(seconds, "s", digits),
            < 120 => WithUnit(seconds, "s", digits),
            < 7200 => WithUnit(seconds / 60, "min", digits),
            < 172800 => WithUnit(seconds / 3600, "h", digits),
            _ => WithUnit(seconds / Durations.SecondsPerDay, "days", digits),
        };
    }

    /// <summary>Raised to the next value that is written with three digits, so that "at least" is not too little.</summary>
    public static double Up(double value)
    {
        double rounded = Round(value, 3);
        if (value <= 0 || !double.IsFinite(value) || rounded >= value)
        {
            return rounded;
        }

        double step = Math.Pow(10, Math.Max(-15, Math.Floor(Math.Log10(value)) - 2));
        return Round(rounded + step, 3);
    }

    private static double Round(double value, int digits)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value;
        }

        int decimals = digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        if (decimals is >= 0 and <= 15)
        {
            return Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        }

        // Whole numbers keep all their digits: 1234 days is not 1230 days.
        return decimals < 0 ? Math.Round(value, MidpointRounding.AwayFromZero) : value;
    }
}
