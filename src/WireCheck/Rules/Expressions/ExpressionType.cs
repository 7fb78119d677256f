using WireCheck.Facts;

namespace WireCheck.Rules.Expressions;

/// <summary>What kind of value an expression gives.</summary>
internal enum ExpressionKind
{
    /// <summary>Not known, because a problem was already reported in it.</summary>
    Unknown,

    /// <summary>The literal <c>null</c>.</summary>
    Nothing,
    Number,
    Word,
    YesNo,
    Names,
}

/// <summary>The kind and, for a number, the SI unit of an expression.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Unit">Unit symbol, "" for a pure number, null where any unit fits or none is known.</param>
internal readonly record struct ExpressionType(ExpressionKind Kind, string? Unit = null)
{
    internal static ExpressionType Unknown => new(ExpressionKind.Unknown);

    internal static ExpressionType YesNo => new(ExpressionKind.YesNo);

    internal static ExpressionType Word => new(ExpressionKind.Word);

    internal static ExpressionType Of(FactType type, string unit) => type switch
    {
        FactType.Number => new ExpressionType(ExpressionKind.Number, unit),
        FactType.Word => Word,
        FactType.YesNo => YesNo,
        _ => new ExpressionType(ExpressionKind.Names),
    };

    /// <summary>True when it is of the kind, or a problem in it was already reported.</summary>
    internal bool IsOrUnknown(ExpressionKind kind) => Kind == kind || Kind == ExpressionKind.Unknown;

    /// <summary>The kind in words, for a message.</summary>
    internal string InWords => Kind switch
    {
        ExpressionKind.Number => string.IsNullOrEmpty(Unit) ? "a number" : $"a number in {Unit}",
        ExpressionKind.Word => "a word",
        ExpressionKind.YesNo => "a yes or no",
        ExpressionKind.Names => "a list of names",
        ExpressionKind.Nothing => "null",
        _ => "something unknown",
    };
}
