namespace WireCheck.Circuit.Elements;

/// <summary>
/// A solar panel, A its positive pole. Lit: I = I_sc (1 - C1 (exp(V / (C2 V_oc)) - 1)), the explicit two-constant
/// curve through short circuit, the maximum-power point and open circuit (H. S. Rauschenbach, Solar Cell Array
/// Design Handbook, 1980, from memory); here C1 and C2 are solved so that all three points are met exactly. Dark:
/// a leakage, or a string of diodes beside a shunt resistance.
/// </summary>
public sealed class PanelCurve : Element
{
    private readonly double _c1;
    private readonly double _c2;

    /// <summary>Makes the curve through three points.</summary>
    /// <exception cref="ArgumentException">The points are not those of a panel: 0 &lt; V_mp &lt; V_oc, 0 &lt; I_mp &lt; I_sc and a curve that bulges.</exception>
    public PanelCurve(string name, int a, int b, PanelPoints points)
        : base(name, a, b)
    {
        Points = points;
        (_c1, _c2) = PanelFit.Constants(points);
    }

    public PanelPoints Points { get; }

    /// <summary>False when it is unplugged.</summary>
    public bool Connected { get; set; }

    /// <summary>In full sun; otherwise dark.</summary>
    public bool Lit { get; set; }

    /// <summary>Current drawn in the dark, A.</summary>
    public double DarkLeakageAmps { get; init; }

    /// <summary>The dark panel's junctions in series; null when only the leakage is known.</summary>
    public DiodeModel? DarkDiodes { get; init; }

    /// <summary>Shunt resistance of the dark panel, Ω; infinite for none.</summary>
    public double DarkShuntOhms { get; init; } = double.PositiveInfinity;

    public override bool Reaches => Connected;

    public override double Current(double volts, out double slope)
    {
        if (!Connected)
        {
            slope = 0;
            return 0;
        }

        return Lit ? LitCurrent(volts, out slope) : DarkCurrent(volts, out slope);
    }

    private double LitCurrent(double volts, out double slope)
    {
        double scale = _c2 * Points.OpenCircuitVolts;

        // Far above open circuit the exponential goes on as a straight line; no box reaches that.
        double bounded = Math.Min(volts, 1.5 * Points.OpenCircuitVolts);
        double exponential = Math.Exp(bounded / scale);
        slope = Points.ShortCircuitAmps * _c1 * exponential / scale;
        double at = -Points.ShortCircuitAmps * (1 - (_c1 * (exponential - 1)));
        return at + ((volts - bounded) * slope);
    }

    private double DarkCurrent(double volts, out double slope)
    {
        double leakage = ConstantCurrentSink.Current(volts, DarkLeakageAmps, 1, out slope);
        if (DarkDiodes is null)
        {
            return leakage;
        }

        double junctions = new Diode(Name, A, B, DarkDiodes).Current(volts, out double diodeSlope);
        slope += diodeSlope + (1 / DarkShuntOhms);
        return leakage + junctions + (volts / DarkShuntOhms);
    }
}

/// <summary>The three points printed on a panel, at standard test conditions.</summary>
public readonly record struct PanelPoints(
    double OpenCircuitVolts, double MaximumPowerVolts, double ShortCircuitAmps, double MaximumPowerAmps);
