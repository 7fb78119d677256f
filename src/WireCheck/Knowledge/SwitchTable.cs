namespace WireCheck.Knowledge;

/// <summary>What a switch feeds, as far as its derating differs.</summary>
public enum SwitchedLoad
{
    Lamp,
    Inductive,
    Resistive,
    Motor,
}

/// <summary>Derating of switches and contacts on direct current.</summary>
public sealed class SwitchTable
{
    private readonly List<(double Volts, Dictionary<SwitchedLoad, double> Factors)> _rows;

    internal SwitchTable(TableNode file)
    {
        TableNode factors = file.Child("load_factors");
        FactorSource = factors.Source("source");
        _rows = [.. factors.Child("rows").Entries.Select(e => (TableNode.NumberOf(e.Key), ReadRow(TableNode.AsMap(e.Value))))];
        HoursFactor = file.Child("contact_hours").Number("factor");
        HoursSource = file.Child("contact_hours").Source("source");
        AlternatingVoltageFactor = file.Child("ac_only").Number("voltage_factor");
        AlternatingSource = file.Child("ac_only").Source("source");
    }

    /// <summary>Highest nominal system voltage for which there are factors, V.</summary>
    public double LastRowVolts => _rows[^1].Volts;

    /// <summary>Source of <see cref="LoadFactor"/>.</summary>
    public Source FactorSource { get; }

    /// <summary>Part of its print that a contact carries for hours in a box.</summary>
    public double HoursFactor { get; }

    public Source HoursSource { get; }

    /// <summary>Direct voltage over the printed alternating one, for a contact that names no direct voltage.</summary>
    public double AlternatingVoltageFactor { get; }

    public Source AlternatingSource { get; }

    /// <summary>
    /// Rating needed over continuous load current, by nominal system voltage; the row at or above it. Null above the
    /// last row, where the source is silent.
    /// </summary>
    public double? LoadFactor(double nominalVolts, SwitchedLoad load)
    {
        foreach ((double volts, Dictionary<SwitchedLoad, double> factors) in _rows)
        {
            if (nominalVolts <= volts)
            {
                return factors[load];
            }
        }

        return null;
    }

    private static Dictionary<SwitchedLoad, double> ReadRow(TableNode row) => new()
    {
        [SwitchedLoad.Lamp] = row.Number("lamp"),
        [SwitchedLoad.Inductive] = row.Number("inductive"),
        [SwitchedLoad.Resistive] = row.Number("resistive"),
        [SwitchedLoad.Motor] = row.Number("motor"),
    };
}
