using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>A DC-DC converter or USB supply.</summary>
public sealed class Converter : Part
{
    public override string Kind => "converter";

    /// <summary>Rated output power.</summary>
    public required Given<Power> Power { get; init; }

    /// <summary>Output over input power, without idle consumption; above 0, at most 1.</summary>
    public required Given<Ratio> Efficiency { get; init; }

    /// <summary>Input current when on without load.</summary>
    public required Given<ElectricCurrent> Idle { get; init; }

    /// <summary>Input current when switched off or below its cut-off; null means none.</summary>
    public Given<ElectricCurrent>? OffLeakage { get; init; }

    /// <summary>Input voltages it accepts.</summary>
    public required Given<Range<ElectricPotential>> Window { get; init; }

    /// <summary>Input voltage below which it stops; null means the bottom of the window.</summary>
    public Given<ElectricPotential>? CutOff { get; init; }

    public required Given<ElectricPotential> Output { get; init; }

    /// <summary>Most output current; null means power over output voltage.</summary>
    public Given<ElectricCurrent>? OutputLimit { get; init; }

    public Given<ElectricCapacitance>? InputCapacitance { get; init; }

    public Given<ElectricResistance>? InputEsr { get; init; }

    /// <summary>Inrush current where the maker limits it.</summary>
    public Given<ElectricCurrent>? InrushLimit { get; init; }

    /// <summary>Whether in- and out- are joined inside.</summary>
    public required Given<ConverterNegative> Negative { get; init; }

    /// <summary>Resistance between in- and out- of a common negative; null means 1 mΩ.</summary>
    public Given<ElectricResistance>? NegativeResistance { get; init; }

    /// <summary>Id of the switch or relay that turns it on without a drawn enable wire; null when none.</summary>
    public Given<string>? EnabledBy { get; init; }

    public Given<PartPlace>? Place { get; init; }

    /// <summary>Part of its losses that stays in the box; null means all of them.</summary>
    public Given<Ratio>? Heat { get; init; }

    public override IReadOnlyList<string> Terminals => ["in+", "in-", "out+", "out-", "enable"];

    internal static Converter Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        Power = r.Required<Power>("power"),
        Efficiency = r.Required<Ratio>("efficiency", Bounds.Share, example: "88 %"),
        Idle = r.Required<ElectricCurrent>("idle", Bounds.ZeroOrMore, example: "10 mA"),
        OffLeakage = r.Optional<ElectricCurrent>("off_leakage", Bounds.ZeroOrMore),
        Window = r.Required<Range<ElectricPotential>>("window"),
        CutOff = r.Optional<ElectricPotential>("cut_off"),
        Output = r.Required<ElectricPotential>("output", example: "5 V"),
        OutputLimit = r.Optional<ElectricCurrent>("output_limit"),
        InputCapacitance = r.Optional<ElectricCapacitance>("input_capacitance", Bounds.ZeroOrMore),
        InputEsr = r.Optional<ElectricResistance>("input_esr", Bounds.ZeroOrMore),
        InrushLimit = r.Optional<ElectricCurrent>("inrush_limit"),
        Negative = r.Required<ConverterNegative>("negative"),
        NegativeResistance = r.Optional<ElectricResistance>("negative_resistance"),
        EnabledBy = r.PartId("enabled_by", "switch", "relay"),
        Place = r.Optional<PartPlace>("place"),
        Heat = r.Optional<Ratio>("heat", Bounds.ShareOrNone),
    };
}

/// <summary>How the negatives of a converter are related.</summary>
public enum ConverterNegative
{
    Common,
    Isolated,
}

/// <summary>Where a part sits.</summary>
public enum PartPlace
{
    Inside,
    Outside,
}
