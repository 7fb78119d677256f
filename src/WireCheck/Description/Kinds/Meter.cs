using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>A meter fed between + and -, reading a shunt or only its own voltage.</summary>
public sealed class Meter : Part
{
    public override string Kind => "meter";

    /// <summary>Id of the shunt it reads; null when it reads none.</summary>
    public Given<string>? Shunt { get; init; }

    public required Given<ElectricCurrent> Standby { get; init; }

    /// <summary>Voltages between which it works.</summary>
    public Given<Range<ElectricPotential>>? Window { get; init; }

    /// <summary>Smallest current it counts.</summary>
    public Given<ElectricCurrent>? Smallest { get; init; }

    public override IReadOnlyList<string> Terminals => ["+", "-"];

    internal static Meter Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        Shunt = r.PartId("shunt", "shunt"),
        Standby = r.Required<ElectricCurrent>("standby", Bounds.ZeroOrMore, example: "12 mA"),
        Window = r.Optional<Range<ElectricPotential>>("window"),
        Smallest = r.Optional<ElectricCurrent>("smallest", Bounds.ZeroOrMore),
    };
}
