namespace WireCheck.Facts.Catalogue;

/// <summary>
/// What shorts anywhere in the box do to a conductor leg that carries their current. Shorts with no fuse or breaker in their
/// way are left out; facts about guards tell of those.
/// </summary>
public static class WireFaultFacts
{
    private const string Kind = "conductor";

    public static readonly Fact Share = Fact.Number(
        Kind, "fault_heat_share", "", "Its worst rise above its rated temperature in any short, over the rise its insulation stands for that long; above 1 it is hurt.");

    public static readonly Fact Temperature = Fact.Number(
        Kind, "fault_temperature", "°C", "Its temperature at the end of that short, from its rated temperature, every device at its slowest; 1085 °C stands for melted.");

    public static readonly Fact Limit = Fact.Number(
        Kind, "fault_temperature_limit", "°C", "Temperature its insulation stands for as long as that short lasts.");

    public static readonly Fact Melts = Fact.YesNo(Kind, "fault_melts", "Its copper melts before that short ends.");

    public static readonly Fact Lasts = Fact.Number(
        Kind, "fault_temperature_time", "s", "How long that short lasts, every device at its slowest; absent when nothing ends it.");

    public static readonly Fact At = Fact.Word(Kind, "fault_temperature_at", "The place of that short.");

    public static readonly Fact HeatedBy = Fact.Number(Kind, "fault_temperature_current", "A", "Current of that short before anything opens.");

    public static readonly Fact Sustained = Fact.Number(
        Kind, "fault_sustained_current", "A", "Largest current above its ampacity that a short drives through it and no fuse or breaker ends; absent when there is none.");

    public static readonly Fact SustainedAt = Fact.Word(Kind, "fault_sustained_at", "The place of that short.");

    public static readonly Fact SustainedSource = Fact.Word(Kind, "fault_sustained_source", "Id of the source that drives it.");
}
