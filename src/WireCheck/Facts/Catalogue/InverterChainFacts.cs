namespace WireCheck.Facts.Catalogue;

/// <summary>Whether everything on the way to an inverter is large enough for it.</summary>
public static class InverterChainFacts
{
    private const string Kind = "inverter";

    public static readonly Fact FullPowerCurrent = Fact.Number(
        Kind, "full_power_current", "A", "Current it takes at rated power when the bank is low: rated power over efficiency and the voltage at which it cuts off.");

    public static readonly Fact ChainTooSmall = Fact.Names(
        Kind, "chain_too_small", "Parts and conductors on its way from the bank and back that are rated below that current, each with its rating; absent when it does not run in any mode.");
}
