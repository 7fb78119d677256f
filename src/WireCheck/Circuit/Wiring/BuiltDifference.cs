namespace WireCheck.Circuit.Wiring;

/// <summary>By how much a built box differs from its description: factors of resistance, each above 0.</summary>
/// <param name="Cells">On the resistance of every cell.</param>
/// <param name="Joints">On every joint whose resistance comes from its class; a written one counts as measured.</param>
/// <param name="Coils">On every relay coil.</param>
public sealed record BuiltDifference(double Cells, double Joints, double Coils)
{
    /// <summary>The box as it is described.</summary>
    public static BuiltDifference None { get; } = new(1, 1, 1);

    /// <summary>
    /// True on the bench, where a load draws for minutes: cells have their direct-current resistance in the model of the
    /// lowest resistance too, in which they otherwise have that of the first instant of a short.
    /// </summary>
    public bool CellsAtRest { get; init; }
}
