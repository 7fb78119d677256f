namespace WireCheck.Physics;

/// <summary>
/// Heat from a surface into still air, W/(m² K), air properties at the mean of surface and air. All are 0 where
/// surface and air are equally warm, except the cylinder's and the vertical plate's pure conduction.
/// </summary>
public static class NaturalConvection
{
    /// <summary>
    /// Long horizontal cylinder: Nu = {0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27)}², Ra below 1e12. Source:
    /// S. W. Churchill and H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1049.
    /// </summary>
    /// <param name="diameter">m, above 0.</param>
    /// <param name="surface">°C.</param>
    /// <param name="air">°C.</param>
    public static double HorizontalCylinder(double diameter, double surface, double air)
    {
        Air film = new((surface + air) / 2);
        double bracket = Math.Pow(1 + Math.Pow(0.559 / film.Prandtl, 9.0 / 16), 8.0 / 27);
        double root = 0.60 + (0.387 * SixthRoot(film.Rayleigh(surface - air, diameter)) / bracket);
        return root * root * film.Conductivity / diameter;
    }

    /// <summary>
    /// Vertical plate: Nu = {0.825 + 0.387 Ra^(1/6) / [1 + (0.492/Pr)^(9/16)]^(8/27)}². Source: S. W. Churchill and
    /// H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1323.
    /// </summary>
    /// <param name="height">m, above 0.</param>
    /// <param name="surface">°C.</param>
    /// <param name="air">°C.</param>
    public static double VerticalPlate(double height, double surface, double air)
    {
        Air film = new((surface + air) / 2);
        double bracket = Math.Pow(1 + Math.Pow(0.492 / film.Prandtl, 9.0 / 16), 8.0 / 27);
        double root = 0.825 + (0.387 * SixthRoot(film.Rayleigh(surface - air, height)) / bracket);
        return root * root * film.Conductivity / height;
    }

    /// <summary>
    /// Horizontal plate, hot side up (or cold side down): Nu = 0.54 Ra^(1/4) to Ra = 1e7, 0.15 Ra^(1/3) beyond, with the
    /// area over the perimeter as length. Source: W. H. McAdams, Heat Transmission, 3rd edition, 1954, chapter 7.
    /// </summary>
    /// <param name="length">Area over perimeter, m, above 0.</param>
    /// <param name="surface">°C.</param>
    /// <param name="air">°C.</param>
    public static double HotPlateFacingUp(double length, double surface, double air)
    {
        Air film = new((surface + air) / 2);
        double rayleigh = film.Rayleigh(surface - air, length);
        double nusselt = rayleigh <= 1e7 ? 0.54 * Math.Sqrt(Math.Sqrt(rayleigh)) : 0.15 * Math.Cbrt(rayleigh);
        return nusselt * film.Conductivity / length;
    }

    /// <summary>
    /// Horizontal plate, hot side down (or cold side up): Nu = 0.27 Ra^(1/4), with the area over the perimeter as length. Source:
    /// W. H. McAdams, Heat Transmission, 3rd edition, 1954, chapter 7.
    /// </summary>
    /// <param name="length">Area over perimeter, m, above 0.</param>
    /// <param name="surface">°C.</param>
    /// <param name="air">°C.</param>
    public static double HotPlateFacingDown(double length, double surface, double air)
    {
        Air film = new((surface + air) / 2);
        return 0.27 * Math.Sqrt(Math.Sqrt(film.Rayleigh(surface - air, length))) * film.Conductivity / length;
    }

    private static double SixthRoot(double value) => Math.Cbrt(Math.Sqrt(value));
}
