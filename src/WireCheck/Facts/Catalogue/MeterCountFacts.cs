namespace WireCheck.Facts.Catalogue;

/// <summary>What a meter that counts charge does not count, because it is too little.</summary>
public static class MeterCountFacts
{
    private const string Kind = "meter";

    public static readonly Fact Smallest = Fact.Number(
        Kind, "smallest", "A", "Smallest current it counts; absent when it is not said, and for a meter without a shunt.");

    public static readonly Fact RestCurrent = Fact.Worst(
        Kind, "rest_current", "A", "Largest current through its shunt with all switches open, stored or left plugged; absent for a meter without a shunt.");

    public static readonly Fact RestShareOfMonth = Fact.Number(
        Kind, "rest_share_of_month", "", "Charge that this current takes in 30 days, over the rated charge of the bank.");
}
