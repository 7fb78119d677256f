namespace WireCheck.Circuit.Elements;

/// <summary>
/// The output of a regulated supply: constant voltage with a small slope, then constant current or constant
/// power, whichever limits first. Above its voltage it blocks.
/// </summary>
/// <param name="Volts">Open-circuit voltage, V.</param>
/// <param name="LimitAmps">Current limit, A.</param>
/// <param name="PowerLimitWatts">Power limit, W; infinite for none.</param>
/// <param name="SlopeOhms">Fall of the voltage with current in the constant-voltage part, Ω, above 0.</param>
public readonly record struct OutputCurve(double Volts, double LimitAmps, double PowerLimitWatts, double SlopeOhms)
{
    /// <summary>Slope above its voltage, S: next to nothing, so that an output without a load still has a voltage.</summary>
    internal const double BlockedSiemens = 1e-7;

    /// <summary>
    /// Where blocking begins, as a share above its voltage. Without a load the output stands at its voltage but for
    /// rounding; it must then count as regulated, or a constant-power load finds nothing to lean on and Newton runs off.
    /// </summary>
    private const double KneeShare = 1e-12;

    /// <summary>Lowest voltage at which the voltage, not a limit, rules, V.</summary>
    internal double RegulatedFrom
    {
        get
        {
            double byCurrent = Volts - (LimitAmps * SlopeOhms);
            double root = (Volts * Volts) - (4 * PowerLimitWatts * SlopeOhms);
            return root > 0 ? Math.Max(byCurrent, (Volts + Math.Sqrt(root)) / 2) : byCurrent;
        }
    }

    /// <summary>
    /// The part of a step that ends at the edge of the regulated part where the step would leap over it. Regulation is
    /// some millivolts wide; without a stop there Newton's method leaps to and fro across it for ever.
    /// </summary>
    internal double ShareToEdge(double volts, double step, double share)
    {
        double low = RegulatedFrom;
        double inside = 1e-3 * (Volts - low);
        double to = volts + (share * step);
        if (volts < low && to > Volts)
        {
            return (low + inside - volts) / step;
        }

        return volts > Volts && to < low ? (Volts - inside - volts) / step : share;
    }

    /// <summary>Current delivered at an output voltage, A, and its slope, S, never positive.</summary>
    public double Delivered(double volts, out double slope)
    {
        double knee = Volts * (1 + KneeShare);
        if (volts > knee)
        {
            slope = -BlockedSiemens;
            return ((Volts - knee) / SlopeOhms) + ((knee - volts) * BlockedSiemens);
        }

        double regulated = (Volts - volts) / SlopeOhms;
        double byPower = volts > 0 ? PowerLimitWatts / volts : double.PositiveInfinity;
        if (regulated <= LimitAmps && regulated <= byPower)
        {
            slope = -1 / SlopeOhms;
            return regulated;
        }

        if (LimitAmps <= byPower)
        {
            slope = 0;
            return LimitAmps;
        }

        slope = -byPower / volts;
        return byPower;
    }
}
