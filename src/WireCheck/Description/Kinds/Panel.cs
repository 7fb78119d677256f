using UnitsNet;
using WireCheck.Description.Reader;
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

    /// <summary>Part of the open-circuit voltage that it gains for each kelvin below 25 °C; null takes the library's.</summary>
    public Given<Ratio>? OpenCircuitRise { get; init; }

    /// <summary>Current it draws from the battery at night; null when <see cref="DarkCells"/> is given or none.</summary>
    public Given<ElectricCurrent>? DarkLeakage { get; init; }

    /// <summary>The dark panel as a string of diodes, where its data is known.</summary>
    public PanelCells? DarkCells { get; init; }

    public override IReadOnlyList<string> Terminals => ["+", "-"];

    internal static Panel Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        At = r.PartId("at", "port"),
        OpenCircuit = r.Required<ElectricPotential>("open_circuit", example: "21.6 V"),
        MaximumPowerVoltage = r.Required<ElectricPotential>("maximum_power_voltage", example: "18 V"),
        ShortCircuit = r.Required<ElectricCurrent>("short_circuit", example: "6 A"),
        MaximumPowerCurrent = r.Required<ElectricCurrent>("maximum_power_current", example: "5.56 A"),
        OpenCircuitRise = r.Optional<Ratio>("open_circuit_rise", Bounds.ShareOrNone),
        DarkLeakage = r.Optional<ElectricCurrent>("dark_leakage", Bounds.ZeroOrMore),
        DarkCells = PanelCells.ReadWhereGiven(r),
    };
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

    /// <summary>The four keys stand at the panel itself; any of them asks for all.</summary>
    internal static PanelCells? ReadWhereGiven(MapReader r)
    {
        bool given = new[]
        {
            r.Has("cells", typeof(int)), r.Has("ideality", typeof(double)),
            r.Has("dark_saturation", typeof(ElectricCurrent)), r.Has("shunt_resistance", typeof(ElectricResistance)),
        }.Any(has => has);
        return given ? Read(r) : null;
    }

    private static PanelCells Read(MapReader r) => new()
    {
        Cells = r.Required<int>("cells", example: "36"),
        Ideality = r.Required<double>("ideality"),
        DarkSaturation = r.Required<ElectricCurrent>("dark_saturation", Bounds.ZeroOrMore, example: "1 nA"),
        ShuntResistance = r.Required<ElectricResistance>("shunt_resistance", example: "300 Ω"),
    };
}
