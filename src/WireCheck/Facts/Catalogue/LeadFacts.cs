namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about the lead that a load comes with; absent where none is described.</summary>
public static class LeadFacts
{
    private const string Kind = "load";

    public static readonly Fact Size = Fact.Word(Kind, "lead_size", "Size of its own lead.");

    public static readonly Fact Ampacity = Fact.Number(
        Kind, "lead_ampacity", "A", "What its own lead may carry for hours, alone, with the insulation assumed for leads.");
}
