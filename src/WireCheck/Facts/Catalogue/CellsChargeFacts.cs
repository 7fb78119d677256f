namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about charging a bank in the cold, and about joining strings in parallel.</summary>
public static class CellsChargeFacts
{
    private const string Kind = "cells";

    public static readonly Fact Coldest = Fact.Number(
        Kind, "coldest", "°C", "The coldest its cells get: the cold end of the ambient, or what a heater keeps.");

    public static readonly Fact ChargeColdest = Fact.Number(Kind, "charge_coldest", "°C", "The coldest at which its cells may be charged.");

    public static readonly Fact ColdUngatedSources = Fact.Names(
        Kind, "cold_ungated_sources", "Sources that go on charging it below that temperature; absent when nothing charges it.");

    public static readonly Fact ColdUndecidedSources = Fact.Names(
        Kind, "cold_undecided_sources", "Sources that its BMS would stop if its probe sat on a cell, which the description does not say.");

    public static readonly Fact ColdGate = Fact.Word(
        Kind, "cold_gate", "What is wrong with the gate: no-bms, no-cut-off, too-cold, loose, no-probe, bypassed or unknown; absent when every source is gated.");

    public static readonly Fact JoinedWith = Fact.Names(Kind, "joined_with", "Other strings it is joined to in parallel.");

    public static readonly Fact JoinDifference = Fact.Number(
        Kind, "join_difference", "V", "Largest difference between its voltage and that of one of those strings when they were joined; absent when it is not described.");

    public static readonly Fact JoinCurrent = Fact.Number(Kind, "join_current", "A", "Largest current through it at that moment.");

    public static readonly Fact JoinUndecided = Fact.YesNo(
        Kind, "join_undecided", "The voltage at joining is described for some of those strings and not for others.");

    public static readonly Fact JoinWorstCurrent = Fact.Number(
        Kind, "join_worst_current", "A", "Current if it were joined full to strings in their last tenth.");

    public static readonly Fact GroupCapacitySpread = Fact.Number(
        Kind, "group_capacity_spread", "", "Largest less smallest measured capacity among the cells side by side in one group, over their mean; absent when they are not measured.");

    public static readonly Fact GroupResistanceSpread = Fact.Number(
        Kind, "group_resistance_spread", "", "The same of their measured resistance.");
}

/// <summary>Facts about a BMS while it charges.</summary>
public static class BmsChargeFacts
{
    private const string Kind = "bms";

    public static readonly Fact RecloseOnCharge = Fact.YesNo(
        Kind, "recloses_on_charge", "After an under-voltage trip its discharge side closes by itself when a charger comes; absent when it is not said.");

    public static readonly Fact BodyDiodePower = Fact.Worst(
        Kind, "body_diode_power", "W", "Heat in it when the charge current passes the body diode of its open discharge side; absent for a separate charge port.");

    public static readonly Fact WakeSources = Fact.Names(
        Kind, "wake_sources", "Sources that reach it after it has cut off at low charge, every relay at rest that the bank held, and start without a battery; absent when nothing charges the box.");

    public static readonly Fact WakeUndecided = Fact.Names(
        Kind, "wake_undecided", "Sources that reach it then; whether they start without a battery is not said.");

    public static readonly Fact WakeNeedBattery = Fact.Names(Kind, "wake_need_battery", "Sources that reach it then but start with a battery only.");

    public static readonly Fact WakeOutOfReach = Fact.Names(
        Kind, "wake_out_of_reach", "Sources that charge while it conducts and do not reach it then, with all switches open or closed.");
}

/// <summary>Facts about a diode in the way of a charge.</summary>
public static class DiodeChargeFacts
{
    private const string Kind = "diode";

    public static readonly Fact ChargeCurrent = Fact.Worst(
        Kind, "charge_current", "A", "Largest charge current through it; absent when no charge passes it.");

    public static readonly Fact ChargePower = Fact.Worst(Kind, "charge_power", "W", "Heat in it at that current.");

    public static readonly Fact ChargeDrop = Fact.Worst(Kind, "charge_drop", "V", "Largest drop across it while charging.");

    public static readonly Fact SourceVoltagePerCell = Fact.Number(
        Kind, "source_voltage_per_cell", "V", "Voltage of the source behind end_cell_voltage over the cells in series.");
}
