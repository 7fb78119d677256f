namespace WireCheck.Physics;

/// <summary>
/// Dry air at 101.325 kPa. Viscosity and conductivity by the formulas of the US Standard Atmosphere 1976, density as an
/// ideal gas, specific heat 1006 J/(kg K). Made for −50 to 300 °C.
/// </summary>
public readonly struct Air
{
    /// <summary>0 °C in K.</summary>
    public const double Kelvin = 273.15;

    /// <summary>Standard gravity, m/s².</summary>
    public const double Gravity = 9.80665;

    private const double Pressure = 101325;
    private const double GasConstant = 287.053;
    private const double SpecificHeat = 1006;

    /// <summary>Air at a temperature in °C.</summary>
    public Air(double celsius)
    {
        Absolute = Math.Max(celsius, -100) + Kelvin;
        double root = Absolute * Math.Sqrt(Absolute);
        double viscosity = 1.458e-6 * root / (Absolute + 110.4);
        Density = Pressure / (GasConstant * Absolute);
        Conductivity = 2.64638e-3 * root / (Absolute + (245.4 * Math.Pow(10, -12 / Absolute)));
        KinematicViscosity = viscosity / Density;
        Diffusivity = Conductivity / HeatPerVolume;
    }

    /// <summary>Temperature in K.</summary>
    public double Absolute { get; }

    /// <summary>kg/m³.</summary>
    public double Density { get; }

    /// <summary>Thermal conductivity, W/(m K).</summary>
    public double Conductivity { get; }

    /// <summary>m²/s.</summary>
    public double KinematicViscosity { get; }

    /// <summary>Thermal diffusivity, m²/s.</summary>
    public double Diffusivity { get; }

    /// <summary>Heat that a cubic metre takes for each kelvin, J/(m³ K).</summary>
    public double HeatPerVolume => Density * SpecificHeat;

    /// <summary>Prandtl number.</summary>
    public double Prandtl => KinematicViscosity / Diffusivity;

    /// <summary>Rayleigh number g ΔT L³/(T ν α) of a surface of that size and difference to the air around it, in this film.</summary>
    /// <param name="difference">K, of either sign.</param>
    /// <param name="length">m.</param>
    public double Rayleigh(double difference, double length) =>
        Gravity * Math.Abs(difference) * length * length * length / (Absolute * KinematicViscosity * Diffusivity);
}
