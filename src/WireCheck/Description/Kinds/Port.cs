using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>
/// A socket or plug in the wall of the box. Inside wiring ends on one side of its contacts; what is plugged
/// hangs on the other.
/// </summary>
public sealed class Port : Part
{
    public override string Kind => "port";

    /// <summary>Class of contact in the library; null when only <see cref="Rated"/> is known.</summary>
    public Given<string>? Contact { get; init; }

    /// <summary>Most steady current of its contacts.</summary>
    public required Given<ElectricCurrent> Rated { get; init; }

    public required Given<PortDirection> Direction { get; init; }

    public required Given<PortPins> Pins { get; init; }

    /// <summary>Resistance of one pole, plug to socket.</summary>
    public required Given<ElectricResistance> ContactResistance { get; init; }

    /// <summary>Type of plug that fits it.</summary>
    public Given<string>? Mates { get; init; }

    /// <summary>The plug fits one way only, and no other kind of port.</summary>
    public Given<bool>? Keyed { get; init; }

    public Given<bool>? Cap { get; init; }

    public override IReadOnlyList<string> Terminals => ["+", "-"];

    internal static Port Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        Contact = r.OptionalWord("contact", WordTable.PortContact),
        Rated = r.Required<ElectricCurrent>("rated", example: "15 A"),
        Direction = r.Required<PortDirection>("direction"),
        Pins = r.Required<PortPins>("pins"),
        ContactResistance = r.Required<ElectricResistance>("contact_resistance", example: "3 mΩ"),
        Mates = r.Optional<string>("mates"),
        Keyed = r.Optional<bool>("keyed"),
        Cap = r.Optional<bool>("cap"),
    };
}

/// <summary>Which way power goes through a port.</summary>
public enum PortDirection
{
    Out,
    In,
    Both,
}

/// <summary>Whether a finger or a key can touch the pins.</summary>
public enum PortPins
{
    Shrouded,
    Touchable,
}
