namespace WireCheck.Facts.Catalogue;

/// <summary>Whether bare metal that is always live is covered, and cells stay where they are.</summary>
public sealed class CoverFacts : FactGroup
{
    private CoverFacts(string kind)
        : base(kind)
    {
        Covered = YesNo("covered", "Its bare metal has a cover; absent when the description does not tell.");
        LiveAtRest = YesNo("live_at_rest", "It is live against the bank's negative with all switches open and nothing plugged in.");
        Boxed = YesNo("boxed", "It is a bank, and the description has an enclosure around the parts; absent for a bar.");
        HeldDown = YesNo("held_down", "The box holds its cells so that they cannot move; absent for a bar and when the description does not tell.");
    }

    public Fact Covered { get; }

    public Fact LiveAtRest { get; }

    public Fact Boxed { get; }

    public Fact HeldDown { get; }

    public static CoverFacts Cells { get; } = new("cells");

    public static CoverFacts Busbar { get; } = new("busbar");
}
