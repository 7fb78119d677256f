namespace WireCheck.Physics;

/// <summary>Heat radiated by a grey surface to large surroundings: ε σ (T⁴ − Ts⁴), temperatures in K.</summary>
public static class Radiation
{
    /// <summary>Stefan-Boltzmann constant, W/(m² K⁴). Source: CODATA 2018, exact.</summary>
    public const double StefanBoltzmann = 5.670374419e-8;

    /// <summary>W/m², positive when the surface is the hotter.</summary>
    /// <param name="emissivity">0 to 1.</param>
    /// <param name="surface">°C.</param>
    /// <param name="surroundings">°C.</param>
    public static double Flux(double emissivity, double surface, double surroundings) =>
        emissivity * StefanBoltzmann * (Fourth(surface + Air.Kelvin) - Fourth(surroundings + Air.Kelvin));

    private static double Fourth(double kelvin) => kelvin * kelvin * kelvin * kelvin;
}
