namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about a battery management system.</summary>
public static class BmsFacts
{
    private const string Kind = "bms";

    public static readonly Fact CellCount = Fact.Number(Kind, "cell_count", "", "Cells in series it is made for.");

    public static readonly Fact BankSeries = Fact.Number(
        Kind, "bank_series", "", "Cells in series of the bank it is wired to.");

    public static readonly Fact Current = Fact.Worst(
        Kind, "current", "A", "Largest steady discharge current through it.");

    public static readonly Fact Continuous = Fact.Number(Kind, "continuous", "A", "Continuous discharge current it is rated for.");

    public static readonly Fact SurgeCurrent = Fact.Worst(
        Kind, "surge_current", "A", "Largest discharge current through it while one load surges; the steady current where no load does.");

    public static readonly Fact SurgeTime = Fact.Number(
        Kind, "surge_time", "s", "How long the surge behind surge_current lasts; 0 where no load surges.");

    public static readonly Fact TripCurrent = Fact.Number(Kind, "trip_current", "A", "Discharge current at which it opens.");

    public static readonly Fact TripAfter = Fact.Number(Kind, "trip_after", "s", "How long it waits at that current.");

    public static readonly Fact ChargeCurrent = Fact.Worst(
        Kind, "charge_current", "A", "Largest steady charge current through it.");

    public static readonly Fact ChargeContinuous = Fact.Number(
        Kind, "charge_continuous", "A", "Continuous charge current it is rated for.");

    public static readonly Fact ReliedOnFor = Fact.Names(
        Kind, "relied_on_for", "Feeds in which a bolted short would flow above their ampacity with no fuse or breaker that ends it, and only this BMS would trip; those between the bank and its first fuse are left out.");
}
