namespace WireCheck.Facts.Catalogue;

/// <summary>What a vehicle takes from another source through the box.</summary>
public static class CrossFeedFacts
{
    private const string Kind = "vehicle";

    public static readonly Fact Current = Fact.Number(
        Kind, "cross_feed_current", "A", "Current that flows into it from another source, engine off or on, the bank full; absent when none does.");

    public static readonly Fact From = Fact.Names(Kind, "cross_feed_from", "The source that gives it.");

    public static readonly Fact When = Fact.Word(
        Kind, "cross_feed_when", "The state of fewest closed switches in which that happens.");

    public static readonly Fact Loop = Fact.Names(Kind, "cross_feed_loop", "Parts and conductors of that loop.");
}
