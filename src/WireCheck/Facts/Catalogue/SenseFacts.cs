namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about the drawn sense leads and the two ports of a BMS.</summary>
public static class SenseFacts
{
    private const string Kind = "bms";

    public static readonly Fact WrongTaps = Fact.Names(
        Kind, "wrong_taps", "Drawn sense leads that do not end on the cell terminal of their number, each with where it ends; absent when none is drawn.");

    public static readonly Fact StepLow = Fact.Worst(
        Kind, "sense_step_low", "V", "Lowest voltage from one drawn sense lead up to the next, at rest; negative when two are swapped.");

    public static readonly Fact StepHigh = Fact.Worst(
        Kind, "sense_step_high", "V", "Highest voltage from one drawn sense lead up to the next, at rest.");

    public static readonly Fact CellLow = Fact.Number(Kind, "cell_low", "V", "Lowest voltage of a cell of its bank.");

    public static readonly Fact CellHigh = Fact.Number(Kind, "cell_high", "V", "Highest voltage of a cell of its bank.");

    public static readonly Fact SenseError = Fact.Worst(
        Kind, "sense_error", "V", "Largest difference between what a pair of drawn sense leads reads and the voltage of the cell between them; absent while a lead is on the wrong terminal.");

    public static readonly Fact SenseErrorWhere = Fact.Word(Kind, "sense_error_where", "The pair of leads that reads it.");

    public static readonly Fact SeparatePort = Fact.YesNo(
        Kind, "separate_port", "It has one terminal for charging and another for discharging.");

    public static readonly Fact LoadsOnChargePort = Fact.Names(
        Kind, "loads_on_charge_port", "Consumers that are wired to its charge terminal and not to its discharge terminal; absent for a common port.");

    public static readonly Fact ChargersOnDischargePort = Fact.Names(
        Kind, "chargers_on_discharge_port", "Chargers that are wired to its discharge terminal and not to its charge terminal; absent for a common port.");

    public static readonly Fact PortsJoined = Fact.YesNo(
        Kind, "ports_joined", "Its charge and its discharge terminal are joined outside it; absent for a common port.");
}
