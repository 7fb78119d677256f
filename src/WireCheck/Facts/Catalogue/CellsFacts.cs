namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about a bank of cells. Its link bars are in <see cref="BarFacts"/>.</summary>
public static class CellsFacts
{
    private const string Kind = "cells";

    public static readonly Fact Series = Fact.Number(Kind, "series", "", "Groups in series.");

    public static readonly Fact Parallel = Fact.Number(Kind, "parallel", "", "Cells side by side in each group.");

    public static readonly Fact Balanced = Fact.YesNo(
        Kind, "balanced", "Whether the cells were brought to one state of charge before they were joined; absent when it is not described.");

    public static readonly Fact Spread = Fact.Number(
        Kind, "spread", "", "Spread of measured capacity between its cells; absent when it is not described.");

    public static readonly Fact LevellingTime = Fact.Number(
        Kind, "levelling_time", "s", "Time the BMS takes to level cells a tenth of their charge apart with its balance current; absent where that is not known.");

    public static readonly Fact NominalVoltage = Fact.Number(
        Kind, "nominal_voltage", "V", "The chemistry's nominal cell voltage times the groups in series.");

    public static readonly Fact ChargeCurrent = Fact.Worst(
        Kind, "charge_current", "A", "Largest steady charge current of one cell, all chargers of a mode counted together.");

    public static readonly Fact ChargeLimit = Fact.Number(
        Kind, "charge_limit", "A", "Largest charge current that one cell allows.");

    public static readonly Fact DischargeCurrent = Fact.Worst(
        Kind, "discharge_current", "A", "Largest steady discharge current of one cell.");

    public static readonly Fact DischargeLimit = Fact.Number(
        Kind, "discharge_limit", "A", "Largest continuous discharge current that one cell allows.");

    public static readonly Fact BankChargeCurrent = Fact.Worst(
        Kind, "bank_charge_current", "A", "Largest steady charge current into the whole bank.");

    public static readonly Fact BmsChargeLimit = Fact.Number(
        Kind, "bms_charge_limit", "A", "Continuous charge current of the BMS the bank stands behind.");

    public static readonly Fact BmsDischargePerCell = Fact.Number(
        Kind, "bms_discharge_per_cell", "A", "Continuous discharge current that the bank's BMS lets pass, or the first fuses on all ways from the bank together where that is less, divided by the cells in parallel.");

    public static readonly Fact ShareWorst = Fact.Worst(
        Kind, "share_worst", "", "Largest current of a cell, or of this whole string among strings joined in parallel, over the mean of those beside it, at the state's largest discharge current; 1 is even.");

    public static readonly Fact StringCount = Fact.Number(
        Kind, "string_count", "", "Banks of the same series count joined in parallel with it, contacts counted as closed; itself included.");

    public static readonly Fact UnfusedBeside = Fact.Names(
        Kind, "unfused_beside", "Ids of those other banks that can feed a fault in this one through a loop without any fuse or breaker.");

    public static readonly Fact ShareWhere = Fact.Word(
        Kind, "share_where", "Which cell or string carries that largest share, in words.");
}
