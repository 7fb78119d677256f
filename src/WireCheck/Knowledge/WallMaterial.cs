namespace WireCheck.Knowledge;

/// <summary>A wall of a box.</summary>
/// <param name="Name">Name in descriptions, such as <c>sheet-steel</c>.</param>
/// <param name="Title">In words.</param>
/// <param name="Source">Where the values come from.</param>
public sealed record WallMaterial(string Name, string Title, Source Source)
{
    /// <summary>Usual thickness in m.</summary>
    public required double Thickness { get; init; }

    /// <summary>Thermal conductivity in W/(m K).</summary>
    public required double Conductivity { get; init; }

    /// <summary>Emissivity of both faces, above 0, at most 1.</summary>
    public required double Emissivity { get; init; }

    /// <summary>W/(m² K) from the air inside to still air outside, for the simple rule.</summary>
    public required double Transfer { get; init; }

    /// <summary>It conducts electricity.</summary>
    public required bool Metal { get; init; }

    internal static NamedTable<WallMaterial> Read(TableNode file) => new(file.Children("walls").Select(ReadOne));

    private static (string, WallMaterial) ReadOne(TableNode node)
    {
        string name = node.Word("wall");
        TableNode values = node.Child("values");
        return (name, new WallMaterial(name, node.Word("title"), node.Source("source"))
        {
            Thickness = values.Number("thickness") * 1e-3,
            Conductivity = values.Number("conductivity"),
            Emissivity = values.Number("emissivity"),
            Transfer = values.Number("transfer"),
            Metal = values.YesOrNo("metal"),
        });
    }
}
