using WireCheck.States;

namespace WireCheck.Standby;

/// <summary>A box at rest in one of the two ways, at the corner in which most leaves its cells.</summary>
/// <param name="Point">The solved state.</param>
/// <param name="Amps">Current that leaves the cells, A, without self-discharge: the sum over the consumers.</param>
/// <param name="Drains">Who takes it, largest first.</param>
/// <param name="Life">How long a full box keeps so.</param>
public sealed record StandbyState(OperatingPoint Point, double Amps, IReadOnlyList<Drain> Drains, ShelfLife Life);
