namespace WireCheck.Facts.Catalogue;

/// <summary>
/// Facts about a fuse or a breaker. "Downstream" is away from the source that feeds the most into a fault behind it, along
/// conductors, busbars, contacts, shunts, diodes and ports with the leads of what is plugged, as far as the next fuse or breaker;
/// the walk ends at coils, lamps, resistors of 1 Ω and more, converters, inverters and loads, and leaves out returns.
/// </summary>
public sealed class OvercurrentFacts : FactGroup
{
    private OvercurrentFacts(string kind)
        : base(kind)
    {
        Class = Word("class", "Its class in the library.");
        Style = Word("style", "How its contacts are made: blade, bolted, clip or breaker.");
        Rating = Number("rating", "A", "Rated current.");
        UsableRating = Number("usable_rating", "A", "Rated current times the class's factor at the hottest air inside the box.");
        Current = Worst("current", "A", "Largest steady current it carries.");
        Volts = Number("volts", "V", "Highest direct voltage it may interrupt; that of its holder where that is lower.");
        HighestVoltage = Worst("highest_voltage", "V", "Highest voltage that can stand across it when it has opened.");
        WeakestConductor = Word("weakest_conductor", "Id of the downstream conductor, lead or holder lead of lowest ampacity; conductors side by side between the same two terminals count as one.");
        WeakestIsBefore = YesNo("weakest_is_before", "That conductor lies between the bank and the fuse, on the only way to it: the fuse limits its load, though not a short of it.");
        WeakestSize = Word("weakest_size", "Size of that conductor.");
        WeakestAmpacity = Number("weakest_ampacity", "A", "Ampacity of that conductor, as laid and at the box's inside temperature.");
        NextStandardRating = Number("next_standard_rating", "A", "Smallest standard rating that is not below weakest_ampacity.");
        LargestRatingThatFits = Number("largest_rating_that_fits", "A", "Largest standard rating that is not above weakest_ampacity; absent when there is none.");
        SizeNeeded = Word("size_needed", "Smallest size, in the system of weakest_size, whose ampacity in the same place reaches the rating.");
        HolderRating = Number("holder_rating", "A", "Rated current of its holder; absent when no holder is described.");
        HolderLeadSize = Word("holder_lead_size", "Size of the holder's own leads; absent when it has none.");
        HolderLeadAmpacity = Number("holder_lead_ampacity", "A", "Ampacity of the holder's own leads at the box's inside temperature; absent when it has none.");
    }

    public Fact Class { get; }

    public Fact Style { get; }

    public Fact Rating { get; }

    public Fact UsableRating { get; }

    public Fact Current { get; }

    public Fact Volts { get; }

    public Fact HighestVoltage { get; }

    public Fact WeakestConductor { get; }

    public Fact WeakestIsBefore { get; }

    public Fact WeakestSize { get; }

    public Fact WeakestAmpacity { get; }

    public Fact NextStandardRating { get; }

    public Fact LargestRatingThatFits { get; }

    public Fact SizeNeeded { get; }

    public Fact HolderRating { get; }

    public Fact HolderLeadSize { get; }

    public Fact HolderLeadAmpacity { get; }

    public static OvercurrentFacts Fuse { get; } = new("fuse");

    public static OvercurrentFacts Breaker { get; } = new("breaker");

    /// <summary>The group for <c>fuse</c> or <c>breaker</c>.</summary>
    public static OvercurrentFacts Of(string kind) => kind == Breaker.Kind ? Breaker : Fuse;
}
