using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>A resistor.</summary>
public sealed class WiredResistor(Resistor resistor, Resistance element) : WiredPart(resistor)
{
    public Resistor Resistor { get; } = resistor;

    public Resistance Element { get; } = element;

    public override IEnumerable<Element> Elements => [Element];
}

/// <summary>How a resistor becomes elements.</summary>
public sealed class ResistorWiring : KindWiring<Resistor>
{
    public override WiredPart AddElements(Resistor part, WiringBuilder builder) =>
        new WiredResistor(part, builder.Add(new Resistance(
            part.Id, builder.Node(part.Id, "1"), builder.Node(part.Id, "2"), part.Resistance.Value.Ohms)));
}
