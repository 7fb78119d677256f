namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about a port that takes charge: what comes out of it, and what a plug the wrong way round does.</summary>
public static class PortChargeFacts
{
    private const string Kind = "port";

    public static readonly Fact ShortCurrent = Fact.Number(
        Kind, "short_current", "A", "Largest current through a tool across its empty pins before any fuse opens; absent for ports that only give, and where they are dead.");

    public static readonly Fact ReversedSource = Fact.Word(
        Kind, "reversed_source", "Id of the source that can be plugged into it the wrong way round; absent when the plug is keyed or no source is described.");

    public static readonly Fact ReversedCurrent = Fact.Number(
        Kind, "reversed_current", "A", "Largest current through it then, before any fuse opens.");

    public static readonly Fact ReversedOpens = Fact.Names(
        Kind, "reversed_opens", "Fuses that surely open then, in order; a vehicle stands for its own fuse.");

    public static readonly Fact ReversedLeft = Fact.Number(
        Kind, "reversed_left", "A", "Current that goes on flowing when no fuse opens any more.");

    public static readonly Fact ReversedParts = Fact.Names(
        Kind, "reversed_parts", "Loads, converters, inverters and meters whose input then stands reversed.");

    public static readonly Fact ReversedUndecided = Fact.Names(
        Kind, "reversed_undecided", "Chargers whose input then stands reversed.");
}
