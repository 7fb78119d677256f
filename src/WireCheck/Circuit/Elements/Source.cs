namespace WireCheck.Circuit.Elements;

/// <summary>A voltage behind a resistance (Thévenin): a cell, a vehicle's battery. A is its positive pole.</summary>
public sealed class Source(string name, int a, int b, double emf, double ohms) : Element(name, a, b)
{
    private double _ohms = Resistance.Positive(ohms);

    /// <summary>Open-circuit voltage of A above B, V.</summary>
    public double Emf { get; set; } = emf;

    /// <summary>Inner resistance, Ω, above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Zero, negative or not a number.</exception>
    public double Ohms
    {
        get => _ohms;
        set => _ohms = Resistance.Positive(value);
    }

    /// <summary>False when it is unplugged.</summary>
    public bool Connected { get; set; } = true;

    public override bool Ties => Connected;

    public override bool Reaches => Connected;

    public override bool IsLinear => true;

    public override double Current(double volts, out double slope)
    {
        slope = Connected ? 1 / _ohms : 0;
        return (volts - Emf) * slope;
    }

    public override double CurrentInTwoParts(double volts, double rest, out double slope)
    {
        slope = Connected ? 1 / _ohms : 0;
        return ((volts - Emf) + rest) * slope;
    }
}
