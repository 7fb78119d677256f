using WireCheck.Circuit.Elements;
using WireCheck.Description;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>
/// A busbar: its studs stand at equal distances along its length, a resistance between each two that are used.
/// The bare id is the middle of the bar.
/// </summary>
public sealed class WiredBusbar(Busbar busbar, WiringData data, IReadOnlyList<(Resistance Element, double Metres)> pieces)
    : WiredPart(busbar)
{
    public Busbar Busbar { get; } = busbar;

    /// <summary>The pieces of bar between used places, from stud 1 on.</summary>
    public IReadOnlyList<Resistance> Pieces { get; } = [.. pieces.Select(p => p.Element)];

    public override IEnumerable<Element> Elements => Pieces;

    public override void SetConditions(Conditions conditions)
    {
        double perMetre = data.BarOhmsPerMetre(Busbar.Section.Value, Busbar.Material?.Value, conditions.CopperCelsius);
        foreach ((Resistance element, double metres) in pieces)
        {
            element.Ohms = perMetre * metres;
        }
    }
}

/// <summary>How a busbar becomes elements.</summary>
public sealed class BusbarWiring : KindWiring<Busbar>
{
    public override void AddNodes(Busbar part, WiringBuilder builder)
    {
        foreach (string place in PlacesInOrder(part, builder.Pack))
        {
            builder.AddNode(part.Id, place);
        }
    }

    public override WiredPart AddElements(Busbar part, WiringBuilder builder)
    {
        string[] places = PlacesInOrder(part, builder.Pack);
        double last = Math.Max(1, LastStud(part, builder.Pack));
        List<(Resistance, double)> pieces = [];
        for (int i = 1; i < places.Length; i++)
        {
            double metres = (Along(places[i], last) - Along(places[i - 1], last)) * part.Length.Value.Meters;
            string name = $"{part.Id}.{Word(places[i - 1])}-{Word(places[i])}";
            pieces.Add((builder.Add(new Resistance(
                name, builder.Node(part.Id, places[i - 1]), builder.Node(part.Id, places[i]), 1)), metres));
        }

        return new WiredBusbar(part, builder.Data, pieces);
    }

    /// <summary>Places where something is fixed, in order along the bar; "" is the middle.</summary>
    private static string[] PlacesInOrder(Busbar bar, Pack pack)
    {
        double last = Math.Max(1, LastStud(bar, pack));
        string[] used = [.. TerminalReferences.In(pack).Where(r => r.PartId == bar.Id).Select(r => r.Terminal).Distinct()];
        return used.Length == 0 ? [""] : [.. used.OrderBy(p => Along(p, last)).ThenBy(p => p.Length)];
    }

    private static int LastStud(Busbar bar, Pack pack) => Math.Max(
        bar.Studs?.Value ?? 0,
        TerminalReferences.In(pack).Where(r => r.PartId == bar.Id && r.Terminal.Length > 0)
            .Select(r => int.Parse(r.Terminal, System.Globalization.CultureInfo.InvariantCulture))
            .DefaultIfEmpty(0).Max());

    /// <summary>Part of the bar's length before a place, 0 to 1. A stud on the very middle keeps a hair's distance from the bare id.</summary>
    private static double Along(string place, double last)
    {
        if (place.Length == 0)
        {
            return 0.5;
        }

        double stud = double.Parse(place, System.Globalization.CultureInfo.InvariantCulture);
        double along = last == 1 ? 0.5 : (stud - 1) / (last - 1);
        return along == 0.5 ? 0.505 : along;
    }

    private static string Word(string place) => place.Length == 0 ? "middle" : place;
}
