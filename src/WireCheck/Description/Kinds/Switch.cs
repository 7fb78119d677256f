using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>A switch worked by hand.</summary>
public sealed class Switch : Part
{
    public override string Kind => "switch";

    /// <summary>Rocker, toggle, push button, isolator.</summary>
    public Given<string>? Style { get; init; }

    /// <summary>Number of poles, 1 or 2. Terminals 1 and 2 are the first pole, 3 and 4 the second.</summary>
    public required Given<int> Poles { get; init; }

    public required SwitchContact Contact { get; init; }

    /// <summary>What it can open on direct current; null when the maker gives none.</summary>
    public BreakRating? Break { get; init; }

    public required Given<ElectricResistance> ContactResistance { get; init; }

    public Given<bool>? Momentary { get; init; }

    /// <summary>Can be worked from outside without tools.</summary>
    public Given<bool>? Reachable { get; init; }

    /// <summary>A lamp between terminal 2 and <c>lamp-</c>; null when it has none.</summary>
    public Lamp? Lamp { get; init; }

    public override IReadOnlyList<string> Terminals =>
    [
        "1", "2",
        .. Poles.Value > 1 ? new[] { "3", "4" } : [],
        .. Lamp is not null ? new[] { "lamp-" } : [],
    ];

    internal static Switch Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        Style = r.Optional<string>("style"),
        Poles = r.OrAssumed("poles", 1, new Bounds(1, true, 2)),
        Contact = r.Map("contact", SwitchContact.Read),
        Break = r.OptionalMap("break", BreakRating.Read),
        ContactResistance = r.Required<ElectricResistance>("contact_resistance", example: "10 mΩ"),
        Momentary = r.Optional<bool>("momentary"),
        Reachable = r.Optional<bool>("reachable"),
        Lamp = r.OptionalMap("lamp", Lamp.Read),
    };
}

/// <summary>Rating of a switch's contact.</summary>
public sealed class SwitchContact
{
    /// <summary>Most continuous current.</summary>
    public required Given<ElectricCurrent> Amps { get; init; }

    /// <summary>The voltage that current is printed for.</summary>
    public required Given<ElectricPotential> Volts { get; init; }

    /// <summary>The print names alternating current only.</summary>
    public Given<bool>? AcOnly { get; init; }

    internal static SwitchContact Read(MapReader r) => new()
    {
        Amps = r.Required<ElectricCurrent>("amps", example: "20 A"),
        Volts = r.Required<ElectricPotential>("volts", example: "16 V"),
        AcOnly = r.Optional<bool>("ac_only"),
    };
}

/// <summary>What a contact can open on direct current.</summary>
public sealed class BreakRating
{
    public required Given<ElectricPotential> Volts { get; init; }

    public required Given<ElectricCurrent> Amps { get; init; }

    internal static BreakRating Read(MapReader r) => new()
    {
        Volts = r.Required<ElectricPotential>("volts", example: "16 V"),
        Amps = r.Required<ElectricCurrent>("amps", example: "20 A"),
    };
}

/// <summary>A pilot lamp, solved as the resistance that its voltage and current make.</summary>
public sealed class Lamp
{
    public required Given<ElectricPotential> Voltage { get; init; }

    public required Given<ElectricCurrent> Current { get; init; }

    internal static Lamp Read(MapReader r) => new()
    {
        Voltage = r.Required<ElectricPotential>("voltage", example: "12 V"),
        Current = r.Required<ElectricCurrent>("current", example: "10 mA"),
    };
}
