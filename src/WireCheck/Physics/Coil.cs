namespace WireCheck.Physics;

/// <summary>A copper coil, whose resistance and operate voltage rise with its temperature.</summary>
public static class Coil
{
    /// <summary>Degrees below 0 °C at which the straight line of copper's resistance would reach nothing. Source: IEC 60028.</summary>
    public const double CopperZero = 234.5;

    /// <summary>Resistance over that at 20 °C: (234.5 + T)/254.5. Source: IEC 60028.</summary>
    /// <param name="celsius">Temperature of the copper in °C, above −234.5.</param>
    public static double ResistanceFactor(double celsius)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(celsius, -CopperZero);
        return (CopperZero + celsius) / (CopperZero + 20);
    }

    /// <summary>
    /// Volts a warm coil needs to operate: the ampere-turns stay, so the voltage rises as the resistance.
    /// </summary>
    /// <param name="operateAt20">Must-operate voltage at 20 °C.</param>
    /// <param name="celsius">Temperature of the copper in °C.</param>
    public static double OperateVoltage(double operateAt20, double celsius) => operateAt20 * ResistanceFactor(celsius);

    /// <summary>
    /// Temperature in °C that a coil settles at: its rise follows its heat V²/R(T), which falls as the copper
    /// warms. Solves rise = k V² / R(T) in closed form.
    /// </summary>
    /// <param name="volts">Voltage across the coil.</param>
    /// <param name="ohmsAt20">Its resistance at 20 °C, above 0.</param>
    /// <param name="kelvinPerWatt">Its rise for each watt, 0 or more.</param>
    /// <param name="ambient">Air around it in °C.</param>
    public static double SettledTemperature(double volts, double ohmsAt20, double kelvinPerWatt, double ambient)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ohmsAt20);

        // With x = 234.5 + T: x − x0 = c / x, so x = (x0 + √(x0² + 4c)) / 2.
        double start = CopperZero + ambient;
        double heat = kelvinPerWatt * volts * volts / ohmsAt20 * (CopperZero + 20);
        return ((start + Math.Sqrt((start * start) + (4 * heat))) / 2) - CopperZero;
    }
}
