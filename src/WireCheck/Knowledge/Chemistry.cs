namespace WireCheck.Knowledge;

/// <summary>What all cells of a chemistry share.</summary>
/// <param name="Name">Name in descriptions, such as <c>lfp</c>.</param>
/// <param name="Title">In words.</param>
/// <param name="Source">Source of the open-circuit voltages.</param>
public sealed record Chemistry(string Name, string Title, Source Source)
{
    /// <summary>Source of the limits of voltage and temperature.</summary>
    public required Source LimitsSource { get; init; }

    /// <summary>Volts of a rested cell at 25 °C, by charge from 0 to 100 %.</summary>
    public required Curve OpenCircuit { get; init; }

    /// <summary>Nominal, lowest and highest voltage of a cell, and the lowest it survives.</summary>
    public required CellVoltages Voltages { get; init; }

    /// <summary>Coldest and hottest cell that may be charged, in °C.</summary>
    public required (double Coldest, double Hottest) Charging { get; init; }

    /// <summary>Coldest and hottest cell that may be discharged, in °C.</summary>
    public required (double Coldest, double Hottest) Discharging { get; init; }

    /// <summary>Resistance over that at 25 °C, by temperature in °C.</summary>
    public required Curve ResistanceByTemperature { get; init; }

    /// <summary>Capacity over that at 25 °C, by temperature in °C.</summary>
    public required Curve CapacityByTemperature { get; init; }

    /// <summary>Direct-current (10 s) resistance over the 1 kHz one.</summary>
    public required double DcOverAc { get; init; }

    /// <summary>Resistance of an aged cell over a fresh one.</summary>
    public required double Aged { get; init; }

    /// <summary>Charge given back over charge put in.</summary>
    public required double CoulombicEfficiency { get; init; }

    /// <summary>Specific heat of a whole cell in J/(kg K).</summary>
    public required double HeatCapacity { get; init; }

    /// <summary>Part lost in a month of 30 days.</summary>
    public required double SelfDischargePerMonth { get; init; }

    /// <summary>Volts of a rested cell at 25 °C.</summary>
    /// <param name="charge">State of charge, 0 to 1; held at the ends beyond.</param>
    public double OpenCircuitVolts(double charge) => OpenCircuit.At(charge * 100);

    /// <summary>State of charge, 0 to 1, of a rested cell; 0 or 1 beyond the ends of the table.</summary>
    public double ChargeAt(double volts) => OpenCircuit.Inverse(volts) / 100;

    internal static NamedTable<Chemistry> Read(TableNode file) => new(file.Children("chemistries").Select(ReadOne));

    private static (string, Chemistry) ReadOne(TableNode node)
    {
        string name = node.Word("chemistry");
        TableNode limits = node.Child("limits");
        TableNode ratios = node.Child("ratios");
        return (name, new Chemistry(name, node.Word("title"), node.Source("source"))
        {
            LimitsSource = node.Source("limits_source"),
            OpenCircuit = node.Curve("open_circuit"),
            Voltages = new CellVoltages(
                limits.Number("nominal"), limits.Number("lowest"), limits.Number("highest"), limits.Number("absolute_lowest")),
            Charging = (limits.Number("charge_coldest"), limits.Number("charge_hottest")),
            Discharging = (limits.Number("discharge_coldest"), limits.Number("discharge_hottest")),
            ResistanceByTemperature = node.Curve("resistance"),
            CapacityByTemperature = node.Curve("capacity"),
            DcOverAc = ratios.Number("dc_over_ac"),
            Aged = ratios.Number("aged"),
            CoulombicEfficiency = ratios.Number("coulombic_efficiency"),
            HeatCapacity = ratios.Number("heat_capacity"),
            SelfDischargePerMonth = node.Number("self_discharge_per_month"),
        });
    }
}

/// <summary>Voltages of one cell in V.</summary>
/// <param name="Nominal">By which packs are named.</param>
/// <param name="Lowest">End of discharge.</param>
/// <param name="Highest">End of charge.</param>
/// <param name="AbsoluteLowest">Below it the cell is harmed for good.</param>
public sealed record CellVoltages(double Nominal, double Lowest, double Highest, double AbsoluteLowest);
