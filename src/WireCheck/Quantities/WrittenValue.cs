namespace WireCheck.Quantities;

/// <summary>Two values as files write them, compared by what they mean.</summary>
public static class WrittenValue
{
    /// <summary>Two numbers of one quantity that differ by less, as a part of the larger, are the same.</summary>
    private const double Sameness = 1e-9;

    /// <summary>
    /// True when both mean the same: <c>90 mm</c> and <c>9 cm</c>, <c>10 mm2</c> and <c>10 mm²</c>, <c>4/0</c> and
    /// <c>4/0 AWG</c>. What is no quantity is the same only when it is written the same.
    /// </summary>
    public static bool SameMeaning(string left, string right)
    {
        string[] lefts = left.Split("..");
        string[] rights = right.Split("..");
        return string.Equals(left.Trim(), right.Trim(), StringComparison.Ordinal)
            || SameSize(left, right)
            || (lefts.Length == rights.Length && lefts.Zip(rights).All(pair => SameQuantity(
                WithUnitOf(pair.First, lefts[^1]), WithUnitOf(pair.Second, rights[^1]))));
    }

    /// <summary>
    /// Two values of one quantity as numbers of the second one's unit; null when they are none, or temperatures, whose units
    /// begin at different zeros.
    /// </summary>
    public static (double First, double Second, string Unit)? InUnitOf(string first, string second)
    {
        if (Read(first) is not { } one || Read(second) is not { } other || one.Kind != other.Kind || one.Kind == PlainKinds.Temperature)
        {
            return null;
        }

        string unit = UnitSpelling.Canonical(NumberScanner.Split(second).Value.After);
        return other.Kind.ToSi(1, unit) is double size ? (one.Si / size, other.Si / size, unit) : null;
    }

    private static bool SameSize(string left, string right)
    {
        Parsed<ConductorSize> one = ConductorSizeReader.Read(left);
        Parsed<ConductorSize> other = ConductorSizeReader.Read(right);
        return one.Fault is null && other.Fault is null && one.Value == other.Value;
    }

    private static bool SameQuantity(string left, string right) =>
        Read(left) is { } one && Read(right) is { } other && one.Kind == other.Kind
        && Math.Abs(one.Si - other.Si) <= Sameness * Math.Max(Math.Abs(one.Si), Math.Abs(other.Si));

    /// <summary>The lower end of a range may leave its unit to the upper one.</summary>
    private static string WithUnitOf(string text, string last)
    {
        Parsed<(double Number, string After)> split = NumberScanner.Split(text);
        return split.Fault is null && split.Value.After.Length == 0
            ? $"{text} {NumberScanner.Split(last).Value.After}"
            : text;
    }

    private static (IQuantityKind Kind, double Si)? Read(string text)
    {
        Parsed<(double Number, string After)> split = NumberScanner.Split(text);
        if (split.Fault is not null)
        {
            return null;
        }

        string symbol = UnitSpelling.Canonical(split.Value.After);
        return QuantityKinds.WithUnit(symbol) is { } kind && kind.ToSi(split.Value.Number, symbol) is double si ? (kind, si) : null;
    }
}
