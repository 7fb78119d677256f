using UnitsNet;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>A solar panel.</summary>
public sealed class Panel : Part
{
    public override string Kind => "panel";

    /// <summary>Id of the port it is plugged into; null when it is wired by conductors.</summary>
    public Given<string>? At { get; init; }

    public required Given<ElectricPotential> OpenCircuit { get; init; }

    public required Given<ElectricPotential> MaximumPowerVoltage { get; init; }

    public required Given<ElectricCurrent> ShortCircuit { get; init; }

    public required Given<ElectricCurrent> MaximumPowerCurrent { get; init; }

    /// <summary>Current it draws from the battery at night; null when <see cref="DarkCells"/> is given or none.</summary>
    public Given<ElectricCurrent>? DarkLeakage { get; init; }

    /// <summary>The dark panel as a string of diodes, where its data is known.</summary>
    public PanelCells? DarkCells { get; init; }

    public override IReadOnlyList<string> Terminals => ["+", "-"];
}

/// <summary>Single-diode data of a panel's cells.</summary>
public sealed class PanelCells
{
    /// <summary>Cells in series.</summary>
    public required Given<int> Cells { get; init; }

    public required Given<double> Ideality { get; init; }

    public required Given<ElectricCurrent> DarkSaturation { get; init; }

    /// <summary>Of the whole panel.</summary>
    public required Given<ElectricResistance> ShuntResistance { get; init; }
}
