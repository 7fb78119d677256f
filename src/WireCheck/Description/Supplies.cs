using UnitsNet;
using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>Something at hand, or that the builder allows: a reel of wire, or a part class.</summary>
public abstract class StockEntry
{
    public required Position Position { get; init; }
}

/// <summary>A part class at hand. Where classes of its section are named, no others are chosen.</summary>
public sealed class StockPart : StockEntry
{
    /// <summary>Name of the class in the library.</summary>
    public required Given<string> Part { get; init; }

    /// <summary>Ratings there are of it, for fuses and breakers; empty means all that are made.</summary>
    public IReadOnlyList<Given<ElectricCurrent>> Ratings { get; init; } = [];
}

/// <summary>Wire at hand.</summary>
public sealed class StockReel : StockEntry
{
    public required Given<ConductorSize> Size { get; init; }

    public required Given<Length> Length { get; init; }

    public Given<string>? Colour { get; init; }

    public Given<string>? Insulation { get; init; }
}

/// <summary>What things cost.</summary>
public sealed class CostList
{
    /// <summary>Currency in the builder's words; null when it is not told.</summary>
    public Given<string>? Currency { get; init; }

    /// <summary>Price of a part by its id or class, of wire by its size (<c>6 AWG</c>) and for each metre.</summary>
    public required IReadOnlyDictionary<string, Given<double>> Prices { get; init; }
}
