using UnitsNet;
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
}
