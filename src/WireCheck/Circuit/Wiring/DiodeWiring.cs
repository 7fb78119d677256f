using WireCheck.Circuit.Elements;

namespace WireCheck.Circuit.Wiring;

/// <summary>A diode, with its reverse leakage beside it where one is given.</summary>
public sealed class WiredDiode(Description.Kinds.Diode diode, Elements.Diode element, Resistance? leakage) : WiredPart(diode)
{
    public Description.Kinds.Diode Diode { get; } = diode;

    /// <summary>Positive current flows from A to K.</summary>
    public Elements.Diode Element { get; } = element;

    /// <summary>Reverse leakage, as the resistance that its rating makes at the warmest the box is used.</summary>
    public Resistance? Leakage { get; } = leakage;

    public override IEnumerable<Element> Elements => [Element, .. Leakage is null ? Array.Empty<Element>() : [Leakage]];
}

/// <summary>How a diode becomes elements.</summary>
public sealed class DiodeWiring : KindWiring<Description.Kinds.Diode>
{
    public override WiredPart AddElements(Description.Kinds.Diode part, WiringBuilder builder)
    {
        int anode = builder.Node(part.Id, "A");
        int cathode = builder.Node(part.Id, "K");
        Elements.Diode element = builder.Add(new Elements.Diode(
            part.Id, anode, cathode, SupplyModels.Junction(part)));
        Resistance? leakage = part.Leakage is { Value.Amperes: > 0 } given
            ? builder.Add(new Resistance(
                part.Id + ".leakage", anode, cathode, part.Volts.Value.Volts / (given.Value.Amperes * Growth(part, builder))))
            : null;
        return new WiredDiode(part, element, leakage);
    }

    /// <summary>
    /// Leakage at the warmest the box is used over that of the sheet at 25 °C, 2^(ΔT / 10 K) of a junction; 1 for a transistor
    /// driven as a diode, whose figure is what its driver draws, and 1 in the cold.
    /// </summary>
    private static double Growth(Description.Kinds.Diode part, WiringBuilder builder) =>
        part.Style.Value == Description.Kinds.DiodeStyle.Ideal
            ? 1
            : Math.Max(1, Math.Pow(
                2,
                (builder.Pack.Surroundings.Ambient.Value.To.DegreesCelsius - builder.Data.Assumed("diode_leakage_reference"))
                    / builder.Data.Assumed("diode_leakage_doubling")));
}
