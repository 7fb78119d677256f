namespace WireCheck.Circuit.Elements;

/// <summary>A contact: a resistance when closed, nothing when open.</summary>
public sealed class Contact(string name, int a, int b, double ohms) : Element(name, a, b)
{
    private double _ohms = Resistance.Positive(ohms);

    /// <summary>Resistance when closed, Ω, above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Zero, negative or not a number.</exception>
    public double Ohms
    {
        get => _ohms;
        set => _ohms = Resistance.Positive(value);
    }

    public bool Closed { get; set; }

    public override bool Ties => Closed;

    public override bool Reaches => Closed;

    public override bool IsLinear => true;

    public override double Current(double volts, out double slope)
    {
        slope = Closed ? 1 / _ohms : 0;
        return volts * slope;
    }
}
