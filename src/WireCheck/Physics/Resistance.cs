namespace WireCheck.Physics;

/// <summary>Resistance of metal by shape and temperature.</summary>
public static class Resistance
{
    /// <summary>
    /// Resistance in ohms at a temperature: R20 [1 + α20 (T − 20)]. Source: IEC 60028. Never below 0, where
    /// the straight line would cross.
    /// </summary>
    /// <param name="at20">Ohms, or ohms per metre, at 20 °C.</param>
    /// <param name="coefficient">α20 in 1/K.</param>
    /// <param name="celsius">Temperature in °C.</param>
    public static double AtTemperature(double at20, double coefficient, double celsius) =>
        Math.Max(0, at20 * (1 + (coefficient * (celsius - 20))));

    /// <summary>Ohms of a bar or wire of even section: ρ l / A.</summary>
    /// <param name="resistivity">Ω m.</param>
    /// <param name="length">Metres, 0 or more.</param>
    /// <param name="area">m², above 0.</param>
    public static double OfBar(double resistivity, double length, double area)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(length);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(area);
        return resistivity * length / area;
    }

    /// <summary>Ohms of a link: a bar with a joint at each end.</summary>
    /// <param name="resistivity">Ω m.</param>
    /// <param name="length">Metres between the joints.</param>
    /// <param name="area">m², above 0.</param>
    /// <param name="joint">Ohms of one joint.</param>
    public static double OfBoltedLink(double resistivity, double length, double area, double joint) =>
        OfBar(resistivity, length, area) + (2 * joint);

    /// <summary>
    /// Circular mils that keep a voltage drop: K I L / E with K = 10.75 Ω·cmil/ft. Source: ABYC E-11.
    /// </summary>
    /// <param name="amps">Current in A.</param>
    /// <param name="feet">Length out and back in feet.</param>
    /// <param name="drop">Allowed drop in V, above 0.</param>
    public static double CircularMilsForDrop(double amps, double feet, double drop)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(drop);
        return 10.75 * amps * feet / drop;
    }
}
