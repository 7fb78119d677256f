namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about the voltage a source brings to the cells, against what the cells and their BMS want.</summary>
public sealed class ChargeVoltageFacts : FactGroup
{
    private ChargeVoltageFacts(string kind)
        : base(kind)
    {
        VoltagePerCell = Number("voltage_per_cell", "V", "Highest voltage it can bring, over the cells in series of the bank it charges.");
        FloatPerCell = Number("float_per_cell", "V", "Its float voltage over those cells in series; absent when it has none.");
        CellVoltageLimit = Number("cell_voltage_limit", "V", "Top of the voltage window of those cells.");
        CellNominalVoltage = Number("cell_nominal_voltage", "V", "Nominal voltage of those cells.");
        BmsCellCutOff = Number("bms_cell_cut_off", "V", "Cell voltage at which the bank's BMS ends a charge; absent without a BMS.");
        BalanceFrom = Number("balance_from", "V", "Cell voltage from which the bank's BMS balances; absent when it is not described.");
        EndCellVoltage = Worst("end_cell_voltage", "V", "Lowest voltage of a cell when its charge has fallen to the end current, drops of wire and diodes counted, nothing else stopping it.");
    }

    public Fact VoltagePerCell { get; }

    public Fact FloatPerCell { get; }

    public Fact CellVoltageLimit { get; }

    public Fact CellNominalVoltage { get; }

    public Fact BmsCellCutOff { get; }

    public Fact BalanceFrom { get; }

    public Fact EndCellVoltage { get; }

    public static ChargeVoltageFacts Charger { get; } = new("charger");

    public static ChargeVoltageFacts Vehicle { get; } = new("vehicle");

    public static ChargeVoltageFacts Diode { get; } = new("diode");
}
