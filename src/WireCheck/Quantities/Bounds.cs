namespace WireCheck.Quantities;

/// <summary>Which values of a quantity have a meaning, in SI units.</summary>
/// <param name="Lowest">Lowest value.</param>
/// <param name="LowestAllowed">Whether the lowest value itself has a meaning.</param>
/// <param name="Highest">Highest value, allowed itself.</param>
public readonly record struct Bounds(double Lowest, bool LowestAllowed, double Highest)
{
    /// <summary>Above zero.</summary>
    public static Bounds Positive { get; } = new(0, false, double.MaxValue);

    /// <summary>Zero or above.</summary>
    public static Bounds ZeroOrMore { get; } = new(0, true, double.MaxValue);

    /// <summary>Any finite value.</summary>
    public static Bounds Any { get; } = new(double.MinValue, true, double.MaxValue);

    /// <summary>A part of a whole, above zero and at most all of it.</summary>
    public static Bounds Share { get; } = new(0, false, 1);

    /// <summary>A part of a whole, none of it to all of it.</summary>
    public static Bounds ShareOrNone { get; } = new(0, true, 1);

    /// <summary>What is wrong with a value in SI units, or null.</summary>
    public QuantityFault? Check(double si, string written)
    {
        if (!double.IsFinite(si))
        {
            return new QuantityFault(QuantityFaultKind.NotFinite, written);
        }

        if (si < Lowest)
        {
            return new QuantityFault(QuantityFaultKind.Negative, written);
        }

        if (si <= Lowest && !LowestAllowed)
        {
            return new QuantityFault(QuantityFaultKind.Zero, written);
        }

        return si > Highest ? new QuantityFault(QuantityFaultKind.TooHigh, written) : null;
    }
}
