namespace WireCheck.Facts;

/// <summary>The state a worst value was found in.</summary>
/// <param name="Mode">Id of the mode.</param>
/// <param name="Corner">Words for the corner, such as "empty, highest resistance".</param>
public sealed record FactPlace(string Mode, string Corner);

/// <summary>One fact of one part.</summary>
/// <param name="Definition">What it is.</param>
/// <param name="Value">A double in the definition's unit, a string, a bool, or a list of strings.</param>
/// <param name="Place">The state it comes from; null when it is the same in all.</param>
public sealed record FactValue(Fact Definition, object Value, FactPlace? Place);
