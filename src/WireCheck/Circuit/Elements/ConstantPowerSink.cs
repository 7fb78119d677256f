namespace WireCheck.Circuit.Elements;

/// <summary>
/// Takes the same power at any voltage, as a regulated converter does: I = (P / η + P_idle) / V. Below
/// <see cref="FloorVolts"/> the current falls in proportion to the voltage, which no real state of a box uses; it
/// only keeps the function finite. Off, it draws its leakage.
/// </summary>
public sealed class ConstantPowerSink(string name, int a, int b) : Element(name, a, b)
{
    /// <summary>Voltage below which the current no longer rises, V.</summary>
    public const double FloorVolts = 0.25;

    /// <summary>Power delivered, W, 0 or more.</summary>
    public double Watts { get; set; }

    /// <summary>Own consumption while on, W.</summary>
    public double IdleWatts { get; init; }

    /// <summary>Delivered power over input power without the idle part; above 0, at most 1.</summary>
    public double Efficiency { get; init; } = 1;

    public bool On { get; set; }

    /// <summary>Current drawn while off, A.</summary>
    public double OffLeakageAmps { get; set; }

    /// <summary>Part of the power that is asked for, 0 to 1; the solver raises it step by step when it must.</summary>
    internal double Share { get; set; } = 1;

    /// <summary>Power it takes from its input while on, W.</summary>
    public double InputWatts => (Watts / Efficiency) + IdleWatts;

    public override double Current(double volts, out double slope) => On
        ? Current(volts, InputWatts * Share, out slope)
        : ConstantCurrentSink.Current(volts, OffLeakageAmps, 1, out slope);

    internal static double Current(double volts, double watts, out double slope)
    {
        if (volts >= FloorVolts)
        {
            double amps = watts / volts;
            slope = -amps / volts;
            return amps;
        }

        slope = watts / (FloorVolts * FloorVolts) * (volts < 0 ? ConstantCurrentSink.ReversedShare : 1);
        return slope * volts;
    }
}
