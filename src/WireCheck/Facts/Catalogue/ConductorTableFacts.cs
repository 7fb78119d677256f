namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about a conductor by the tables of one trade each, whichever table the default set judges it by.</summary>
public static class ConductorTableFacts
{
    private const string Kind = "conductor";

    public static readonly Fact Area = Fact.Number(Kind, "area", "m²", "Area of its metal by its size.");

    public static readonly Fact Sheathed = Fact.YesNo(Kind, "sheathed", "It has a sleeve or a conduit over its whole length, whatever the walls of the box.");

    public static readonly Fact BySmallCraftLaw = Fact.Number(
        Kind, "ampacity_by_183_425", "A", "Ampacity by the table for boats of 33 CFR 183.425, where it lies; absent for sizes the table does not print.");

    public static readonly Fact BySmallCraftStandard = Fact.Number(
        Kind, "ampacity_by_iso_10133", "A", "Ampacity by the table for small craft of ISO 10133, where it lies; absent for sizes the table does not print.");

    public static readonly Fact ByAircraftHandbook = Fact.Number(
        Kind, "ampacity_by_ac_43_13", "A", "Ampacity by the wire chart of AC 43.13-1B, bundled as that chart is; absent for sizes it does not print.");
}
