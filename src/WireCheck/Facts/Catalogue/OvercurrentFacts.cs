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
        FaultThrough = Word("fault_through", "Id of a relay or diode that takes at least half of that current straight from the positive to the negative pole, because it is wired the wrong way round; absent when none does.");
        Volts = Number("volts", "V", "Highest direct voltage it may interrupt; that of its holder where that is lower.");
        HighestVoltage = Worst("highest_voltage", "V", "Highest voltage that can stand across it when it has opened.");
        WeakestConductor = Word("weakest_conductor", "Id of the downstream conductor, lead or holder lead of lowest ampacity; conductors side by side between the same two terminals count as one.");
        WeakestIsBefore = YesNo("weakest_is_before", "That conductor lies between the bank and the fuse, on the only way to it: the fuse limits its load, though not a short of it.");
        WeakestSize = Word("weakest_size", "Size of that conductor.");
        WeakestAmpacity = Number("weakest_ampacity", "A", "Ampacity of that conductor, as laid and at the box's inside temperature.");
        NextStandardRating = Number("next_standard_rating", "A", "Smallest standard rating that is not below weakest_ampacity.");
        LargestRatingThatFits = Number("largest_rating_that_fits", "A", "Largest standard rating that is not above weakest_ampacity; absent when there is none.");
        NextRating = Number("next_rating", "A", "Smallest rating above its own in which its class is made; absent when there is none.");
        SizeNeeded = Word("size_needed", "Smallest size, in the system of weakest_size, whose ampacity in the same place reaches the rating.");
        AlsoOver = Names("also_over", "Other downstream conductors and leads whose ampacity is below the rating, lowest first, each in words with its size and ampacity.");
        Reset = Word("reset", "How a breaker is closed again: manual or auto; absent for a fuse.");
        InReturn = YesNo("in_return", "It stands in the negative.");
        UnfusedFeed = Word("unfused_feed", "Id of a consumer, coil or port whose current comes back through this device alone and whose feed has no fuse or breaker; absent when every such feed has one, or it does not stand in the negative.");
        Beside = Names("beside", "Ids of other fuses and breakers between the same two ends, joined by wire, bars and joints alone.");
        Marked = Word("marked", "Standard that is marked on it, as described; none when it was looked for and is not there. Absent when the description does not say.");
        OthersMarked = YesNo("others_marked", "Some fuse or breaker of the box is described with its marking.");
        FaultCurrent = Number("highest_fault_current", "A", "Highest current that a bolted short anywhere drives through it; absent when none does.");
        FaultAt = Word("highest_fault_at", "The place of that short.");
        BreakingCapacity = Number("breaking_capacity", "A", "Current it can break at highest_voltage; absent above its voltage.");
        SameClassAbove = Word("same_class_above", "Id of the device of its own class in series above it, of the lowest rating over its own, whose band meets its own over the range of faults behind both and which would darken more; absent when there is none.");
        SameClassRatio = Number("same_class_ratio", "", "Rating of that device over its own.");
        SameClassFrom = Number("same_class_from", "A", "Fault current from which that device may begin to melt before this one has cleared.");
        SameClassDark = Names("same_class_dark", "What goes dark when that device opens too.");
        OtherClassAbove = Word("other_class_above", "The same for devices of another class.");
        OtherClassRatio = Number("other_class_ratio", "", "Rating of that device over its own.");
        OtherClassFrom = Number("other_class_from", "A", "Fault current from which that device may begin to melt before this one has cleared.");
        OtherClassDark = Names("other_class_dark", "What goes dark when that device opens too.");
        HolderRating = Number("holder_rating", "A", "Rated current of its holder; absent when no holder is described.");
        HolderLeadSize = Word("holder_lead_size", "Size of the holder's own leads; absent when it has none.");
        HolderLeadAmpacity = Number("holder_lead_ampacity", "A", "Ampacity of the holder's own leads at the box's inside temperature; absent when it has none.");
    }

    public Fact Class { get; }

    public Fact Style { get; }

    public Fact Rating { get; }

    public Fact UsableRating { get; }

    public Fact Current { get; }

    public Fact FaultThrough { get; }

    public Fact Volts { get; }

    public Fact HighestVoltage { get; }

    public Fact WeakestConductor { get; }

    public Fact WeakestIsBefore { get; }

    public Fact WeakestSize { get; }

    public Fact WeakestAmpacity { get; }

    public Fact NextStandardRating { get; }

    public Fact LargestRatingThatFits { get; }

    public Fact NextRating { get; }

    public Fact SizeNeeded { get; }

    public Fact AlsoOver { get; }

    public Fact Reset { get; }

    public Fact InReturn { get; }

    public Fact UnfusedFeed { get; }

    public Fact Beside { get; }

    public Fact Marked { get; }

    public Fact OthersMarked { get; }

    public Fact FaultCurrent { get; }

    public Fact FaultAt { get; }

    public Fact BreakingCapacity { get; }

    public Fact SameClassAbove { get; }

    public Fact SameClassRatio { get; }

    public Fact SameClassFrom { get; }

    public Fact SameClassDark { get; }

    public Fact OtherClassAbove { get; }

    public Fact OtherClassRatio { get; }

    public Fact OtherClassFrom { get; }

    public Fact OtherClassDark { get; }

    public Fact HolderRating { get; }

    public Fact HolderLeadSize { get; }

    public Fact HolderLeadAmpacity { get; }

    public static OvercurrentFacts Fuse { get; } = new("fuse");

    public static OvercurrentFacts Breaker { get; } = new("breaker");

    /// <summary>The group for <c>fuse</c> or <c>breaker</c>.</summary>
    public static OvercurrentFacts Of(string kind) => kind == Breaker.Kind ? Breaker : Fuse;
}
