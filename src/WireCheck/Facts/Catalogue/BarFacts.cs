namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about bars of metal: a busbar, or the links of a bank.</summary>
public sealed class BarFacts : FactGroup
{
    private BarFacts(string kind, string bar)
        : base(kind)
    {
        SectionArea = Number("section_area", "m²", $"Area of metal that the current passes in the {bar}.");
        BarMaterial = Word("bar_material", $"Material of the {bar}.");
        BarCurrent = Worst("bar_current", "A", $"Largest steady current through any cross-section of the {bar}.");
        BarSurgeCurrent = Worst("bar_surge_current", "A", $"Largest current, surges counted, through any cross-section of the {bar}.");
        CopperDensity = Worst(
            "copper_density", "A/m²", $"Steady current over the area of the {bar}, times its resistivity over that of copper.");
        CopperSurgeDensity = Worst(
            "copper_surge_density", "A/m²", $"Current with surges over the area of the {bar}, times its resistivity over that of copper.");
    }

    public Fact SectionArea { get; }

    public Fact BarMaterial { get; }

    public Fact BarCurrent { get; }

    public Fact BarSurgeCurrent { get; }

    public Fact CopperDensity { get; }

    public Fact CopperSurgeDensity { get; }

    public static BarFacts Busbar { get; } = new("busbar", "bar");

    public static BarFacts Links { get; } = new("cells", "links");
}
