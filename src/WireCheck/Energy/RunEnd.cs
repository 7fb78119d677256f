namespace WireCheck.Energy;

/// <summary>What ends a run.</summary>
public enum RunEndKind
{
    /// <summary>A cell came down to the voltage at which the BMS opens.</summary>
    Bms,

    /// <summary>No BMS watches the bank; a cell came to an end of its window.</summary>
    CellWindow,

    /// <summary>An inverter or converter that served something fell below its cut-off.</summary>
    CutOff,

    /// <summary>A load saw less than its window at its own terminals.</summary>
    LoadWindow,

    /// <summary>The relay that fed something let go.</summary>
    Relay,

    /// <summary>The wiring can no longer carry the power at any voltage.</summary>
    Undeliverable,

    /// <summary>A cell rose to the voltage at which the BMS stops a charge.</summary>
    BmsOvercharge,

    /// <summary>The charge current has fallen to its end current.</summary>
    Tail,

    /// <summary>Nothing ends it within what the cells hold.</summary>
    Nothing,
}

/// <summary>What ends a run and where.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="PartId">The part that ends it; null when nothing does.</param>
/// <param name="Volts">The voltage it then sees, V; NaN when none is told.</param>
public sealed record RunEnd(RunEndKind Kind, string? PartId, double Volts)
{
    internal static RunEnd Nothing { get; } = new(RunEndKind.Nothing, null, double.NaN);
}
