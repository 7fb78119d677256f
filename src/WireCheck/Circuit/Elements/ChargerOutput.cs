namespace WireCheck.Circuit.Elements;

/// <summary>A CC-CV charger's output, A its positive pole. See <see cref="OutputCurve"/>.</summary>
public sealed class ChargerOutput(string name, int a, int b) : Element(name, a, b)
{
    /// <summary>Constant-voltage limit, V.</summary>
    public double Volts { get; init; }

    /// <summary>Constant-current limit, A.</summary>
    public double LimitAmps { get; init; }

    /// <summary>What its input can give, W; infinite when the input does not limit.</summary>
    public double PowerLimitWatts { get; init; } = double.PositiveInfinity;

    /// <summary>Slope of its constant-voltage part, Ω, above 0.</summary>
    public double SlopeOhms { get; init; } = 1e-3;

    /// <summary>False when it is unplugged or without power.</summary>
    public bool Connected { get; set; }

    /// <summary>The output as a curve.</summary>
    public OutputCurve Curve => new(Volts, LimitAmps, PowerLimitWatts, SlopeOhms);

    public override bool Reaches => Connected;

    public override double Current(double volts, out double slope)
    {
        if (!Connected)
        {
            slope = 0;
            return 0;
        }

        double delivered = Curve.Delivered(volts, out slope);
        slope = -slope;
        return -delivered;
    }
}
