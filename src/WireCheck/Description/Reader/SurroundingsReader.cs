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
    };

    private static Given<string>? ReadBond(MapReader r)
    {
        Given<string>? bond = r.Optional<string>("bonded_to");
        if (bond is null || bond.Value == "none" || r.Top("bonded_to") is not (_, Layer layer))
        {
            return bond?.Value == "none" ? null : bond;
        }

        r.Terminal(bond, layer.Subject, "bonded_to");
        return bond;
    }
}
