using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>An inverter: direct current in, mains voltage out.</summary>
public sealed class Inverter : Part
{
    public override string Kind => "inverter";

    /// <summary>Rated output power.</summary>
    public required Given<Power> Power { get; init; }

    public required Given<Ratio> Efficiency { get; init; }

    /// <summary>Input current when on without load.</summary>
    public required Given<ElectricCurrent> Idle { get; init; }

    public Given<ElectricCurrent>? OffLeakage { get; init; }

    public required Given<Range<ElectricPotential>> Window { get; init; }

    /// <summary>Input voltage below which it stops.</summary>
    public required Given<ElectricPotential> CutOff { get; init; }

    /// <summary>Input voltage at which it sounds its alarm.</summary>
    public Given<ElectricPotential>? Alarm { get; init; }

    /// <summary>Input voltage at which it starts again.</summary>
    public Given<ElectricPotential>? Restart { get; init; }

    public Surge? Surge { get; init; }

    public Given<ElectricCapacitance>? InputCapacitance { get; init; }

    public Given<ElectricResistance>? InputEsr { get; init; }

    public Given<ElectricCurrent>? InrushLimit { get; init; }

    public Given<string>? EnabledBy { get; init; }

    /// <summary>Nominal output voltage.</summary>
    public required Given<ElectricPotential> AcVoltage { get; init; }

    /// <summary>Output isolated from the input; null when unknown.</summary>
    public Given<bool>? Isolated { get; init; }

    public Given<NeutralBond>? Neutral { get; init; }

    public Given<bool>? ResidualCurrentDevice { get; init; }

    /// <summary>Number of outlets.</summary>
    public Given<int>? Outlets { get; init; }

    public Given<ElectricCurrent>? OutletBreaker { get; init; }

    /// <summary>The wire between it and its outlets; null when nothing is said.</summary>
    public OutletWiring? AcWiring { get; init; }

    /// <summary>The outlets can be fed from the wall as well; null when unknown.</summary>
    public Given<bool>? MainsInlet { get; init; }

    /// <summary>What keeps the wall and the inverter apart: both-poles, one-pole, none.</summary>
    public Given<string>? Transfer { get; init; }

    /// <summary>What its earth terminal is joined to: case, earth, vehicle, none.</summary>
    public Given<string>? Earth { get; init; }

    public Given<PartPlace>? Place { get; init; }

    /// <summary>Part of its losses that stays in the box; null means all of them.</summary>
    public Given<Ratio>? Heat { get; init; }

    public override IReadOnlyList<string> Terminals => ["in+", "in-", "enable"];

    internal static Inverter Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        Power = r.Required<Power>("power", example: "500 W"),
        Efficiency = r.Required<Ratio>("efficiency", Bounds.Share, example: "88 %"),
        Idle = r.Required<ElectricCurrent>("idle", Bounds.ZeroOrMore, example: "0.6 A"),
        OffLeakage = r.Optional<ElectricCurrent>("off_leakage", Bounds.ZeroOrMore),
        Window = r.Required<Range<ElectricPotential>>("window"),
        CutOff = r.Required<ElectricPotential>("cut_off", example: "10.2 V"),
        Alarm = r.Optional<ElectricPotential>("alarm"),
        Restart = r.Optional<ElectricPotential>("restart"),
        Surge = r.OptionalMap("surge", Surge.Read),
        InputCapacitance = r.Optional<ElectricCapacitance>("input_capacitance", Bounds.ZeroOrMore),
        InputEsr = r.Optional<ElectricResistance>("input_esr", Bounds.ZeroOrMore),
        InrushLimit = r.Optional<ElectricCurrent>("inrush_limit"),
        EnabledBy = r.PartId("enabled_by", "switch", "relay"),
        AcVoltage = r.Required<ElectricPotential>("ac_voltage", example: "230 V"),
        Isolated = r.Optional<bool>("isolated"),
        Neutral = r.Optional<NeutralBond>("neutral"),
        ResidualCurrentDevice = r.Optional<bool>("residual_current_device"),
        Outlets = r.Optional<int>("outlets", new Bounds(0, true, 100)),
        OutletBreaker = r.Optional<ElectricCurrent>("outlet_breaker"),
        AcWiring = r.OptionalMap("ac_wiring", OutletWiring.Read),
        MainsInlet = r.Optional<bool>("mains_inlet"),
        Transfer = r.OptionalChoice("transfer", "both-poles", "one-pole", "none"),
        Earth = r.OptionalChoice("earth", "case", "earth", "vehicle", "none"),
        Place = r.Optional<PartPlace>("place"),
        Heat = r.Optional<Ratio>("heat", Bounds.ShareOrNone),
    };
}

/// <summary>A short demand above the steady one.</summary>
public sealed class Surge
{
    public required Given<Power> Power { get; init; }

    public required Given<Duration> For { get; init; }

    internal static Surge Read(MapReader r) => new()
    {
        Power = r.Required<Power>("power", example: "130 W"),
        For = r.Required<Duration>("for", example: "300 ms"),
    };
}

/// <summary>The wire from an inverter to its outlets.</summary>
public sealed class OutletWiring
{
    /// <summary>Size of each core; null when not said.</summary>
    public Given<ConductorSize>? Size { get; init; }

    /// <summary>It lies apart from the low-voltage wiring or behind a barrier; null when not said.</summary>
    public Given<bool>? Segregated { get; init; }

    internal static OutletWiring Read(MapReader r) => new()
    {
        Size = r.Optional<ConductorSize>("size"),
        Segregated = r.Optional<bool>("segregated"),
    };
}

/// <summary>Whether the neutral of an inverter is joined to its earth.</summary>
public enum NeutralBond
{
    Floating,
    Bonded,
}
