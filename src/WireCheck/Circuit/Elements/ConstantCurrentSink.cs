namespace WireCheck.Circuit.Elements;

/// <summary>
/// Draws the same current at any voltage above its knee; below the knee in proportion, and next to nothing when the
/// voltage is reversed (a thousandth of the slope below the knee, so that a node it alone hangs on is still defined).
/// </summary>
public sealed class ConstantCurrentSink(string name, int a, int b, double amps) : Element(name, a, b)
{
    /// <summary>Slope when reversed, as a part of the slope below the knee.</summary>
    internal const double ReversedShare = 1e-3;

    /// <summary>Current above the knee, A, 0 or more.</summary>
    public double Amps { get; set; } = amps;

    /// <summary>Voltage at which the full current is reached, V, above 0.</summary>
    public double KneeVolts { get; init; } = 1;

    public override double Current(double volts, out double slope) => Current(volts, Amps, KneeVolts, out slope);

    internal static double Current(double volts, double amps, double knee, out double slope)
    {
        if (volts >= knee)
        {
            slope = 0;
            return amps;
        }

        slope = amps / knee * (volts < 0 ? ReversedShare : 1);
        return slope * volts;
    }
}
