using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description;

/// <summary>
/// How far the built box may differ from its description, as parts of the described values either way. What is left out is
/// taken from the assumptions of the library.
/// </summary>
public sealed class DeclaredTolerances
{
    /// <summary>Resistance of each cell.</summary>
    public Given<Ratio>? CellResistance { get; init; }

    /// <summary>Length of each conductor.</summary>
    public Given<Ratio>? Length { get; init; }

    /// <summary>Resistance of each joint that is taken from a class; one that is written counts as measured.</summary>
    public Given<Ratio>? Joint { get; init; }

    /// <summary>Resistance of each relay coil.</summary>
    public Given<Ratio>? Coil { get; init; }

    /// <summary>Current that each part draws at rest.</summary>
    public Given<Ratio>? Standby { get; init; }

    internal static DeclaredTolerances Read(MapReader r) => new()
    {
        CellResistance = r.Optional<Ratio>("cell_resistance", BelowAll),
        Length = r.Optional<Ratio>("length", BelowAll),
        Joint = r.Optional<Ratio>("joint", BelowAll),
        Coil = r.Optional<Ratio>("coil", BelowAll),
        Standby = r.Optional<Ratio>("standby", BelowAll),
    };

    /// <summary>Less than the whole: a resistance stays above zero.</summary>
    private static Bounds BelowAll { get; } = new(0, true, 0.99);
}
