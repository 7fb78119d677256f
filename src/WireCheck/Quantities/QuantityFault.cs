namespace WireCheck.Quantities;

/// <summary>What is wrong with a value as it is written.</summary>
public enum QuantityFaultKind
{
    /// <summary>It does not begin with a number.</summary>
    NotANumber,

    /// <summary>It has a decimal comma.</summary>
    DecimalComma,

    /// <summary>It is not a number, or it is without end.</summary>
    NotFinite,

    /// <summary>A bare number where a unit is due.</summary>
    NoUnit,

    /// <summary>No dimension has this unit.</summary>
    UnknownUnit,

    /// <summary>The unit belongs to another dimension.</summary>
    OtherDimension,

    /// <summary>Below zero where that means nothing.</summary>
    Negative,

    /// <summary>Zero where that means nothing.</summary>
    Zero,

    /// <summary>Above the highest that has a meaning.</summary>
    TooHigh,

    /// <summary>Below absolute zero.</summary>
    BelowAbsoluteZero,

    /// <summary>A range that has no <c>..</c> in it.</summary>
    NotARange,

    /// <summary>A range whose first end is above its second.</summary>
    Reversed,

    /// <summary>A section or box without its two or three sides.</summary>
    WrongSides,

    /// <summary>A conductor size that is not sold.</summary>
    UnknownSize,
}

/// <summary>Why a value could not be read.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Written">The part of the value that is wrong.</param>
/// <param name="Found">The dimension that was found, where another was due; else null.</param>
/// <param name="Nearest">The right name that is nearest; null when none is near.</param>
public sealed record QuantityFault(
    QuantityFaultKind Kind, string Written, IQuantityKind? Found = null, string? Nearest = null);

/// <summary>A value, or why there is none.</summary>
/// <param name="Value">The value; the type's default when there is a fault.</param>
/// <param name="Fault">Null when the value is good.</param>
public readonly record struct Parsed<T>(T Value, QuantityFault? Fault)
{
    /// <summary>A good value.</summary>
    public static implicit operator Parsed<T>(T value) => new(value, null);

    /// <summary>No value.</summary>
    public static implicit operator Parsed<T>(QuantityFault fault) => new(default!, fault);
}
