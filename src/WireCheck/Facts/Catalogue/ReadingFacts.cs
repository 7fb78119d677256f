namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about a reading of the bench: a voltage between two terminals or a current through a part.</summary>
public static class ReadingFacts
{
    /// <summary>The kind under which rules judge readings.</summary>
    public const string Kind = "reading";

    public static readonly Fact Mode = Fact.Word(Kind, "mode", "The mode it was taken in.");

    public static readonly Fact Where = Fact.Word(Kind, "where", "Where it was taken, in words.");

    public static readonly Fact AtRest = Fact.YesNo(Kind, "at_rest", "Its mode is one with every switch open.");

    public static readonly Fact Volts = Fact.Number(Kind, "volts", "V", "What a voltmeter read, without its sign; absent for a current.");

    public static readonly Fact VoltsLow = Fact.Number(
        Kind, "volts_low", "V", "Lowest voltage that the prediction allows over all corners, less what a meter may be off.");

    public static readonly Fact VoltsHigh = Fact.Number(Kind, "volts_high", "V", "Highest voltage that the prediction allows, and what a meter may be off.");

    public static readonly Fact Amps = Fact.Number(Kind, "amps", "A", "What an ammeter read, without its sign; absent for a voltage.");

    public static readonly Fact AmpsLow = Fact.Number(
        Kind, "amps_low", "A", "Lowest current that the prediction allows over all corners, less what a meter may be off.");

    public static readonly Fact AmpsHigh = Fact.Number(Kind, "amps_high", "A", "Highest current that the prediction allows, and what a meter may be off.");

    public static readonly Fact Reversed = Fact.YesNo(
        Kind, "reversed", "A voltage was written below zero where the first terminal stands above the second at every corner.");

    public static readonly Fact Missing = Fact.YesNo(
        Kind, "missing", "A voltage is less than half of the lowest that fits, where that is one of a live pair; absent for a current.");

    public static readonly Fact MayBeOpen = Fact.Names(
        Kind, "may_be_open", "Fuses, switches and relays on the way from the bank to where a voltage is missing.");

    public static readonly Fact Tapers = Fact.YesNo(
        Kind, "tapers", "A current is below its band on the way of a charger that gives power, which gives less and less near the end of the charge.");

    public static readonly Fact Suspect = Fact.Word(
        Kind, "suspect", "The joint or contact on the way that explains a voltage above its band with the least excuse; absent when none does.");

    public static readonly Fact SuspectExpected = Fact.Number(Kind, "suspect_expected", "Ω", "Resistance of that joint when aged.");

    public static readonly Fact SuspectNeeded = Fact.Number(Kind, "suspect_needed", "Ω", "Resistance at which that joint alone would give the reading.");

    public static readonly Fact OtherSuspects = Fact.Names(Kind, "other_suspects", "The next joints that would explain it, the likeliest first.");

    public static readonly Fact Consumer = Fact.Word(
        Kind, "consumer", "The consumer whose draw is nearest to what a current is off by; absent when none is near.");

    public static readonly Fact ConsumerAmps = Fact.Number(Kind, "consumer_amps", "A", "What that consumer draws by its description.");

    public static readonly Fact ConsumerDraws = Fact.YesNo(
        Kind, "consumer_draws", "It would have to draw beyond the prediction; no when it would have to be dead.");

    public static readonly Fact ConsumerPredicted = Fact.YesNo(Kind, "consumer_predicted", "The prediction counts it already.");
}
