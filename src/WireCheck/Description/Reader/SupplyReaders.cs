using UnitsNet;
using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>Reads wire at hand and prices.</summary>
internal static class SupplyReaders
{
    /// <summary>A part class where one is named, else a reel.</summary>
    internal static StockEntry ReadStock(MapReader r) => r.Has("part", typeof(string)) ? ReadPart(r) : ReadReel(r);

    private static StockPart ReadPart(MapReader r)
    {
        Given<string> part = r.Required<string>("part");
        r.Has("ratings", typeof(ElectricCurrent));
        string[] known = [.. PartSections.All.SelectMany(s => r.Context.Classes.Names(s.Name))];
        if (part.Value.Length > 0 && !known.Contains(part.Value))
        {
            r.Note("part", InputMessages.UnknownWord(r.Id, "part", part.Value, known));
        }

        return new StockPart
        {
            Position = r.Position,
            Part = part,
            Ratings =
            [
                .. r.OneOrMany("ratings", typeof(ElectricCurrent)).Select(item => r.Read<ElectricCurrent>(item.Node, item.Layer, "ratings", null)),
            ],
        };
    }

    private static StockReel ReadReel(MapReader r) => new()
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
