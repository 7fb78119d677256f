using System.Globalization;

namespace WireCheck.Quantities;

/// <summary>Reads sizes as the trade writes them: <c>8 AWG</c>, <c>1/0 AWG</c>, <c>4/0</c>, <c>10 mm²</c>.</summary>
public static class ConductorSizeReader
{
    /// <summary>Gauge numbers that are sold, thin to thick; 0 and below are 1/0 to 4/0.</summary>
    public static IReadOnlyList<int> Gauges { get; } = [24, 22, 20, 18, 17, 16, 15, 14, 13, 12, 11, 10, 9, 8, 7, 6, 5, 4, 3, 2, 1, 0, -1, -2, -3];

    private const double ThinnestMetric = 0.2;
    private const double ThickestMetric = 120;

    /// <summary>Reads a size. AWG 24 to 4/0 and 0.2 to 120 mm² are known; others are a fault.</summary>
    public static Parsed<ConductorSize> Read(string text)
    {
        string written = text.Trim();
        string unit = UnitSpelling.Canonical(written);
        bool metric = unit.EndsWith("mm²", StringComparison.Ordinal);
        if (metric)
        {
            return ReadMetric(unit[..^"mm²".Length], written);
        }

        bool named = written.EndsWith("AWG", StringComparison.OrdinalIgnoreCase);
        string number = named ? written[..^"AWG".Length].TrimEnd() : written;
        if (number.EndsWith("/0", StringComparison.Ordinal)
            && int.TryParse(number[..^2], NumberStyles.None, CultureInfo.InvariantCulture, out int zeros))
        {
            return zeros is >= 1 and <= 4
                ? new ConductorSize(SizeSystem.Awg, 1 - zeros)
                : new QuantityFault(QuantityFaultKind.UnknownSize, written);
        }

        return named ? ReadGauge(number, written) : NotASize(written);
    }

    private static Parsed<ConductorSize> ReadGauge(string number, string written) =>
        int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int gauge) && Gauges.Contains(gauge) && gauge >= 0
            ? new ConductorSize(SizeSystem.Awg, gauge)
            : new QuantityFault(QuantityFaultKind.UnknownSize, written);

    private static Parsed<ConductorSize> ReadMetric(string number, string written)
    {
        Parsed<(double Number, string After)> split = NumberScanner.Split(number);
        bool known = split.Fault is null && split.Value.After.Length == 0
            && split.Value.Number is >= ThinnestMetric and <= ThickestMetric;
        return known
            ? new ConductorSize(SizeSystem.Metric, split.Value.Number)
            : new QuantityFault(QuantityFaultKind.UnknownSize, written);
    }

    private static Parsed<ConductorSize> NotASize(string written)
    {
        Parsed<(double Number, string After)> split = NumberScanner.Split(written);
        if (split.Fault is null && split.Value.After.Length == 0)
        {
            return new QuantityFault(QuantityFaultKind.NoUnit, written, null, Zeros(written));
        }

        IQuantityKind? other = split.Fault is null ? QuantityKinds.WithUnit(UnitSpelling.Canonical(split.Value.After)) : null;
        return other is null
            ? new QuantityFault(QuantityFaultKind.UnknownSize, written, null, AsTheTradeWrites(written))
            : new QuantityFault(QuantityFaultKind.OtherDimension, written, other);
    }

    /// <summary><c>AWG 4</c>, <c>#4</c> and <c>4 gauge</c> as <c>4 AWG</c>; null when that gives no size.</summary>
    private static string? AsTheTradeWrites(string written)
    {
        string bare = written.Trim('#', ' ');
        foreach (string word in (string[])["AWG", "gauge", "ga"])
        {
            bare = bare.StartsWith(word, StringComparison.OrdinalIgnoreCase) ? bare[word.Length..]
                : bare.EndsWith(word, StringComparison.OrdinalIgnoreCase) ? bare[..^word.Length]
                : bare;
        }

        string number = bare.Trim(' ', '#', '-', '.', ':');
        string awg = $"{Zeros(number) ?? number} AWG";
        return number.Length < written.Length && Read(awg).Fault is null ? Read(awg).Value.ToString() : null;
    }

    /// <summary><c>00</c> as <c>2/0</c>; null when it is not two to four noughts.</summary>
    private static string? Zeros(string number) =>
        number.Length is >= 2 and <= 4 && number.All(c => c == '0') ? $"{number.Length}/0" : null;
}
