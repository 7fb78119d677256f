namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about a charger.</summary>
public static class ChargerFacts
{
    private const string Kind = "charger";

    public static readonly Fact ChargerKind = Fact.Word(Kind, "charger_kind", "How it works: cc-cv, dc-dc, solar or trickle.");

    public static readonly Fact CellCount = Fact.Number(
        Kind, "cell_count", "", "Cells in series it is set for; absent when the description does not say.");

    public static readonly Fact BankSeries = Fact.Number(
        Kind, "bank_series", "", "Cells in series of the bank it charges.");

    public static readonly Fact Voltage = Fact.Number(Kind, "voltage", "V", "Its constant-voltage limit.");

    public static readonly Fact Current = Fact.Worst(Kind, "current", "A", "Largest current it delivers.");
}
