namespace WireCheck.Circuit.Elements;

/// <summary>
/// A DC-DC converter between an input pair (A, B) and an output pair. The output follows an
/// <see cref="OutputCurve"/>; the input takes P = V_out I_out / η + P_idle at whatever voltage it finds.
/// </summary>
public sealed class ConverterStage(string name, int a, int b, int outA, int outB) : Element(name, a, b)
{
    /// <summary>Positive output node.</summary>
    public int OutA { get; } = outA;

    /// <summary>Negative output node.</summary>
    public int OutB { get; } = outB;

    public double Volts { get; init; }

    public double LimitAmps { get; init; }

    /// <summary>What its input can give at its output, W; infinite when the input does not limit.</summary>
    public double PowerLimitWatts { get; set; } = double.PositiveInfinity;

    public double SlopeOhms { get; init; } = 1e-3;

    /// <summary>
    /// It seeks the best voltage of its input and so never lets it break down: an answer with its input below the floor is none.
    /// </summary>
    public bool HoldsInput { get; set; }

    /// <summary>Output over input power without the idle part; above 0, at most 1.</summary>
    public double Efficiency { get; init; } = 1;

    public double IdleWatts { get; init; }

    public double OffLeakageAmps { get; set; }

    public bool On { get; set; }

    /// <summary>The output as a curve.</summary>
    public OutputCurve Curve => new(Volts, LimitAmps, PowerLimitWatts, SlopeOhms);

    /// <summary>Power at the output, W; the solver keeps it in step with the output voltage.</summary>
    public double OutputWatts { get; internal set; }

    /// <summary>Part of the input power that is asked for, 0 to 1; the solver raises it step by step when it must.</summary>
    internal double Share { get; set; } = 1;

    /// <summary>Power taken from the input while on, W.</summary>
    public double InputWatts => (OutputWatts / Efficiency) + IdleWatts;

    /// <summary>Current into the input.</summary>
    public override double Current(double volts, out double slope) => On
        ? ConstantPowerSink.Current(volts, InputWatts * Share, out slope)
        : ConstantCurrentSink.Current(volts, OffLeakageAmps, 1, out slope);

    /// <summary>How the input current follows the output voltage at the present output power, S.</summary>
    internal double Coupling(double inputVolts, double outputVolts)
    {
        if (!On)
        {
            return 0;
        }

        double amps = Delivered(outputVolts, out double slope);
        double wattsSlope = outputVolts * amps > 0 ? amps + (outputVolts * slope) : 0;
        return ConstantPowerSink.Current(inputVolts, Share * wattsSlope / Efficiency, out _);
    }

    /// <summary>Current delivered at the output, A, and its slope, S, never positive.</summary>
    public double Delivered(double outputVolts, out double slope)
    {
        if (On)
        {
            return Curve.Delivered(outputVolts, out slope);
        }

        slope = 0;
        return 0;
    }
}
