namespace WireCheck.Facts.Catalogue;

/// <summary>
/// Facts about a stud on which two or more conductors end. Terminals that take no ring lug have no such subject, and neither
/// has a busbar whose conductors are not drawn to numbered studs unless its number of studs is given.
/// </summary>
public static class TerminalFacts
{
    private const string Kind = FactCatalogue.TerminalKind;

    public static readonly Fact LugCount = Fact.Number(
        Kind, "lug_count", "", "Lugs on the stud; on a busbar drawn by its id alone, all lugs over its studs, rounded up.");

    public static readonly Fact Lugs = Fact.Names(Kind, "lugs", "The conductors whose lugs they are, heaviest size first.");
}
