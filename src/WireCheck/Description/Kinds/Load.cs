using UnitsNet;
using WireCheck.Description.Reader;
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

    /// <summary>How long it stays on at a stretch, which with its duty tells the cycle; null when not told, and then it heats as though always on.</summary>
    public Given<Duration>? OnFor { get; init; }

    /// <summary>Voltages at its own terminals between which it works.</summary>
    public Given<Range<ElectricPotential>>? Window { get; init; }

    public Given<ElectricCapacitance>? Capacitance { get; init; }

    /// <summary>Current it takes when it is plugged in and doing nothing.</summary>
    public Given<ElectricCurrent>? Standby { get; init; }

    /// <summary>It has a metal housing; null when not said. Matters at an alternating-current outlet.</summary>
    public Given<bool>? Metal { get; init; }

    /// <summary>No when it may be fed either way round, as a motor that is reversed or a lamp; null when not said.</summary>
    public Given<bool>? Polarised { get; init; }

    /// <summary>Its own lead, outside the box.</summary>
    public LoadLead? Lead { get; init; }

    public override IReadOnlyList<string> Terminals => ["+", "-"];

    /// <summary>Steady power in W that it takes at a voltage in V, 0 or more; null when nothing tells it.</summary>
    public double? WattsAt(double volts) =>
        Power?.Value.ToWatts()
        ?? (Current is { } current ? current.Value.Amperes * volts
            : Resistance is { } resistance ? volts * volts / resistance.Value.Ohms
            : null);

    /// <summary>The same load as a plain resistance, of so many Ω above 0.</summary>
    internal Load AsResistance(double ohms) => new()
    {
        Id = Id,
        Position = Position,
        ClassName = ClassName,
        At = At,
        Resistance = new Given<ElectricResistance>(ElectricResistance.FromOhms(ohms), Position, Origin.Written),
        Surge = Surge,
        Duty = Duty,
        OnFor = OnFor,
        Window = Window,
        Capacitance = Capacitance,
        Standby = Standby,
        Metal = Metal,
        Polarised = Polarised,
        Lead = Lead,
    };

    internal static Load Read(MapReader r)
    {
        string? demand = r.OneOfLoad("power", "current", "resistance");
        Given<Power>? power = r.Optional<Power>("power");
        Given<ElectricCurrent>? current = r.Optional<ElectricCurrent>("current");
        Given<ElectricResistance>? resistance = r.Optional<ElectricResistance>("resistance");
        return new Load
        {
            Id = r.Id,
            Position = r.Position,
            ClassName = r.ClassName,
            At = r.PartId("at", "port", "inverter", "converter"),
            Power = demand == "power" ? power : null,
            Current = demand == "current" ? current : null,
            Resistance = demand == "resistance" ? resistance : null,
            Surge = r.OptionalMap("surge", Surge.Read),
            Duty = r.Optional<Ratio>("duty", Bounds.Share),
            OnFor = r.Optional<Duration>("on_for"),
            Window = r.Optional<Range<ElectricPotential>>("window"),
            Capacitance = r.Optional<ElectricCapacitance>("capacitance", Bounds.ZeroOrMore),
            Standby = r.Optional<ElectricCurrent>("standby", Bounds.ZeroOrMore),
            Metal = r.Optional<bool>("metal"),
            Polarised = r.Optional<bool>("polarised"),
            Lead = r.OptionalMap("lead", LoadLead.Read),
        };
    }
}

/// <summary>A load's own two-core lead.</summary>
public sealed class LoadLead
{
    public required Given<ConductorSize> Size { get; init; }

    /// <summary>One way.</summary>
    public required Given<Length> Length { get; init; }

    internal static LoadLead Read(MapReader r) => new()
    {
        Size = r.Required<ConductorSize>("size", example: "16 AWG"),
        Length = r.Required<Length>("length", example: "2 m"),
    };
}
