namespace WireCheck.Quantities;

/// <summary>A closed range of a quantity, written <c>a .. b UNIT</c> or <c>{from: a, to: b}</c>.</summary>
/// <param name="From">Lower end.</param>
/// <param name="To">Upper end, never below <paramref name="From"/>.</param>
public readonly record struct Range<T>(T From, T To);
