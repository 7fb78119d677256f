namespace WireCheck.Knowledge;

/// <summary>Insulation of a conductor.</summary>
/// <param name="Name">Name in descriptions, such as <c>pvc-105</c>.</param>
/// <param name="Title">In words.</param>
/// <param name="Source">Where the withstand constants come from.</param>
public sealed record InsulationClass(string Name, string Title, Source Source)
{
    /// <summary>Highest continuous temperature of the conductor in °C.</summary>
    public required double RatedCelsius { get; init; }

    /// <summary>Highest temperature at the end of a short circuit in °C.</summary>
    public required double LimitCelsius { get; init; }

    /// <summary>Highest temperature of an overload of an hour in °C, from rated to short-circuit limit.</summary>
    public required double OverloadCelsius { get; init; }

    /// <summary>Withstand constant of copper from rated to limit, A s^0.5/mm².</summary>
    public required double CopperConstant { get; init; }

    /// <summary>Withstand constant of aluminium from rated to limit, A s^0.5/mm².</summary>
    public required double AluminiumConstant { get; init; }

    /// <summary>Thermal resistivity in K m/W.</summary>
    public required double ThermalResistivity { get; init; }

    /// <summary>Emissivity of the surface, above 0, at most 1.</summary>
    public required double Emissivity { get; init; }

    internal static NamedTable<InsulationClass> Read(TableNode file) => new(file.Children("insulation").Select(ReadOne));

    private static (string, InsulationClass) ReadOne(TableNode node)
    {
        string name = node.Word("insulation");
        TableNode values = node.Child("values");
        return (name, new InsulationClass(name, node.Word("title"), node.Source("source"))
        {
            RatedCelsius = values.Number("rated"),
            LimitCelsius = values.Number("limit"),
            OverloadCelsius = values.Number("overload"),
            CopperConstant = values.Number("k_copper"),
            AluminiumConstant = values.Number("k_aluminium"),
            ThermalResistivity = values.Number("resistivity"),
            Emissivity = values.Number("emissivity"),
        });
    }
}
