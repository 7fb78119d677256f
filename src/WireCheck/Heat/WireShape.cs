using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.Physics;

namespace WireCheck.Heat;

/// <summary>A conductor as heat sees it.</summary>
/// <param name="OuterDiameter">Over the insulation, m.</param>
/// <param name="Area">Of the metal, m².</param>
/// <param name="Layer">Thermal resistance of the insulation, K m/W.</param>
/// <param name="Emissivity">Of its surface.</param>
/// <param name="Zero">°C below zero at which the line of resistance would reach nothing.</param>
/// <param name="MetalHeat">J/(K m) of its metal alone.</param>
/// <param name="Conductance">Thermal conductivity of the metal times its area, W m/K.</param>
public sealed record WireShape(
    double OuterDiameter, double Area, double Layer, double Emissivity, double Zero, double MetalHeat, double Conductance)
{
    /// <summary>Lorenz number of metals in W Ω/K²: thermal over electric conductivity and temperature. Source: Wiedemann and Franz; theory of Sommerfeld, 2.44e-8.</summary>
    private const double Lorenz = 2.44e-8;

    /// <summary>Temperature at which <see cref="Conductance"/> is told, K; it hardly moves with it.</summary>
    private const double RoomKelvin = 293.15;

    /// <summary>
    /// Time constant of its warming in s: the heat its metal stores over what a metre of it loses for each kelvin through its insulation and to
    /// still air. Lying alone, without the heat its insulation stores and at the largest loss, so that it is told too short rather than too long.
    /// </summary>
    /// <param name="surface">Warmest surface, °C, above <paramref name="air"/>.</param>
    /// <param name="air">°C.</param>
    public double TimeConstant(double surface, double air)
    {
        double transfer = NaturalConvection.HorizontalCylinder(OuterDiameter, surface, air)
            + (Radiation.Flux(Emissivity, surface, air) / (surface - air));
        return MetalHeat * (Layer + (1 / (Math.PI * OuterDiameter * transfer)));
    }

    /// <summary>The shape of a conductor by size, stranding and insulation.</summary>
    public static WireShape Of(Conductor conductor, Library library)
    {
        Material material = library.Materials[conductor.Material.Value];
        InsulationClass insulation = library.Insulation[conductor.Insulation.Value];
        Stranding stranding = conductor.Strands?.Value switch
        {
            Strands.Solid => Stranding.Solid,
            Strands.Coarse => Stranding.Coarse,
            _ => Stranding.Fine,
        };
        double metal = library.Conductors.ConductorDiameter(conductor.Size.Value, stranding);
        double wall = library.Conductors.Wall(conductor.Size.Value);
        double area = ConductorTable.Area(conductor.Size.Value);
        return new WireShape(
            metal + (2 * wall),
            area,
            Conduction.CylindricalLayer(insulation.ThermalResistivity, wall, metal),
            insulation.Emissivity,
            material.Zero,
            material.Heat * area,
            Lorenz * RoomKelvin / material.Resistivity * area);
    }
}
