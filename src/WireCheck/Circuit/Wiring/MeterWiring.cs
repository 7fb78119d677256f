using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>A meter as its standby current.</summary>
public sealed class WiredMeter(Meter meter, ConstantCurrentSink element) : WiredPart(meter)
{
    public Meter Meter { get; } = meter;

    public ConstantCurrentSink Element { get; } = element;

    public override IEnumerable<Element> Elements => [Element];
}

/// <summary>How a meter becomes elements.</summary>
public sealed class MeterWiring : KindWiring<Meter>
{
    public override WiredPart AddElements(Meter part, WiringBuilder builder) =>
        new WiredMeter(part, builder.Add(new ConstantCurrentSink(
            part.Id, builder.Node(part.Id, "+"), builder.Node(part.Id, "-"), part.Standby.Value.Amperes)));
}
