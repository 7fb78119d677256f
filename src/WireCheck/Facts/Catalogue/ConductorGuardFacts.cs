namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about one leg of wire: which fuses and sources stand at its ends.</summary>
public static class ConductorGuardFacts
{
    private const string Kind = "conductor";

    public static readonly Fact ProtectionRating = Fact.Number(
        Kind,
        "protection_rating",
        "A",
        "Largest rating of a fuse or breaker that may be all that limits its current: for a feed, over the sources that reach it, the smallest rating on the way; "
        + "for a return, over the consumers and ports whose current comes back through it, the smallest rating on their feed. Absent when a source reaches it with none.");

    public static readonly Fact ProtectedTogether = Fact.Names(
        Kind, "protected_together", "Fuses and breakers that together let that current back through a return which several consumers share; absent when one alone decides.");

    public static readonly Fact ProtectionId = Fact.Word(Kind, "protection_id", "Id of that fuse or breaker.");

    public static readonly Fact UnprotectedCurrent = Fact.Number(
        Kind,
        "unprotected_current",
        "A",
        "Largest current that a source reaching it with no fuse or breaker between can drive through it into a short at its far end; 0 when there is no such source. A charger drives its current limit.");

    public static readonly Fact UnprotectedSource = Fact.Word(
        Kind, "unprotected_source", "Id of that source; absent when there is none.");

    public static readonly Fact SecondSource = Fact.Word(
        Kind,
        "second_source",
        "Id of another source that feeds it from the other end, behind a fuse, while unprotected_source has none; both can drive more than its ampacity. Absent when there is none.");

    public static readonly Fact SecondSourceFuse = Fact.Word(Kind, "second_source_fuse", "Id of the fuse or breaker of that other source.");

    public static readonly Fact UnfusedReach = Fact.Number(
        Kind, "unfused_reach", "m", "Length of wire from unprotected_source to the far end of this conductor with no fuse between; present with second_source.");

    public static readonly Fact FuseFollows = Fact.YesNo(
        Kind, "fuse_follows", "Going on through it from that source, at least one way comes to a fuse or breaker: it is the stretch before the first fuse. No when it leads only to consumers.");

    public static readonly Fact LeavesBank = Fact.YesNo(
        Kind, "leaves_bank", "It starts at the positive terminal of a bank, or at the outgoing terminal of a high-side BMS that does.");

    public static readonly Fact BankLeft = Fact.Word(Kind, "bank_left", "Id of that bank; absent when it leaves none.");

    public static readonly Fact BankFused = Fact.YesNo(
        Kind, "bank_fused", "At least one way from that bank's positive comes to a fuse or breaker.");

    public static readonly Fact DistanceToFuse = Fact.Number(
        Kind, "distance_to_fuse", "m", "Longest way along conductors from the bank's positive through this one to the first fuse or breaker; absent when none follows.");

    public static readonly Fact BareDistanceToFuse = Fact.Number(
        Kind, "bare_distance_to_fuse", "m", "The same over the ways on which some conductor has no sleeve; absent when all are sleeved.");

    public static readonly Fact BareFirstFuse = Fact.Word(
        Kind, "bare_first_fuse", "Id of the fuse or breaker at the end of that way.");

    public static readonly Fact FirstFuse = Fact.Word(
        Kind, "first_fuse", "Id of the fuse or breaker at the end of that way; absent when none follows.");

    public static readonly Fact CurrentWithReturnLost = Fact.Worst(
        Kind,
        "current_with_return_lost",
        "A",
        "Largest steady current it carries when any one other return conductor has come off; for returns only.");

    public static readonly Fact ReturnLost = Fact.Word(
        Kind, "return_lost", "Id of the return conductor whose loss gives that current.");
}
