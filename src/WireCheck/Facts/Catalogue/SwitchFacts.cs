namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about a switch beyond its contact, which is in <see cref="ContactFacts"/>.</summary>
public static class SwitchFacts
{
    private const string Kind = "switch";

    public static readonly Fact LoadType = Fact.Word(
        Kind, "load_type", "The hardest kind of load its contact switches: lamp, inductive (a coil), motor or resistive; an inverter or a converter counts as resistive.");

    public static readonly Fact Derating = Fact.Number(
        Kind, "derating", "", "Factor of the switch derating table for that load and the nominal voltage: rated current needed over load current.");
}
