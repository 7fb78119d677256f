namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about a switch beyond its contact, which is in <see cref="ContactFacts"/>.</summary>
public static class SwitchFacts
{
    private const string Kind = "switch";

    public static readonly Fact LoadType = Fact.Word(
        Kind, "load_type", "The kind of load that takes most of its current: lamp, inductive (a coil), motor or resistive; an inverter or a converter counts as resistive.");

    public static readonly Fact Derating = Fact.Number(
        Kind, "derating", "", "Rated current needed over load current: the factors of the switch derating table at the nominal voltage, weighted by what each kind of load behind it takes.");
}
