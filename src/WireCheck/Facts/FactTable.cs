namespace WireCheck.Facts;

/// <summary>Everything known about a box, part by part in the order of the description; the pack itself comes first.</summary>
/// <param name="Pack">Facts about the whole box.</param>
/// <param name="Subjects">Facts about each part and conductor leg.</param>
public sealed record FactTable(FactSubject Pack, IReadOnlyList<FactSubject> Subjects);
