namespace WireCheck.Facts.Catalogue;

/// <summary>
/// Facts about what a source does to the loads when the cells are taken from it while it charges: by the BMS, a fuse, a
/// switch or a relay. Absent where no load can be over its window.
/// </summary>
public sealed class LostBatteryFacts : FactGroup
{
    private LostBatteryFacts(string kind)
        : base(kind)
    {
        Load = Word("without_battery_load", "Id of the consumer that is then furthest above the top of its window; where what the source gives without a battery is not known, of one that stays joined to it.");
        Voltage = Number("without_battery_voltage", "V", "Voltage at that consumer.");
        Limit = Number("without_battery_limit", "V", "Highest voltage that consumer is made for.");
        Opened = Word("without_battery_opened", "Id of what opens between the source and the cells.");
        Unknown = YesNo("without_battery_unknown", "What it gives without a battery is not described, and its kind does not tell.");
    }

    public Fact Load { get; }

    public Fact Voltage { get; }

    public Fact Limit { get; }

    public Fact Opened { get; }

    public Fact Unknown { get; }

    public static LostBatteryFacts Charger { get; } = new("charger");

    public static LostBatteryFacts Panel { get; } = new("panel");

    public static LostBatteryFacts Vehicle { get; } = new("vehicle");
}

/// <summary>Facts about a BMS that no longer opens.</summary>
public static class StuckBmsFacts
{
    private const string Kind = "bms";

    public static readonly Fact OverchargeSource = Fact.Word(
        Kind, "overcharge_source", "Id of the source that would bring the cells behind it highest if it did not open; absent without a source.");

    public static readonly Fact OverchargeVoltage = Fact.Number(
        Kind, "overcharge_voltage", "V", "Voltage at which that source ends by itself.");

    public static readonly Fact OverchargeBypasses = Fact.YesNo(
        Kind, "overcharge_bypasses", "Its current goes round the BMS, which cannot stop it even when sound.");

    public static readonly Fact OverchargeLimit = Fact.Number(
        Kind, "overcharge_limit", "V", "Top of the cells' window times the cells in series.");
}

/// <summary>Facts about a positive conductor that touches the metal of the box; absent for returns, sense leads and in a box that is not of metal.</summary>
public static class CaseTouchFacts
{
    private const string Kind = "conductor";

    public static readonly Fact NearMetal = Fact.YesNo(
        Kind, "near_metal", "It is on the positive side of a box of metal and lies in it, or passes its wall.");

    public static readonly Fact Sleeved = Fact.YesNo(Kind, "sleeved", "It has a sleeve or a conduit over its whole length.");

    public static readonly Fact WallPassage = Fact.Word(
        Kind, "wall_passage", "How it passes the metal wall: grommet, gland or bare; absent where it passes none.");

    public static readonly Fact PassageNotSaid = Fact.YesNo(
        Kind, "passage_not_said", "It is positive and must pass the wall of a metal box, and through_wall is not given; absent where it passes none.");

    public static readonly Fact Current = Fact.Worst(
        Kind, "case_fault_current", "A", "Least current through the fuse that guards it when it touches the bonded case; absent where the case is not bonded or no fuse guards it.");

    public static readonly Fact FuseRating = Fact.Number(Kind, "case_fault_fuse_rating", "A", "Rating of that fuse.");

    public static readonly Fact FuseId = Fact.Word(Kind, "case_fault_fuse", "Id of that fuse.");
}
