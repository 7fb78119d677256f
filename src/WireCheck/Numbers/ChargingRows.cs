namespace WireCheck.Numbers;

/// <summary>One source at one corner of a charge, with the bank it brings the most to.</summary>
/// <param name="Mode">Id of the mode.</param>
/// <param name="Corner">The corner.</param>
/// <param name="Source">Id of the charger, vehicle or panel.</param>
/// <param name="Amps">What it gives, A.</param>
/// <param name="Volts">Between its poles, V.</param>
/// <param name="Limit">What keeps it from giving more.</param>
/// <param name="Bank">Id of the bank.</param>
/// <param name="BankAmps">Into the whole bank, from all that charges it, A.</param>
/// <param name="BankVolts">Between the bank's terminals, V.</param>
/// <param name="CellAmps">Most into one cell, A.</param>
/// <param name="CellVolts">Highest of one cell, V.</param>
public sealed record SourceNumbers(
    string Mode, string Corner, string Source, double Amps, double Volts, string Limit, string Bank, double BankAmps,
    double BankVolts, double CellAmps, double CellVolts);

/// <summary>A bank when its charge has fallen to the end current.</summary>
public sealed record EndNumbers(string Mode, string Corner, string Bank, double TailAmps, double BankVolts, double CellVolts);

/// <summary>One point of a vehicle's curve.</summary>
public sealed record VehicleNumbers(
    string Vehicle, string Bank, bool EngineRuns, double StateOfCharge, double Amps, double BankVolts, double CellAmps, bool Peak);

/// <summary>What a source that gives nothing takes: a panel in the dark, a charger left plugged.</summary>
public sealed record NightNumbers(string Id, double Amps, string Words);

/// <summary>Panels in frost.</summary>
public sealed record ColdNumbers(string Id, double Volts, double ColdVolts, double Celsius, double RisePerKelvin);

/// <summary>A charge with the BMS open.</summary>
public sealed record BmsOpenNumbers(string Mode, double CellAmps, double SourceVolts);

/// <summary>Lowest and highest voltage of a load while anything charges.</summary>
public sealed record LoadNumbers(string Load, double LowestVolts, string LowestMode, double HighestVolts, string HighestMode);

/// <summary>A source on a port, the wrong way round.</summary>
public sealed record ReversedNumbers(
    string Port, string Source, bool Keyed, double Amps, IReadOnlyList<string> Opens, double LeftAmps,
    IReadOnlyList<string> Reversed, IReadOnlyList<string> Undecided);

/// <summary>An empty port that takes charge: its voltage into nothing, and the current through a tool across it.</summary>
public sealed record ShortNumbers(string Port, double OpenVolts, double Amps);

/// <summary>Strings at the moment of joining; null where the voltages are not described.</summary>
public sealed record JoinNumbers(
    string Bank, IReadOnlyList<string> Others, double? DifferenceVolts, double? Amps, double? FullOntoEmptyAmps);
