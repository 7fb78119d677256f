namespace WireCheck.Sizing;

/// <summary>One thing that a value may be: a size of wire, a rating of a fuse, a class of relays.</summary>
/// <param name="Text">The value as a description writes it: <c>6 AWG</c>, <c>30 A</c>, <c>relay-12v-40a</c>.</param>
/// <param name="Weight">
/// What it costs to choose it; less is better. Money where the description gives prices, else the metal of a wire in m³, else
/// its place among the options.
/// </param>
public sealed record SizeOption(string Text, double Weight)
{
    /// <summary>Amperes that it is made for; null where that depends on how it lies, as with wire.</summary>
    public double? Amps { get; init; }

    /// <summary>Volume of the metal in m³, all legs of a wire together; 0 for anything but wire.</summary>
    public double Metal { get; init; }

    /// <summary>Resistance in Ω at 20 °C, all legs together; 0 for anything but wire. Tells how much a step changes a drop.</summary>
    public double Ohms { get; init; }

    /// <summary>Price of all that this choice takes; null when the description gives none.</summary>
    public double? Price { get; init; }
}
