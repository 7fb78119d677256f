namespace WireCheck.Facts.Catalogue;

/// <summary>
/// Facts about a load that is dead with all switches closed, though some of them alone make it live: what two relays reverse,
/// what a resting contact feeds, what a button feeds while it is pressed.
/// </summary>
public static class LoadSwitchFacts
{
    private const string Kind = "load";

    public static readonly Fact LiveApartClosed = Fact.Names(
        Kind, "live_apart_closed", "Switches that must be closed for it to be live, fewest first, where it is dead with all lasting switches closed and with all open; absent for every other load.");

    public static readonly Fact LiveApartOpen = Fact.Names(
        Kind, "live_apart_open", "Switches that must then be open; absent with live_apart_closed.");
}
