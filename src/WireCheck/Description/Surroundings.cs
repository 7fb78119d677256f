using UnitsNet;
using WireCheck.Quantities;

namespace WireCheck.Description;

/// <summary>The air around the box and the box itself.</summary>
public sealed class Surroundings
{
    /// <summary>Coldest and hottest air around the box in use.</summary>
    public required Given<Range<Temperature>> Ambient { get; init; }

    /// <summary>The box; null when the parts stand open.</summary>
    public Enclosure? Enclosure { get; init; }
}

/// <summary>The box around the parts.</summary>
public sealed class Enclosure
{
    /// <summary>Wall material: sheet-steel, aluminium, plastic, wood.</summary>
    public required Given<string> Walls { get; init; }

    public required Given<BoxSize> Inside { get; init; }

    /// <summary>Openings: none, passive, fan.</summary>
    public Given<string>? Vents { get; init; }

    public Given<Area>? VentArea { get; init; }

    /// <summary>The wall conducts; null means as the wall material tells.</summary>
    public Given<bool>? Metal { get; init; }

    /// <summary>Whether the wall conducts: as written, else as its material does.</summary>
    public bool Conducts => Metal?.Value ?? Walls.Value is "sheet-steel" or "aluminium";

    /// <summary>Terminal or node the metal is joined to; null when floating.</summary>
    public TerminalReference? BondedTo { get; init; }

    /// <summary>The cells cannot move.</summary>
    public Given<bool>? HoldDown { get; init; }

    public Given<bool>? Fan { get; init; }

    /// <summary>How it is placed while it works; null means standing.</summary>
    public Given<EnclosurePlacing>? Placing { get; init; }
}
