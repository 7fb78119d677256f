namespace WireCheck.Standby;

/// <summary>What would be won by taking one consumer off the box at rest.</summary>
/// <param name="PartId">The consumer.</param>
/// <param name="Behind">A switch or relay behind which it would be dead at rest and fed in use; null when the box has none.</param>
/// <param name="Unplugs">It hangs on a port, so that it need only be unplugged.</param>
/// <param name="MeantLive">The description says that it stays live.</param>
/// <param name="Amps">What still leaves the cells then, A.</param>
/// <param name="Life">How long a full box keeps then.</param>
public sealed record Move(string PartId, string? Behind, bool Unplugs, bool MeantLive, double Amps, ShelfLife Life);
