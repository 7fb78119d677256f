namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about a charger's settings, its input and what flows back into it.</summary>
public static class ChargerInputFacts
{
    private const string Kind = "charger";

    public static readonly Fact InputMax = Fact.Number(Kind, "input_max", "V", "Highest voltage its input bears.");

    public static readonly Fact InputOpenVoltage = Fact.Number(
        Kind, "input_open_voltage", "V", "Open-circuit voltage of the panels at its input at 25 °C, panels in series added up.");

    public static readonly Fact InputOpenVoltageCold = Fact.Number(
        Kind, "input_open_voltage_cold", "V", "The same at the coldest the box is used.");

    public static readonly Fact Coldest = Fact.Number(Kind, "coldest", "°C", "The coldest the box is used.");

    public static readonly Fact OpenCircuitRise = Fact.Number(
        Kind, "open_circuit_rise", "", "Part of the panels' open-circuit voltage gained for each kelvin below 25 °C.");

    public static readonly Fact BleedCurrent = Fact.Worst(
        Kind, "bleed_current", "A", "What it draws from the box when it is joined to it without power, its own use not counted: with every switch closed or every one open, whichever is more.");

    public static readonly Fact LoopedThrough = Fact.Word(
        Kind, "looped_through", "Id of the box's own inverter, port or bank that feeds it while it charges the same bank; absent when none does.");
}

/// <summary>Facts about a vehicle that feeds a bank by wire alone.</summary>
public static class VehicleChargeFacts
{
    private const string Kind = "vehicle";

    public static readonly Fact DirectBank = Fact.Word(
        Kind, "direct_bank", "Id of the bank it feeds by wire, contacts and diodes alone; absent when a charger regulates between.");

    public static readonly Fact PeakCurrent = Fact.Number(
        Kind, "peak_current", "A", "Largest current into that bank over the whole range of charge, engine running, lowest resistances.");

    public static readonly Fact PeakCharge = Fact.Number(Kind, "peak_charge", "", "State of charge at which it flows.");

    public static readonly Fact PeakCellCurrent = Fact.Number(Kind, "peak_cell_current", "A", "Largest current into one cell then.");

    public static readonly Fact CellChargeLimit = Fact.Number(Kind, "cell_charge_limit", "A", "Largest charge current that one cell allows.");

    public static readonly Fact BmsChargeLimit = Fact.Number(
        Kind, "bms_charge_limit", "A", "Continuous charge current of the bank's BMS; absent without a BMS.");

    public static readonly Fact Port = Fact.Word(Kind, "port", "Id of the port it is plugged into; absent when it is wired.");

    public static readonly Fact PortRated = Fact.Number(Kind, "port_rated", "A", "Steady current that port's contacts are rated for.");

    public static readonly Fact LeadConductor = Fact.Word(
        Kind, "lead_conductor", "Id of the conductor that the peak current loads most, against its ampacity.");

    public static readonly Fact LeadCurrent = Fact.Number(Kind, "lead_current", "A", "Current in that conductor at the peak.");

    public static readonly Fact LeadAmpacity = Fact.Number(Kind, "lead_ampacity", "A", "Its ampacity.");
}

/// <summary>Facts about a panel: in frost, without a regulator, at night.</summary>
public static class PanelChargeFacts
{
    private const string Kind = "panel";

    public static readonly Fact OpenCircuitCold = Fact.Number(
        Kind, "open_circuit_cold", "V", "Open-circuit voltage at the coldest the box is used.");

    public static readonly Fact Coldest = Fact.Number(Kind, "coldest", "°C", "The coldest the box is used.");

    public static readonly Fact UnregulatedBank = Fact.Word(
        Kind, "unregulated_bank", "Id of the bank it feeds by wire, contacts and diodes alone; absent when a controller regulates between.");

    public static readonly Fact OpenCellVoltage = Fact.Number(
        Kind, "open_cell_voltage", "V", "open_circuit_cold over that bank's cells in series: where nothing stops it, each cell goes there.");

    public static readonly Fact ChargeCurrent = Fact.Worst(Kind, "charge_current", "A", "Largest current it gives into the wiring.");

    public static readonly Fact BmsOpenVoltage = Fact.Number(
        Kind, "bms_open_voltage", "V", "Voltage between its poles when the BMS opens in full sun at the coldest the box is used and no load runs; absent without a BMS.");

    public static readonly Fact NightReached = Fact.YesNo(
        Kind, "night_reached", "The cells can drive current into it in the dark: neither a diode nor a controller that blocks lies between.");

    public static readonly Fact NightCurrent = Fact.Number(Kind, "night_current", "A", "Largest current it takes from the cells in the dark.");

    public static readonly Fact DarkKnown = Fact.YesNo(Kind, "dark_known", "Its dark leakage, or the data of its cells, is described.");

    public static readonly Fact NightController = Fact.Word(
        Kind, "night_controller", "Id of the controller between of which it is not said whether it blocks; absent otherwise.");
}
