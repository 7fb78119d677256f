namespace WireCheck.Physics;

/// <summary>
/// A discharged capacitor joined to a voltage through a resistance. Textbook first-order circuit; inductance is
/// left out, which overstates the peak.
/// </summary>
public static class CapacitorCharge
{
    /// <summary>First current in A: V/R.</summary>
    public static double Peak(double volts, double ohms)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ohms);
        return volts / ohms;
    }

    /// <summary>Time constant in s: R C.</summary>
    public static double TimeConstant(double ohms, double farads) => ohms * farads;

    /// <summary>Energy in J that the capacitor takes, and that the resistance burns: ½ C V².</summary>
    public static double Energy(double volts, double farads) => 0.5 * farads * volts * volts;

    /// <summary>Joule integral in A²s: ½ C V²/R.</summary>
    public static double JouleIntegral(double volts, double farads, double ohms)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ohms);
        return Energy(volts, farads) / ohms;
    }

    /// <summary>
    /// Seconds until the capacitor stands at <paramref name="volts"/> when the voltage it creeps up to is
    /// <paramref name="finalVolts"/>: R C ln(1/(1 − V/V_final)). Infinite when it never gets there.
    /// </summary>
    /// <param name="ohms">Resistance it is charged through, Ω.</param>
    /// <param name="farads">Capacitance, F.</param>
    /// <param name="finalVolts">Voltage after a long time: that of the source less what a steady draw behind the resistance takes, V.</param>
    /// <param name="volts">Voltage asked for, V, 0 or more.</param>
    public static double SecondsTo(double ohms, double farads, double finalVolts, double volts) =>
        volts >= finalVolts ? double.PositiveInfinity : -TimeConstant(ohms, farads) * Math.Log(1 - (volts / finalVolts));
}
