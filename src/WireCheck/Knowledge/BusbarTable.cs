namespace WireCheck.Knowledge;

/// <summary>Current density that a copper bar in a box stands.</summary>
public sealed class BusbarTable
{
    internal BusbarTable(TableNode file)
    {
        TableNode density = file.Child("density");
        Source = density.Source("source");
        BoxedIn = density.Number("boxed_in") * 1e6;
        Brief = density.Number("brief") * 1e6;
        AluminiumSection = file.Child("section_for_aluminium").Number("factor");
    }

    /// <summary>Source of the densities.</summary>
    public Source Source { get; }

    /// <summary>A/m² for hours, boxed in.</summary>
    public double BoxedIn { get; }

    /// <summary>A/m² for minutes.</summary>
    public double Brief { get; }

    /// <summary>Section of an aluminium bar over that of a copper one of the same resistance.</summary>
    public double AluminiumSection { get; }

    /// <summary>Amperes for hours of a bar of this area in m²; other metals carry less in proportion to conductivity.</summary>
    public double SteadyAmps(double area, Material material, Material copper) =>
        BoxedIn * area * copper.Resistivity / material.Resistivity;
}
