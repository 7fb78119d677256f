using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>A current-measuring resistor in the negative, terminals <c>battery</c> and <c>load</c>.</summary>
public sealed class Shunt : Part
{
    public override string Kind => "shunt";

    public required Given<ElectricCurrent> Rated { get; init; }

    /// <summary>Voltage across it at rated current.</summary>
    public required Given<ElectricPotential> Drop { get; init; }

    public override IReadOnlyList<string> Terminals => ["battery", "load"];

    internal static Shunt Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        Rated = r.Required<ElectricCurrent>("rated", example: "100 A"),
        Drop = r.Required<ElectricPotential>("drop", example: "75 mV"),
    };
}
