using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>A resistor drawn by the builder, such as a precharge resistor.</summary>
public sealed class Resistor : Part
{
    public override string Kind => "resistor";

    public required Given<ElectricResistance> Resistance { get; init; }

    /// <summary>Continuous power rating.</summary>
    public required Given<Power> Power { get; init; }

    /// <summary>Energy of a single pulse it stands; null when the maker gives none.</summary>
    public Given<UnitsNet.Energy>? Pulse { get; init; }

    public override IReadOnlyList<string> Terminals => ["1", "2"];

    internal static Resistor Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        Resistance = r.Required<ElectricResistance>("resistance", example: "22 Ω"),
        Power = r.Required<Power>("power", example: "25 W"),
        Pulse = r.Optional<UnitsNet.Energy>("pulse"),
    };
}
