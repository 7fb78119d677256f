namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about how long the box runs: the modes with a time of their own, day after day, with aged cold cells.</summary>
public static class PackEnergyFacts
{
    private const string Kind = FactCatalogue.PackKind;

    public static readonly Fact LabelEnergy = Fact.Number(
        Kind, "label_energy", "J", "Rated capacity times nominal voltage of all banks; absent when no mode has a time of its own.");

    public static readonly Fact CountedEnergy = Fact.Number(
        Kind, "counted_energy", "J", "What is counted on of it from aged cells at the cold end of the ambient, at the nominal voltage.");

    public static readonly Fact DayDraw = Fact.Number(
        Kind, "day_draw", "J", "What the draws of a day add up to, each by its duty, without what is lost or drawn beside.");

    public static readonly Fact DayLength = Fact.Number(
        Kind, "day_length", "s", "Time that the modes of a day are meant to last together, those left out that do not run even from a full bank; absent when no mode has a time of its own.");

    public static readonly Fact DayMissing = Fact.Number(
        Kind, "day_missing", "s", "Time of it that a full bank of aged cold cells does not serve on the first day; 0 when it lasts.");

    public static readonly Fact DayStoppedIn = Fact.Word(
        Kind, "day_stopped_in", "The mode that stops too soon on the first day; absent when none does.");

    public static readonly Fact DayStoppedBy = Fact.Word(
        Kind, "day_stopped_by", "The part whose cut-off or window then stops it; absent when none does.");

    public static readonly Fact DayStoppedCharge = Fact.Number(
        Kind, "day_stopped_charge", "", "Part of the counted charge that is left then; absent when the day lasts.");

    public static readonly Fact ChargingModes = Fact.Names(
        Kind, "charging_modes", "Described modes in which the bank is charged on the whole; absent when no mode has a time of its own.");

    public static readonly Fact DayShortfall = Fact.Number(
        Kind, "day_shortfall", "", "Part of the counted charge that the second day takes more than it puts back, the rest of the day spent in the first charging mode without a time, else stored; absent when the bank is charged in no mode.");

    public static readonly Fact DayOfStop = Fact.Number(
        Kind, "day_of_stop", "", "The first of seven days on which a mode stops too soon; absent when all last.");
}
