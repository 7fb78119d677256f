using WireCheck.Quantities;
using WireCheck.Sizing;

namespace WireCheck.Reports.Sizing;

/// <summary>Words that every answer about sizes shares.</summary>
internal static class SizingWords
{
    /// <summary>The keys that lead to a value, as a builder would say them.</summary>
    internal static string Key(SizedValue value) => string.Join(' ', value.Keys);

    /// <summary>Why a value is no smaller.</summary>
    internal static string Why(SizedChoice choice) => choice.Decision switch
    {
        Decision.Rule => choice.Fails[0].Rule,
        Decision.Given => $"as it stands: {choice.Value.OnlyGrows}",
        _ => "the smallest there is",
    };

    /// <summary>Why a finding stands in the end.</summary>
    internal static string Why(Conflict conflict) => conflict.Value is { } value
        ? $"No {value.Words} passes: {string.Join(" and ", conflict.Rules)} leave none."
        : "No size or class that was tried takes this away without bringing something worse.";

    /// <summary>A volume of metal as section times length, which is how wire is sold.</summary>
    internal static string Metal(double cubicMetres) => $"{QuantityText.Plain(cubicMetres * 1e6, 3)} mm²·m";
}
