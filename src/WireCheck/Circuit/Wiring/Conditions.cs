namespace WireCheck.Circuit.Wiring;

/// <summary>
/// The physical corner a circuit is solved at: how full and how old the cells are, how warm the copper is. What
/// each corner means in numbers comes from the library's assumptions.
/// </summary>
/// <param name="StateOfCharge">0 to 1.</param>
/// <param name="HighestResistance">
/// True: aged, cold cells, hot copper, every joint aged (will the load see enough volts, will the fuse clear).
/// False: fresh warm cells, 20 °C copper, new joints (inrush, breaking capacity).
/// </param>
/// <param name="CellCelsius">Cell temperature, °C.</param>
/// <param name="CopperCelsius">Conductor temperature, °C, where no heat balance gives one.</param>
/// <param name="CoilAirCelsius">Air around relay coils, °C.</param>
public sealed record Conditions(
    double StateOfCharge, bool HighestResistance, double CellCelsius, double CopperCelsius, double CoilAirCelsius);
