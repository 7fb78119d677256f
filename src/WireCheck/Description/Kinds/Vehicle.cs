using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>A vehicle's outlet behind its own cable and fuse.</summary>
public sealed class Vehicle : Part
{
    public override string Kind => "vehicle";

    /// <summary>Id of the port it is plugged into; null when it is wired by conductors.</summary>
    public Given<string>? At { get; init; }

    /// <summary>Voltage with the engine off to voltage with it running.</summary>
    public required Given<Range<ElectricPotential>> Voltage { get; init; }

    /// <summary>Resistance of its battery and cable, both poles together.</summary>
    public required Given<ElectricResistance> Resistance { get; init; }

    /// <summary>Rating of its own fuse.</summary>
    public required Given<ElectricCurrent> Fuse { get; init; }

    public override IReadOnlyList<string> Terminals => ["+", "-"];

    internal static Vehicle Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        At = r.PartId("at", "port"),
        Voltage = r.Required<Range<ElectricPotential>>("voltage", example: "12 .. 14.4 V"),
        Resistance = r.Required<ElectricResistance>("resistance", example: "80 mΩ"),
        Fuse = r.Required<ElectricCurrent>("fuse", example: "15 A"),
    };
}
