namespace WireCheck.Quantities;

/// <summary>The two systems in which wire is sold.</summary>
public enum SizeSystem
{
    /// <summary>American wire gauge, ASTM B258.</summary>
    Awg,

    /// <summary>Nominal section in square millimetres, IEC 60228.</summary>
    Metric,
}

/// <summary>A conductor's size as it is printed on the wire.</summary>
/// <param name="System">Gauge or square millimetres.</param>
/// <param name="Number">
/// Gauge number, 24 down to 0 and then -1 (2/0), -2 (3/0), -3 (4/0); or the nominal section in mm², 0.2 to 120.
/// </param>
public readonly record struct ConductorSize(SizeSystem System, double Number)
{
    /// <summary>As the trade writes it: <c>6 AWG</c>, <c>2/0 AWG</c>, <c>10 mm²</c>.</summary>
    public override string ToString() => System switch
    {
        SizeSystem.Metric => FormattableString.Invariant($"{Number:0.##} mm²"),
        _ when Number <= 0 => FormattableString.Invariant($"{1 - Number:0}/0 AWG"),
        _ => FormattableString.Invariant($"{Number:0} AWG"),
    };
}
