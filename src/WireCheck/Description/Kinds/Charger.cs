using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>A charger: mains, DC-DC or solar controller.</summary>
public sealed class Charger : Part
{
    public override string Kind => "charger";

    public required Given<ChargerKind> ChargerKind { get; init; }

    /// <summary>Id of the port it is plugged into; null when it is wired by conductors.</summary>
    public Given<string>? At { get; init; }

    /// <summary>Number of cells in series it is set for; null when unknown.</summary>
    public Given<int>? CellCount { get; init; }

    /// <summary>Constant-voltage limit.</summary>
    public required Given<ElectricPotential> Voltage { get; init; }

    public Given<ElectricPotential>? Float { get; init; }

    /// <summary>Constant-current limit.</summary>
    public required Given<ElectricCurrent> Current { get; init; }

    /// <summary>Output over input power; null for a mains charger, whose input is not solved.</summary>
    public Given<Ratio>? Efficiency { get; init; }

    /// <summary>Current it draws from the battery when it is unpowered; null means none.</summary>
    public Given<ElectricCurrent>? ReverseLeakage { get; init; }

    /// <summary>Id of the panel, vehicle, port or inverter that feeds it without drawn conductors.</summary>
    public Given<string>? From { get; init; }

    /// <summary>Highest input voltage.</summary>
    public Given<ElectricPotential>? InputMax { get; init; }

    /// <summary>What its output rises to when no battery is connected.</summary>
    public Given<ElectricPotential>? OutputWithoutBattery { get; init; }

    /// <summary>It gives its voltage with no battery at its output; null when unknown.</summary>
    public Given<bool>? StartsWithoutBattery { get; init; }

    /// <summary>What it draws from the battery to run itself.</summary>
    public Given<ElectricCurrent>? OwnUse { get; init; }

    /// <summary>Lets no current back into its input; null when unknown.</summary>
    public Given<bool>? BlocksReverse { get; init; }

    /// <summary>Temperature below which its own sensor on the cells stops it; null when it has none.</summary>
    public Given<Temperature>? ColdChargeCutoff { get; init; }

    public override IReadOnlyList<string> Terminals => ChargerKind.Value switch
    {
        Kinds.ChargerKind.Solar => ["pv+", "pv-", "out+", "out-"],
        Kinds.ChargerKind.DcDc => ["in+", "in-", "out+", "out-"],
        _ => ["out+", "out-"],
    };

    internal static Charger Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        ChargerKind = r.OrAssumed("kind", Kinds.ChargerKind.CcCv),
        At = r.PartId("at", "port"),
        CellCount = r.Optional<int>("cells"),
        Voltage = r.Required<ElectricPotential>("voltage", example: "14.6 V"),
        Float = r.Optional<ElectricPotential>("float"),
        Current = r.Required<ElectricCurrent>("current", example: "15 A"),
        Efficiency = r.Optional<Ratio>("efficiency", Bounds.Share),
        ReverseLeakage = r.Optional<ElectricCurrent>("reverse_leakage", Bounds.ZeroOrMore),
        From = r.PartId("from", "panel", "vehicle", "port", "inverter"),
        InputMax = r.Optional<ElectricPotential>("input_max"),
        OutputWithoutBattery = r.Optional<ElectricPotential>("output_without_battery", Bounds.ZeroOrMore),
        StartsWithoutBattery = r.Optional<bool>("starts_without_battery"),
        OwnUse = r.Optional<ElectricCurrent>("own_use", Bounds.ZeroOrMore),
        BlocksReverse = r.Optional<bool>("blocks_reverse"),
        ColdChargeCutoff = r.Optional<Temperature>("cold_charge_cutoff"),
    };
}

/// <summary>How a charger works.</summary>
public enum ChargerKind
{
    /// <summary>Constant current, then constant voltage, from the mains.</summary>
    CcCv,
    DcDc,
    Solar,

    /// <summary>A small constant current without a defined end.</summary>
    Trickle,
}
