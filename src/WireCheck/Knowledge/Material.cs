namespace WireCheck.Knowledge;

/// <summary>A metal of conductors, bars and cell tabs.</summary>
/// <param name="Name">Name in descriptions, such as <c>copper-clad-aluminium</c>.</param>
/// <param name="Title">In words.</param>
/// <param name="Source">Where the values come from.</param>
public sealed record Material(string Name, string Title, Source Source)
{
    /// <summary>Resistivity at 20 °C in Ω m.</summary>
    public required double Resistivity { get; init; }

    /// <summary>Temperature coefficient of resistance at 20 °C in 1/K.</summary>
    public required double Coefficient { get; init; }

    /// <summary>Degrees below 0 °C at which the straight line of resistance reaches nothing.</summary>
    public required double Zero { get; init; }

    /// <summary>Density in kg/m³.</summary>
    public required double Density { get; init; }

    /// <summary>Volumetric heat in J/(K m³).</summary>
    public required double Heat { get; init; }

    /// <summary>Resistance of coated wire over that of plain wire, 1 or more.</summary>
    public required double ResistanceFactor { get; init; }

    /// <summary>Part of a copper wire's ampacity at the same size, above 0, at most 1.</summary>
    public required double AmpacityFactor { get; init; }

    internal static NamedTable<Material> Read(TableNode file) => new(file.Children("materials").Select(ReadOne));

    private static (string, Material) ReadOne(TableNode node)
    {
        string name = node.Word("material");
        TableNode values = node.Child("values");
        return (name, new Material(name, node.Word("title"), node.Source("source"))
        {
            Resistivity = values.Number("resistivity") * 1e-6,
            Coefficient = values.Number("coefficient"),
            Zero = values.Number("zero"),
            Density = values.Number("density") * 1e3,
            Heat = values.Number("heat") * 1e9,
            ResistanceFactor = values.Number("resistance_factor"),
            AmpacityFactor = values.Number("ampacity_factor"),
        });
    }
}
