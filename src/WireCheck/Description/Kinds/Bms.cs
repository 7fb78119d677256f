using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>A battery management system: a switch that watches each cell.</summary>
public sealed class Bms : Part
{
    public override string Kind => "bms";

    /// <summary>The pole it interrupts.</summary>
    public required Given<BmsSide> Side { get; init; }

    /// <summary>One terminal for charge and discharge, or two.</summary>
    public required Given<BmsPort> Port { get; init; }

    /// <summary>Number of cells in series it is made for.</summary>
    public required Given<int> Series { get; init; }

    /// <summary>Most continuous discharge current.</summary>
    public required Given<ElectricCurrent> Continuous { get; init; }

    /// <summary>Most continuous charge current; null means the same as discharge.</summary>
    public Given<ElectricCurrent>? ChargeContinuous { get; init; }

    /// <summary>Over-current trip.</summary>
    public required BmsTrip Trip { get; init; }

    /// <summary>Short-circuit trip; null when the maker gives none.</summary>
    public BmsTrip? ShortCircuit { get; init; }

    /// <summary>Resistance between its terminals when it conducts.</summary>
    public required Given<ElectricResistance> OnResistance { get; init; }

    /// <summary>Resistance of the charge path of a separate-port BMS; null means <see cref="OnResistance"/>.</summary>
    public Given<ElectricResistance>? ChargeOnResistance { get; init; }

    /// <summary>Its own consumption.</summary>
    public required Given<ElectricCurrent> Standby { get; init; }

    /// <summary>Cell voltages at which it opens: discharge below, charge above.</summary>
    public required Given<Range<ElectricPotential>> CellCutoff { get; init; }

    /// <summary>Cell voltages at which it closes again.</summary>
    public Given<Range<ElectricPotential>>? Release { get; init; }

    public Given<Temperature>? ColdChargeCutoff { get; init; }

    public Given<Temperature>? HotChargeCutoff { get; init; }

    /// <summary>Where its temperature probe sits.</summary>
    public Given<ProbePlace>? Probe { get; init; }

    public Given<ElectricCurrent>? BalanceCurrent { get; init; }

    /// <summary>Cell voltage above which it balances.</summary>
    public Given<ElectricPotential>? BalanceFrom { get; init; }

    /// <summary>After an under-voltage trip it closes by itself when a charger comes.</summary>
    public Given<bool>? RecloseOnCharge { get; init; }

    /// <summary>Sense leads told in short, where they are not drawn as conductors.</summary>
    public SenseLeads? Sense { get; init; }

    public override IReadOnlyList<string> Terminals =>
    [
        .. Side.Value == BmsSide.Low ? new[] { "B-", "P-" } : ["B+", "P+"],
        .. Port.Value == BmsPort.Separate ? new[] { Side.Value == BmsSide.Low ? "C-" : "C+" } : [],
        .. Enumerable.Range(0, Math.Max(0, Series.Value) + 1).Select(k => FormattableString.Invariant($"s{k}")),
    ];

    internal static Bms Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        Side = r.Required<BmsSide>("side"),
        Port = r.Required<BmsPort>("port"),
        Series = r.Required<int>("series"),
        Continuous = r.Required<ElectricCurrent>("continuous"),
        ChargeContinuous = r.Optional<ElectricCurrent>("charge_continuous"),
        Trip = r.Map("trip", BmsTrip.Read),
        ShortCircuit = r.OptionalMap("short_circuit", BmsTrip.Read),
        OnResistance = r.Required<ElectricResistance>("on_resistance", example: "1.2 mΩ"),
        ChargeOnResistance = r.Optional<ElectricResistance>("charge_on_resistance"),
        Standby = r.Required<ElectricCurrent>("standby", Bounds.ZeroOrMore, example: "100 µA"),
        CellCutoff = r.Required<Range<ElectricPotential>>("cell_cutoff", example: "2.5 .. 3.75 V"),
        Release = r.Optional<Range<ElectricPotential>>("release"),
        ColdChargeCutoff = r.Optional<Temperature>("cold_charge_cutoff"),
        HotChargeCutoff = r.Optional<Temperature>("hot_charge_cutoff"),
        Probe = r.Optional<ProbePlace>("probe"),
        BalanceCurrent = r.Optional<ElectricCurrent>("balance_current", Bounds.ZeroOrMore),
        BalanceFrom = r.Optional<ElectricPotential>("balance_from"),
        RecloseOnCharge = r.Optional<bool>("recloses_on_charge"),
        Sense = r.OptionalMap("sense", SenseLeads.Read),
    };
}

/// <summary>A current at which the BMS opens, and how long it waits.</summary>
public sealed class BmsTrip
{
    public required Given<ElectricCurrent> Current { get; init; }

    public required Given<Duration> After { get; init; }

    internal static BmsTrip Read(MapReader r) => new()
    {
        Current = r.Required<ElectricCurrent>("current", example: "200 A"),
        After = r.Required<Duration>("after", Bounds.ZeroOrMore, example: "1 s"),
    };
}

/// <summary>The thin leads to the cell taps, told in short.</summary>
public sealed class SenseLeads
{
    public required Given<ConductorSize> Size { get; init; }

    public required Given<Length> Length { get; init; }

    /// <summary>Rating of the fuse at each tap; null when there is none.</summary>
    public Given<ElectricCurrent>? Fuse { get; init; }

    internal static SenseLeads Read(MapReader r) => new()
    {
        Size = r.Required<ConductorSize>("size", example: "24 AWG"),
        Length = r.Required<Length>("length", example: "250 mm"),
        Fuse = r.Optional<ElectricCurrent>("fuse"),
    };
}

/// <summary>The pole a BMS interrupts: low is the negative, high the positive.</summary>
public enum BmsSide
{
    Low,
    High,
}

/// <summary>Whether charge and discharge share a terminal.</summary>
public enum BmsPort
{
    Common,
    Separate,
}

/// <summary>Where a temperature probe sits.</summary>
public enum ProbePlace
{
    Cell,
    Loose,
    None,
}
