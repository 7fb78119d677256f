using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>A relay or contactor: a coil that works a contact.</summary>
public sealed class Relay : Part
{
    public override string Kind => "relay";

    public required Given<RelayForm> Form { get; init; }

    public required RelayCoil Coil { get; init; }

    public required RelayContact Contact { get; init; }

    /// <summary>The contact may carry current in one direction only, from 30 to 87.</summary>
    public Given<bool>? Polarised { get; init; }

    /// <summary>Keeps its position without coil current.</summary>
    public Given<bool>? Latching { get; init; }

    public override IReadOnlyList<string> Terminals =>
        Form.Value == RelayForm.ChangeOver ? ["85", "86", "30", "87", "87a"] : ["85", "86", "30", "87"];

    internal static Relay Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        Form = r.Required<RelayForm>("form"),
        Coil = r.Map("coil", RelayCoil.Read),
        Contact = r.Map("contact", RelayContact.Read),
        Polarised = r.Optional<bool>("polarised"),
        Latching = r.Optional<bool>("latching"),
    };
}

/// <summary>Normally open, or change-over with a second throw 87a that is closed at rest.</summary>
public enum RelayForm
{
    NormallyOpen,
    ChangeOver,
}

/// <summary>The coil between 86 (plus) and 85 (minus). Voltages are for a coil at 20 °C.</summary>
public sealed class RelayCoil
{
    /// <summary>Nominal voltage.</summary>
    public required Given<ElectricPotential> Voltage { get; init; }

    /// <summary>Resistance at 20 °C.</summary>
    public required Given<ElectricResistance> Resistance { get; init; }

    /// <summary>Closes at or above this voltage (must operate).</summary>
    public required Given<ElectricPotential> Operate { get; init; }

    /// <summary>Opens at or below this voltage (must release).</summary>
    public required Given<ElectricPotential> Release { get; init; }

    /// <summary>Highest continuous voltage.</summary>
    public required Given<ElectricPotential> Max { get; init; }

    public Given<CoilSuppression>? Suppression { get; init; }

    public Economiser? Economiser { get; init; }

    internal static RelayCoil Read(MapReader r) => new()
    {
        Voltage = r.Required<ElectricPotential>("voltage", example: "12 V"),
        Resistance = r.Required<ElectricResistance>("resistance"),
        Operate = r.Required<ElectricPotential>("operate", example: "7.8 V"),
        Release = r.Required<ElectricPotential>("release", example: "1.2 V"),
        Max = r.Required<ElectricPotential>("max", example: "15.6 V"),
        Suppression = r.Optional<CoilSuppression>("suppression"),
        Economiser = r.OptionalMap("economiser", Economiser.Read),
    };
}

/// <summary>What takes the coil's kick when it is switched off.</summary>
public enum CoilSuppression
{
    None,
    Diode,
    Resistor,
    Zener,
}

/// <summary>Electronics that pull in hard and hold with little.</summary>
public sealed class Economiser
{
    public required Given<ElectricCurrent> PullInCurrent { get; init; }

    public required Given<Duration> For { get; init; }

    public required Given<ElectricCurrent> HoldCurrent { get; init; }

    internal static Economiser Read(MapReader r) => new()
    {
        PullInCurrent = r.Required<ElectricCurrent>("pull_in_current", example: "1.9 A"),
        For = r.Required<Duration>("for", example: "100 ms"),
        HoldCurrent = r.Required<ElectricCurrent>("hold_current", example: "0.1 A"),
    };
}

/// <summary>Ratings of the contact.</summary>
public sealed class RelayContact
{
    /// <summary>Most continuous current of 30 to 87.</summary>
    public required Given<ElectricCurrent> Carry { get; init; }

    /// <summary>Most continuous current of 30 to 87a; null means the same as <see cref="Carry"/>.</summary>
    public Given<ElectricCurrent>? CarryClosedAtRest { get; init; }

    /// <summary>Most current it may close onto; null when the maker gives none.</summary>
    public Given<ElectricCurrent>? Make { get; init; }

    /// <summary>Highest direct voltage of the contact.</summary>
    public required Given<ElectricPotential> Volts { get; init; }

    public BreakRating? Break { get; init; }

    public required Given<ElectricResistance> Resistance { get; init; }

    internal static RelayContact Read(MapReader r) => new()
    {
        Carry = r.Required<ElectricCurrent>("carry", example: "40 A"),
        CarryClosedAtRest = r.Optional<ElectricCurrent>("carry_closed_at_rest"),
        Make = r.Optional<ElectricCurrent>("make"),
        Volts = r.Required<ElectricPotential>("volts", example: "16 V"),
        Break = r.OptionalMap("break", BreakRating.Read),
        Resistance = r.Required<ElectricResistance>("resistance", example: "2 mΩ"),
    };
}
