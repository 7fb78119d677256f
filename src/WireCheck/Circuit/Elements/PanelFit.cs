namespace WireCheck.Circuit.Elements;

/// <summary>Finds the constants of <see cref="PanelCurve"/>.</summary>
internal static class PanelFit
{
    /// <summary>
    /// C1 and C2 such that the current is I_mp at V_mp and 0 at V_oc:
    /// (exp(V_mp / (C2 V_oc)) - 1) / (exp(1 / C2) - 1) = 1 - I_mp / I_sc, found by halving intervals.
    /// </summary>
    internal static (double C1, double C2) Constants(PanelPoints points)
    {
        double voltage = points.MaximumPowerVolts / points.OpenCircuitVolts;
        double missing = 1 - (points.MaximumPowerAmps / points.ShortCircuitAmps);
        if (!(voltage is > 0 and < 1) || !(missing is > 0 and < 1) || missing >= voltage)
        {
            throw new ArgumentException("the panel's maximum-power point does not lie inside its curve", nameof(points));
        }

        (double low, double high) = (1e-3, 1e3);
        for (int i = 0; i < 200; i++)
        {
            double middle = Math.Sqrt(low * high);
            if (Ratio(voltage, middle) < missing)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        double c2 = Math.Sqrt(low * high);
        return (1 / (Math.Exp(1 / c2) - 1), c2);
    }

    private static double Ratio(double voltage, double c2) =>
        Math.Exp((voltage - 1) / c2) * (1 - Math.Exp(-voltage / c2)) / (1 - Math.Exp(-1 / c2));
}
