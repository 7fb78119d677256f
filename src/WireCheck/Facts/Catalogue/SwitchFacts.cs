namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about a switch beyond its contact, which is in <see cref="ContactFacts"/>.</summary>
public static class SwitchFacts
{
    private const string Kind = "switch";

    public static readonly Fact LoadType = Fact.Word(
        Kind, "load_type", "The kind of load that takes most of its current: lamp, inductive (a coil), motor or resistive; an inverter or a converter counts as resistive.");

    public static readonly Fact NegativeOnly = Fact.Names(
        Kind, "negative_only", "Parts of which it opens the negative alone, their positive staying live; absent when there are none.");

    public static readonly Fact NegativeRestored = Fact.Names(
        Kind, "negative_restored", "Those of them that stay live all the same, by a link outside the box.");

    public static readonly Fact MetalBox = Fact.YesNo(Kind, "metal_box", "The walls of the box conduct.");

    public static readonly Fact Derating = Fact.Number(
        Kind, "derating", "", "Rated current needed over load current: the factors of the switch derating table at the nominal voltage, weighted by what each kind of load behind it takes.");
}
