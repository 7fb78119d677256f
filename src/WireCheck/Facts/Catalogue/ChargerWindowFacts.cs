namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about the voltage at a charger's input.</summary>
public static class ChargerWindowFacts
{
    public static readonly Fact InputVoltageHigh = Fact.Worst(
        "charger", "input_voltage_high", "V", "Highest voltage at its drawn input, or of the vehicle that feeds it; absent for a charger from the mains or a panel.");
}
