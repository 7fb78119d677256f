namespace WireCheck.Facts.Catalogue;

/// <summary>Heat in the joints that belong to a part: the two ends of a conductor, the contacts of a holder, a joint itself.</summary>
public sealed class JointHeatFacts : FactGroup
{
    private JointHeatFacts(string kind)
        : base(kind)
    {
        PushOnPower = Worst("push_on_power", "W", "Most heat in one push-on, clip or blade contact, at the largest steady current; absent when it has none.");
        PushOnWhere = Word("push_on_where", "Which contact that is, in words.");
        BoltedPower = Worst("bolted_power", "W", "Most heat in one bolted, crimped, clamped or soldered joint, at the largest steady current; absent when it has none.");
        BoltedWhere = Word("bolted_where", "Which joint that is, in words.");
        PushOnRise = Number("push_on_rise", "K", "About how much warmer that contact is than its wire, which draws the heat away; absent where it has no wire of its own.");
        BoltedRise = Number("bolted_rise", "K", "The same for that joint.");
    }

    public Fact PushOnPower { get; }

    public Fact PushOnWhere { get; }

    public Fact BoltedPower { get; }

    public Fact BoltedWhere { get; }

    public Fact PushOnRise { get; }

    public Fact BoltedRise { get; }

    public static JointHeatFacts Conductor { get; } = new("conductor");

    public static JointHeatFacts Fuse { get; } = new("fuse");

    public static JointHeatFacts Breaker { get; } = new("breaker");

    public static JointHeatFacts Joint { get; } = new("joint");
}
