namespace WireCheck.Circuit.Elements;

/// <summary>A diode with its anode at A. See <see cref="DiodeModel"/>.</summary>
public sealed class Diode(string name, int a, int b, DiodeModel model) : Element(name, a, b)
{
    public DiodeModel Model { get; } = model;

    /// <summary>
    /// Solves the junction's equation for the current by Newton's method on its logarithm, which converges from
    /// any start; the slope is bounded by 1 / R_s.
    /// </summary>
    public override double Current(double volts, out double slope)
    {
        (double saturation, double emission, double series) = (Model.SaturationAmps, Model.EmissionVolts, Model.SeriesOhms);

        // With y = (I + I_s) / I_s: ln y + (I_s R_s / n V_T) y = (V + I_s R_s) / n V_T.
        double factor = saturation * series / emission;
        double right = (volts / emission) + factor;
        double log = Start(right, factor);
        for (int i = 0; i < 50; i++)
        {
            double exponential = factor * Math.Exp(log);
            double step = (log + exponential - right) / (1 + exponential);
            log -= step;
            if (Math.Abs(step) < 1e-15 * Math.Max(1, Math.Abs(log)))
            {
                break;
            }
        }

        double carried = saturation * Math.Exp(log);
        double junction = carried / emission;
        slope = junction / (1 + (junction * series));
        return carried - saturation;
    }

    /// <summary>Where the junction holds nearly all the voltage, or where the series resistance does.</summary>
    private static double Start(double right, double factor) =>
        right < 1 - Math.Log(factor) ? right : Math.Log(right / factor);
}
