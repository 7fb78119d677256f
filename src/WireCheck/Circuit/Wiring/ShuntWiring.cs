using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>A shunt as its resistance, rated drop over rated current.</summary>
public sealed class WiredShunt(Shunt shunt, Resistance element) : WiredPart(shunt)
{
    public Shunt Shunt { get; } = shunt;

    /// <summary>Positive current flows from <c>battery</c> to <c>load</c>.</summary>
    public Resistance Element { get; } = element;

    public override IEnumerable<Element> Elements => [Element];
}

/// <summary>How a shunt becomes elements.</summary>
public sealed class ShuntWiring : KindWiring<Shunt>
{
    public override WiredPart AddElements(Shunt part, WiringBuilder builder) =>
        new WiredShunt(part, builder.Add(new Resistance(
            part.Id, builder.Node(part.Id, "battery"), builder.Node(part.Id, "load"),
            part.Drop.Value.Volts / part.Rated.Value.Amperes)));
}
