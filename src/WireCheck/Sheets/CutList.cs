using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Quantities;

namespace WireCheck.Sheets;

/// <summary>Each piece of wire to cut, and how much of each kind is needed against what is at hand.</summary>
internal static class CutList
{
    /// <summary>Pieces in the order of the description.</summary>
    internal static Sheet Pieces(Pack pack) => new(
        "cut-list",
        "Cut list",
        [
            "Lengths are those of the description, terminal to terminal. Nothing is added for stripping, bends or a second try; "
            + "measure the run with a string before you cut.",
            "Label both ends before the wire goes in.",
        ],
        ["wire", "length, mm", "size", "colour", "insulation", "end at from", "end at to", "label from", "label to", "sleeve, bundle, wall"],
        [
            .. pack.Conductors.Select(Piece),
            .. SenseLead.In(pack).Select(l => (IReadOnlyList<string>)
            [
                l.Id, SheetWords.Millimetres(l.Leads.Length.Value.Meters), l.Leads.Size.Value.ToString(), "", "",
                $"at {l.Tap}", $"plug at {l.Id}", $"{l.Id} {l.Tap}", $"{l.Id} plug", l.FuseWords,
            ]),
        ]);

    /// <summary>Metres of each size, insulation and colour, against the reels at hand.</summary>
    internal static Sheet Needed(Pack pack) => new(
        "wire-needed",
        "Wire needed",
        pack.Stock.Count == 0
            ? ["Sums of the cut list. The description names no stock."]
            : ["Sums of the cut list against the reels of the description: of the same size, and of the colour and insulation where the reel tells them."],
        ["size", "insulation", "colour", "pieces", "needed, m", "at hand, m", "to buy, m"],
        [.. pack.Conductors.GroupBy(c => (Size: c.Size.Value, Insulation: c.Insulation.Value, Colour: SheetWords.Colour(c), Material: c.Material.Value))
            .OrderBy(g => g.Key.Size.System).ThenBy(g => g.Key.Size.Number).ThenBy(g => g.Key.Colour, StringComparer.Ordinal)
            .Select(g => Sum(pack, [.. g])),
            .. SenseLead.In(pack).GroupBy(l => l.Leads).Select(g => (IReadOnlyList<string>)
            [
                g.Key.Size.Value.ToString(), "sense leads", "", FormattableString.Invariant($"{g.Count()}"),
                QuantityText.Plain(g.Count() * g.Key.Length.Value.Meters, 3), "", QuantityText.Plain(g.Count() * g.Key.Length.Value.Meters, 3),
            ])]);

    private static IReadOnlyList<string> Piece(Conductor wire) =>
    [
        wire.Id,
        SheetWords.Millimetres(wire.Length.Value.Meters),
        wire.Size.Value.ToString(),
        SheetWords.Colour(wire),
        wire.Material.Value == "copper" ? wire.Insulation.Value : $"{wire.Insulation.Value}, {wire.Material.Value}",
        SheetWords.End(wire.FromEnd, wire.From),
        SheetWords.End(wire.ToEnd, wire.To),
        Labels.Of(wire, wire.From),
        Labels.Of(wire, wire.To),
        Extras(wire),
    ];

    private static string Extras(Conductor wire)
    {
        List<string> extras = [];
        if (wire.Sleeve?.Value == true)
        {
            extras.Add("sleeve");
        }

        if (wire.Bundle is { } bundle)
        {
            extras.Add($"bundle {bundle.Value}");
        }

        if (wire.ThroughWall is { } wall)
        {
            extras.Add(wall.Value switch
            {
                WallPassage.Grommet => "grommet",
                WallPassage.Gland => "gland",
                _ => "bare hole",
            });
        }

        return string.Join(", ", extras);
    }

    private static IReadOnlyList<string> Sum(Pack pack, IReadOnlyList<Conductor> wires)
    {
        Conductor first = wires[0];
        double needed = wires.Sum(w => w.Length.Value.Meters);
        double atHand = pack.Stock.Where(r => r.Size.Value == first.Size.Value
            && (r.Insulation is null || r.Insulation.Value == first.Insulation.Value)
            && (r.Colour is null || r.Colour.Value == SheetWords.Colour(first))).Sum(r => r.Length.Value.Meters);
        return
        [
            first.Size.Value.ToString(),
            first.Material.Value == "copper" ? first.Insulation.Value : $"{first.Insulation.Value}, {first.Material.Value}",
            SheetWords.Colour(first),
            FormattableString.Invariant($"{wires.Count}"),
            QuantityText.Plain(needed, 3),
            QuantityText.Plain(atHand, 3),
            QuantityText.Plain(Math.Max(0, needed - atHand), 3),
        ];
    }
}
