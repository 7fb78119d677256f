namespace WireCheck.Standby;

/// <summary>One consumer of a box at rest.</summary>
/// <param name="PartId">The part that uses the current up.</param>
/// <param name="Amps">Current it takes from the cells, A.</param>
/// <param name="Chain">Parts and conductors of its largest way, from the bank's positive to its negative, itself left out.</param>
public sealed record Drain(string PartId, double Amps, IReadOnlyList<string> Chain);
