using UnitsNet;
using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>Reads wire at hand and prices.</summary>
internal static class SupplyReaders
{
    internal static StockReel ReadReel(MapReader r) => new()
    {
        Position = r.Position,
        Size = r.Required<ConductorSize>("size"),
        Length = r.Required<Length>("length"),
        Colour = r.Optional<string>("colour"),
        Insulation = r.OptionalWord("insulation", WordTable.Insulation),
    };

    internal static CostList ReadCosts(MapReader r)
    {
        Dictionary<string, Given<double>> prices = new(StringComparer.Ordinal);
        foreach ((YamlEntry entry, Layer layer) in r.Entries("prices"))
        {
            prices[entry.Key.Text] = r.Read<double>(entry.Value, layer, $"prices.{entry.Key.Text}", Bounds.ZeroOrMore);
        }

        return new CostList { Currency = r.Optional<string>("currency"), Prices = prices };
    }
}
