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
}
