using UnitsNet;
using WireCheck.Quantities;

namespace WireCheck.Description.Reader;

/// <summary>Reads the air around the box and the box itself.</summary>
internal static class SurroundingsReader
{
    internal static Surroundings Read(MapReader r) => new()
    {
        Ambient = r.Required<Range<Temperature>>("ambient", example: "{from: 0 °C, to: 35 °C}"),
        Enclosure = r.OptionalMap("enclosure", ReadEnclosure),
    };

    private static Enclosure ReadEnclosure(MapReader r) => new()
    {
        Walls = r.Word("walls", WordTable.EnclosureWall, "sheet-steel"),
        Inside = r.Required<BoxSize>("inside"),
        Vents = r.OptionalChoice("vents", "none", "passive", "fan"),
        VentArea = r.Optional<Area>("vent_area", Bounds.ZeroOrMore),
        Metal = r.Optional<bool>("metal"),
        BondedTo = ReadBond(r),
        HoldDown = r.Optional<bool>("hold_down"),
        Fan = r.Optional<bool>("fan"),
        Placing = r.Optional<EnclosurePlacing>("placing"),
    };

    private static TerminalReference? ReadBond(MapReader r) =>
        r.Optional<string>("bonded_to") is { } bond && bond.Value != "none" && r.Top("bonded_to") is (_, Layer layer)
            ? r.Terminal(bond, layer.Subject, "bonded_to")
            : null;
}
