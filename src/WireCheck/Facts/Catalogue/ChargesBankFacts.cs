namespace WireCheck.Facts.Catalogue;

/// <summary>Whether a source brings anything to the cells.</summary>
public sealed class ChargesBankFacts : FactGroup
{
    private ChargesBankFacts(string kind)
        : base(kind)
    {
        MostIntoBank = Number(
            "most_into_bank", "A", "Largest current that all banks together take in any state in which it gives power, or that it gives at its limit while something takes more; 0 when it never gives any. Absent for a source that feeds a charger, that is joined the wrong way round, whose voltage is below the cells', or that a turned diode cuts off.");
    }

    public Fact MostIntoBank { get; }

    public static ChargesBankFacts Charger { get; } = new("charger");

    public static ChargesBankFacts Vehicle { get; } = new("vehicle");

    public static ChargesBankFacts Panel { get; } = new("panel");

    /// <summary>The group for a kind; null for kinds that are no source.</summary>
    public static ChargesBankFacts? Of(string kind) => kind switch
    {
        "charger" => Charger,
        "vehicle" => Vehicle,
        "panel" => Panel,
        _ => null,
    };
}
