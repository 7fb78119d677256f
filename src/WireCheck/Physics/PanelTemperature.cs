namespace WireCheck.Physics;

/// <summary>
/// Open-circuit voltage of a solar panel by temperature. A straight line through the value at standard test conditions,
/// as panel data sheets print its slope; IEC 60891, from memory.
/// </summary>
public static class PanelTemperature
{
    /// <summary>Cell temperature of the printed values, °C (standard test conditions).</summary>
    public const double StandardCelsius = 25;

    /// <summary>Open-circuit voltage at a temperature, V.</summary>
    /// <param name="volts">The printed one, V, 0 or more.</param>
    /// <param name="risePerKelvin">Part of it gained for each kelvin colder, 1/K, 0 or more; 0.003 for crystalline silicon.</param>
    /// <param name="celsius">Temperature of the cells, °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative voltage or rise.</exception>
    public static double OpenCircuitVolts(double volts, double risePerKelvin, double celsius)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(volts);
        ArgumentOutOfRangeException.ThrowIfNegative(risePerKelvin);
        return volts * (1 + (risePerKelvin * (StandardCelsius - celsius)));
    }
}
