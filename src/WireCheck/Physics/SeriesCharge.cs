namespace WireCheck.Physics;

/// <summary>
/// A discharged capacitor joined to a voltage through a resistance and an inductance in series: the closed form of
/// L i'' + R i' + i/C = 0 with i(0) = 0 and i'(0) = V/L, as textbooks of circuit theory give it. Without inductance it is
/// <see cref="CapacitorCharge"/>.
/// </summary>
public static class SeriesCharge
{
    /// <summary>Damping ratio ζ = (R/2) √(C/L): below 1 the current swings, above 1 it does not. Infinite without inductance.</summary>
    /// <param name="ohms">R, above 0.</param>
    /// <param name="henries">L, 0 or more.</param>
    /// <param name="farads">C, above 0.</param>
    public static double DampingRatio(double ohms, double henries, double farads)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ohms);
        ArgumentOutOfRangeException.ThrowIfNegative(henries);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(farads);
        return henries == 0 ? double.PositiveInfinity : ohms / 2 * Math.Sqrt(farads / henries);
    }

    /// <summary>
    /// Seconds from closing to the largest current: arccos(ζ)/ω_d when it swings, arcosh(ζ)/β when it does not, 1/ω₀ between.
    /// 0 without inductance.
    /// </summary>
    /// <param name="ohms">R, above 0.</param>
    /// <param name="henries">L, 0 or more.</param>
    /// <param name="farads">C, above 0.</param>
    public static double SecondsToPeak(double ohms, double henries, double farads)
    {
        double damping = DampingRatio(ohms, henries, farads);
        return henries == 0 ? 0 : PeakAngle(damping) * Math.Sqrt(henries * farads);
    }

    /// <summary>
    /// Largest current in A: V √(C/L) exp(−ζ ω₀ t_peak), the same form on both sides of critical damping; V/R without
    /// inductance. Never more than either V/R or V √(C/L).
    /// </summary>
    /// <param name="volts">V, the step across the loop.</param>
    /// <param name="ohms">R, above 0.</param>
    /// <param name="henries">L, 0 or more.</param>
    /// <param name="farads">C, above 0.</param>
    public static double Peak(double volts, double ohms, double henries, double farads)
    {
        double damping = DampingRatio(ohms, henries, farads);
        if (henries == 0)
        {
            return CapacitorCharge.Peak(volts, ohms);
        }

        // V √(C/L) = 2 ζ V/R; written so, a very large ζ loses nothing.
        return volts / ohms * 2 * damping * Math.Exp(-damping * PeakAngle(damping));
    }

    /// <summary>
    /// Joule integral in A²s of the whole charge: V² C/(2 R) for any inductance, since the resistance burns as much energy as
    /// the capacitor takes.
    /// </summary>
    /// <param name="volts">V, the step across the loop.</param>
    /// <param name="ohms">R, above 0.</param>
    /// <param name="farads">C.</param>
    public static double JouleIntegral(double volts, double ohms, double farads) => CapacitorCharge.JouleIntegral(volts, farads, ohms);

    /// <summary>Time constant of the loop before the capacitor matters, s: L/R.</summary>
    public static double LoopTimeConstant(double ohms, double henries)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ohms);
        return henries / ohms;
    }

    /// <summary>ω₀ t_peak. Near ζ = 1 both forms are 0/0; the series 1 − (ζ−1)/3 joins them.</summary>
    private static double PeakAngle(double damping)
    {
        double apart = damping - 1;
        if (Math.Abs(apart) < 1e-6)
        {
            return 1 - (apart / 3);
        }

        double root = Math.Sqrt(Math.Abs((damping * damping) - 1));
        return apart < 0 ? Math.Acos(damping) / root : Math.Acosh(damping) / root;
    }
}
