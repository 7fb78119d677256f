using UnitsNet;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>Something that uses power: plugged into a port or outlet, or wired.</summary>
public sealed class Load : Part
{
    public override string Kind => "load";

    /// <summary>Id of the port, inverter or converter it hangs on; null when it is wired by conductors.</summary>
    public Given<string>? At { get; init; }

    /// <summary>Power it takes; exactly one of power, current and resistance is given.</summary>
    public Given<Power>? Power { get; init; }

    public Given<ElectricCurrent>? Current { get; init; }

    public Given<ElectricResistance>? Resistance { get; init; }

    public Surge? Surge { get; init; }

    /// <summary>Part of the time it is on; null means always.</summary>
    public Given<Ratio>? Duty { get; init; }

    /// <summary>Voltages at its own terminals between which it works.</summary>
    public Given<Range<ElectricPotential>>? Window { get; init; }

    public Given<ElectricCapacitance>? Capacitance { get; init; }

    /// <summary>Current it takes when it is plugged in and doing nothing.</summary>
    public Given<ElectricCurrent>? Standby { get; init; }

    /// <summary>Its own lead, outside the box.</summary>
    public LoadLead? Lead { get; init; }

    public override IReadOnlyList<string> Terminals => ["+", "-"];
}

/// <summary>A load's own two-core lead.</summary>
public sealed class LoadLead
{
    public required Given<ConductorSize> Size { get; init; }

    /// <summary>One way.</summary>
    public required Given<Length> Length { get; init; }
}
