namespace WireCheck.Facts.Catalogue;

/// <summary>How warm a conductor gets by its own heat balance, beside what the tables of ampacity allow.</summary>
public static class ConductorHeatFacts
{
    private const string Kind = "conductor";

    public static readonly Fact Temperature = Fact.Worst(
        Kind, "temperature", "°C", "Highest lasting temperature of its metal by its heat balance: its own heat and that of its bundle against still air as warm as that around it, the box in its hottest surroundings. Loads that tell a duty and how long they stay on count by its time constant, others as always on.");

    public static readonly Fact TemperatureLimit = Fact.Number(
        Kind, "temperature_limit", "°C", "Highest lasting temperature its insulation is made for.");

    public static readonly Fact TimeConstant = Fact.Number(
        Kind, "time_constant", "s", "Time in which it comes within 37 % of where its warming ends, lying alone: short spells hardly warm it. Only its metal stores heat.");

    public static readonly Fact SurgeTemperature = Fact.Worst(
        Kind, "surge_temperature", "°C", "Highest temperature of its metal at the end of a surge that begins with everything on and warm; absent when nothing surges.");
}
