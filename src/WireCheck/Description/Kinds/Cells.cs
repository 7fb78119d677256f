using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>A bank of bare cells: groups in series, cells in parallel in each group.</summary>
public sealed class Cells : Part
{
    public override string Kind => "cells";

    /// <summary>Chemistry in the library, such as <c>lfp</c>.</summary>
    public required Given<string> Chemistry { get; init; }

    /// <summary>Rated capacity of one cell.</summary>
    public required Given<ElectricCharge> Capacity { get; init; }

    /// <summary>Groups in series, 1 or more.</summary>
    public required Given<int> Series { get; init; }

    /// <summary>Cells side by side in each group, 1 or more.</summary>
    public required Given<int> Parallel { get; init; }

    /// <summary>Direct-current (10 s) resistance of one fresh cell at 25 °C.</summary>
    public required Given<ElectricResistance> Resistance { get; init; }

    /// <summary>1 kHz resistance of one cell, for the highest fault current; null to take the chemistry's ratio.</summary>
    public Given<ElectricResistance>? ResistanceAc { get; init; }

    /// <summary>Lowest and highest voltage of one cell.</summary>
    public required Given<Range<ElectricPotential>> Window { get; init; }

    /// <summary>Limits of charging, per cell.</summary>
    public required CellLimit Charge { get; init; }

    /// <summary>Limits of discharging, per cell.</summary>
    public required CellLimit Discharge { get; init; }

    public required Given<ShareRate> SelfDischarge { get; init; }

    /// <summary>The bars between groups; null when <see cref="LinkResistance"/> is given or the bank has one cell.</summary>
    public CellLinks? Links { get; init; }

    /// <summary>Resistance of one link with its two joints, where measured; wins over <see cref="Links"/>.</summary>
    public Given<ElectricResistance>? LinkResistance { get; init; }

    /// <summary>Where the bank's + and - leave a group of parallel cells; null means the same end (the worse one).</summary>
    public Given<TakeOff>? TakeOff { get; init; }

    /// <summary>Cells are held together by plates or bands.</summary>
    public Given<bool>? Clamp { get; init; }

    /// <summary>Insulating sheets stand between neighbours.</summary>
    public Given<bool>? Separators { get; init; }

    /// <summary>The terminals are covered.</summary>
    public Given<bool>? Covered { get; init; }

    /// <summary>The cells were balanced before they were joined.</summary>
    public Given<bool>? Balanced { get; init; }

    /// <summary>Rested voltage of the whole string when it was joined to others in parallel; null when unknown.</summary>
    public Given<ElectricPotential>? JoinedAt { get; init; }

    /// <summary>Temperature at which a heater keeps the cells; null when there is none.</summary>
    public Given<Temperature>? HeatedTo { get; init; }

    /// <summary>Spread of measured capacity between cells.</summary>
    public Given<Ratio>? Spread { get; init; }

    /// <summary>A finished battery with a BMS of its own inside; null means bare cells.</summary>
    public Given<bool>? Packaged { get; init; }

    /// <summary>Most such batteries that the maker allows in series; null when unknown.</summary>
    public Given<int>? MaxSeries { get; init; }

    /// <summary>Measured cells, in order: group 1 first, and column by column in a group.</summary>
    public IReadOnlyList<MeasuredCell> Individual { get; init; } = [];

    /// <summary><c>+</c>, <c>-</c> and the taps <c>t1 … t(n-1)</c>; t_k is the positive terminal of group k.</summary>
    public override IReadOnlyList<string> Terminals =>
        ["+", "-", .. Enumerable.Range(1, Math.Max(0, Series.Value - 1)).Select(k => FormattableString.Invariant($"t{k}"))];

    internal static Cells Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        Chemistry = r.Word("chemistry", WordTable.Chemistry, "lfp"),
        Capacity = r.Required<ElectricCharge>("capacity"),
        Series = r.Required<int>("series"),
        Parallel = r.OrAssumed("parallel", 1),
        Resistance = r.Required<ElectricResistance>("resistance", example: "1 mΩ"),
        ResistanceAc = r.Optional<ElectricResistance>("resistance_ac"),
        Window = r.Required<Range<ElectricPotential>>("window", example: "2.5 .. 3.65 V"),
        Charge = r.Map("charge", CellLimit.Read),
        Discharge = r.Map("discharge", CellLimit.Read),
        SelfDischarge = r.Required<ShareRate>("self_discharge", Bounds.ZeroOrMore),
        Links = r.OptionalMap("links", CellLinks.Read),
        LinkResistance = r.Optional<ElectricResistance>("link_resistance", Bounds.ZeroOrMore),
        TakeOff = r.Optional<TakeOff>("take_off"),
        Clamp = r.Optional<bool>("clamp"),
        Separators = r.Optional<bool>("separators"),
        Covered = r.Optional<bool>("covered"),
        Balanced = r.Optional<bool>("balanced"),
        JoinedAt = r.Optional<ElectricPotential>("joined_at"),
        HeatedTo = r.Optional<Temperature>("heated_to"),
        Spread = r.Optional<Ratio>("spread", Bounds.ShareOrNone),
        Packaged = r.Optional<bool>("packaged"),
        MaxSeries = r.Optional<int>("max_series"),
        Individual = r.List("individual", MeasuredCell.Read),
    };
}

/// <summary>A cell's limit in one direction.</summary>
public sealed class CellLimit
{
    /// <summary>Most current of one cell, continuous.</summary>
    public required Given<ElectricCurrent> Limit { get; init; }

    /// <summary>Cell temperatures between which it is allowed.</summary>
    public required Given<Range<Temperature>> Temperature { get; init; }

    internal static CellLimit Read(MapReader r) => new()
    {
        Limit = r.Required<ElectricCurrent>("limit", example: "50 A"),
        Temperature = r.Required<Range<Temperature>>("temperature"),
    };
}

/// <summary>The bars that join the groups of a bank.</summary>
public sealed class CellLinks
{
    public required Given<Section> Section { get; init; }

    public required Given<Length> Length { get; init; }

    /// <summary>Material in the library; null means copper.</summary>
    public Given<string>? Material { get; init; }

    /// <summary>Resistance of one bolted joint of the link; null takes the library's aged bolted joint.</summary>
    public Given<ElectricResistance>? Joint { get; init; }

    internal static CellLinks Read(MapReader r) => new()
    {
        Section = r.Required<Section>("section"),
        Length = r.Required<Length>("length", example: "70 mm"),
        Material = r.OptionalWord("material", WordTable.Material),
        Joint = r.Optional<ElectricResistance>("joint", Bounds.ZeroOrMore),
    };
}

/// <summary>One cell as its maker or builder measured it; what is null is taken from the bank.</summary>
public sealed class MeasuredCell
{
    public Given<ElectricCharge>? Capacity { get; init; }

    public Given<ElectricResistance>? Resistance { get; init; }

    internal static MeasuredCell Read(MapReader r) => new()
    {
        Capacity = r.Optional<ElectricCharge>("capacity"),
        Resistance = r.Optional<ElectricResistance>("resistance"),
    };
}

/// <summary>Which corner of a parallel bank the positive leaves, the negative leaving at column 1.</summary>
public enum TakeOff
{
    /// <summary>Both at the same end: the first column works hardest.</summary>
    SameEnd,

    /// <summary>Positive and negative at opposite ends.</summary>
    Diagonal,
}
