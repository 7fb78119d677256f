namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about one leg of wire: whether the device that guards it opens before it is hurt.</summary>
public static class CoordinationFacts
{
    private const string Kind = "conductor";

    public static readonly Fact WorstMargin = Fact.Number(
        Kind,
        "worst_margin",
        "",
        "Least ratio, over all currents from its ampacity to the most that can flow, of the time until its insulation is hurt to the time "
        + "in which the fuse or breaker of protection_id, or one before it on every way from the bank, has cleared at its slowest; it starts at its rated temperature. "
        + "0 when none need open at such a current; absent when no such current hurts it.");

    public static readonly Fact WorstMarginCurrent = Fact.Number(Kind, "worst_margin_current", "A", "Current of that margin.");

    public static readonly Fact WorstMarginDamageTime = Fact.Number(
        Kind, "worst_margin_damage_time", "s", "Time until that current hurts its insulation.");

    public static readonly Fact WorstMarginClearingTime = Fact.Number(
        Kind, "worst_margin_clearing_time", "s", "Slowest time in which the first of them clears that current; absent when none need open.");

    public static readonly Fact WorstMarginDevice = Fact.Word(Kind, "worst_margin_device", "Id of the one that clears it first.");

    public static readonly Fact ShortMargin = Fact.Number(
        Kind,
        "short_margin",
        "",
        "The same over the currents of a short circuit only: those that hurt it within 5 s. Absent when so much cannot flow.");

    public static readonly Fact ShortMarginCurrent = Fact.Number(Kind, "short_margin_current", "A", "Current of that margin.");

    public static readonly Fact ShortMarginDamageTime = Fact.Number(
        Kind, "short_margin_damage_time", "s", "Time until that current hurts its insulation.");

    public static readonly Fact ShortMarginClearingTime = Fact.Number(
        Kind, "short_margin_clearing_time", "s", "Slowest time in which the first of them clears that current; absent when none need open.");

    public static readonly Fact ShortMarginDevice = Fact.Word(Kind, "short_margin_device", "Id of the one that clears it first.");
}
