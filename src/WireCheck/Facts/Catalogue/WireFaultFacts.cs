namespace WireCheck.Facts.Catalogue;

/// <summary>
/// What shorts anywhere in the box do to a conductor leg, or to the lead of a load, that carries their current. Shorts with no
/// fuse or breaker in their way are left out; facts about guards tell of those. Of several wires that one short hurts
/// only the one it hurts first is told of it: once that has melted nothing flows in the others.
/// </summary>
public sealed class WireFaultFacts : FactGroup
{
    private WireFaultFacts(string kind)
        : base(kind)
    {
        Share = Number("fault_heat_share", "", "Its worst rise above its rated temperature in any short, over the rise its insulation stands for that long; above 1 it is hurt.");
        Temperature = Number("fault_temperature", "°C", "Its temperature at the end of that short, from its rated temperature, every device at its slowest; 1085 °C stands for melted.");
        Limit = Number("fault_temperature_limit", "°C", "Temperature its insulation stands for as long as that short lasts.");
        Melts = YesNo("fault_melts", "Its copper melts before that short ends.");
        Lasts = Number("fault_temperature_time", "s", "How long that short lasts, every device at its slowest; absent when nothing ends it.");
        At = Word("fault_temperature_at", "The place of that short.");
        HeatedBy = Number("fault_temperature_current", "A", "Current of that short before anything opens.");
        Sustained = Number("fault_sustained_current", "A", "Largest current above its ampacity that a short drives through it and no fuse or breaker ends; absent when there is none.");
        SustainedAt = Word("fault_sustained_at", "The place of that short.");
        SustainedSource = Word("fault_sustained_source", "Id of the source that drives it.");
        Told = YesNo("fault_told", "Of the wires that the same fuse or breaker lets come to harm in shorts, it is the one that comes to harm first, or comes nearest to it.");
        Also = Names("fault_also_hurt", "Other wires that the same shorts, or shorts left to the same fuse or breaker, hurt.");
    }

    public Fact Share { get; }

    public Fact Temperature { get; }

    public Fact Limit { get; }

    public Fact Melts { get; }

    public Fact Lasts { get; }

    public Fact At { get; }

    public Fact HeatedBy { get; }

    public Fact Sustained { get; }

    public Fact SustainedAt { get; }

    public Fact SustainedSource { get; }

    public Fact Told { get; }

    public Fact Also { get; }

    public static WireFaultFacts Conductor { get; } = new("conductor");

    public static WireFaultFacts Load { get; } = new("load");
}
