namespace WireCheck.Physics;

/// <summary>
/// Geometry of American wire gauge: each step down is 1/39 of the way, on a logarithmic scale, from 0.005 in
/// (36 AWG) to 0.46 in (4/0), a ratio of 92. Source: ASTM B258.
/// </summary>
public static class WireGauge
{
    /// <summary>Area of one circular mil in m²: a circle of 0.001 in.</summary>
    public const double CircularMil = Math.PI / 4 * 2.54e-5 * 2.54e-5;

    private const double Diameter36 = 0.127e-3;
    private const double Ratio = 92;
    private const double Steps = 39;

    /// <summary>Diameter in metres of the solid wire.</summary>
    /// <param name="gauge">Gauge number; 0 for 1/0, -1 for 2/0, -2 for 3/0, -3 for 4/0.</param>
    public static double Diameter(double gauge) => Diameter36 * Math.Pow(Ratio, (36 - gauge) / Steps);

    /// <summary>Metal area in m², of the solid wire and of the stranded one alike.</summary>
    /// <param name="gauge">As for <see cref="Diameter"/>.</param>
    public static double Area(double gauge)
    {
        double diameter = Diameter(gauge);
        return Math.PI / 4 * diameter * diameter;
    }

    /// <summary>Circular mils of an area in m²: the square of the diameter in thousandths of an inch.</summary>
    public static double CircularMils(double area) => area / CircularMil;
}
