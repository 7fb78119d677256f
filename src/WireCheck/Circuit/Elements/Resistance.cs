namespace WireCheck.Circuit.Elements;

/// <summary>A resistance, Ohm's law.</summary>
public sealed class Resistance(string name, int a, int b, double ohms) : Element(name, a, b)
{
    private double _ohms = Positive(ohms);
    private double _siemens = 1 / ohms;

    /// <summary>Ω, above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Zero, negative or not a number.</exception>
    public double Ohms
    {
        get => _ohms;
        set => (_ohms, _siemens) = (Positive(value), 1 / value);
    }

    public override bool Ties => true;

    public override bool IsLinear => true;

    public override double Current(double volts, out double slope)
    {
        slope = _siemens;
        return volts * _siemens;
    }

    internal static double Positive(double ohms) => ohms > 0 && double.IsFinite(ohms)
        ? ohms
        : throw new ArgumentOutOfRangeException(nameof(ohms), ohms, "a resistance must be above 0 Ω");
}
