using UnitsNet;
using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>Wire at hand.</summary>
public sealed class StockReel
{
    public required Position Position { get; init; }

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
