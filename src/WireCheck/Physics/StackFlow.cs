namespace WireCheck.Physics;

/// <summary>Air that passes through the openings of a warm box.</summary>
public static class StackFlow
{
    /// <summary>Discharge coefficient of a sharp-edged opening. Source: ASHRAE Handbook, Fundamentals, chapter on ventilation, 0.65 for openings; 0.6 as a sharp edge has.</summary>
    private const double Discharge = 0.6;

    /// <summary>
    /// m³/s driven by warm air through as much opening below as above: Cd A √(g H ΔT/T), A the area of one of them. Two equal openings in
    /// turn share the pressure, hence g instead of 2 g. Source: ASHRAE Handbook, Fundamentals, stack effect.
    /// </summary>
    /// <param name="opening">Area of the openings on one level, m², 0 or more.</param>
    /// <param name="height">Between the two levels, m, 0 or more.</param>
    /// <param name="inside">°C.</param>
    /// <param name="outside">°C, not above <paramref name="inside"/>.</param>
    public static double CubicMetresPerSecond(double opening, double height, double inside, double outside) =>
        Discharge * opening * Math.Sqrt(
            Air.Gravity * height * Math.Max(0, inside - outside) / (inside + Air.Kelvin));
}
