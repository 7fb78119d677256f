namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about what the loads on an inverter or converter ask of its output, together and starting.</summary>
public sealed class OutputDemandFacts : FactGroup
{
    private OutputDemandFacts(string kind)
        : base(kind)
    {
        Demand = Worst("output_demand", "W", "Most power that a mode of the description asks of its output; absent when no mode does.");
        DemandTogether = Number("output_demand_together", "W", "Steady power of all loads on its output together; absent when none is described.");
        LargestLoad = Number("largest_load", "W", "Steady power of the largest load on its output; absent when none is described.");
        Starting = Worst(
            "output_starting", "W",
            "Most power asked of its output while a load on it starts, those that run in the same mode added; absent when no load has a surge.");
        StartingLoad = Word("output_starting_load", "Id of the load that starts in output_starting.");
        SurgeRating = Number("surge_rating", "W", "Power it gives for a moment; its rated power when none is named.");
    }

    public Fact Demand { get; }

    public Fact DemandTogether { get; }

    public Fact LargestLoad { get; }

    public Fact Starting { get; }

    public Fact StartingLoad { get; }

    public Fact SurgeRating { get; }

    public static OutputDemandFacts Converter { get; } = new("converter");

    public static OutputDemandFacts Inverter { get; } = new("inverter");
}
