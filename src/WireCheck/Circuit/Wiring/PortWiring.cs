using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>A port as the contact of each pole between the inside wiring and what is plugged.</summary>
public sealed class WiredPort(Port port, WiringData data, Resistance plus, Resistance minus) : WiredPart(port)
{
    /// <summary>Name of the outer side of the positive contact.</summary>
    public const string PlugPlus = "plug+";

    /// <summary>Name of the outer side of the negative contact.</summary>
    public const string PlugMinus = "plug-";

    public Port Port { get; } = port;

    /// <summary>Positive current leaves the box by the + contact.</summary>
    public Resistance Plus { get; } = plus;

    /// <summary>Positive current comes back into the box by the - contact.</summary>
    public Resistance Minus { get; } = minus;

    public override IEnumerable<Element> Elements => [Plus, Minus];

    public override void SetConditions(Conditions conditions)
    {
        double ohms = data.PortContactOhms(Port, conditions.HighestResistance);
        Plus.Ohms = ohms;
        Minus.Ohms = ohms;
    }
}

/// <summary>How a port becomes elements.</summary>
public sealed class PortWiring : KindWiring<Port>
{
    public override void AddNodes(Port part, WiringBuilder builder)
    {
        base.AddNodes(part, builder);
        builder.AddNode(part.Id, WiredPort.PlugPlus);
        builder.AddNode(part.Id, WiredPort.PlugMinus);
    }

    public override WiredPart AddElements(Port part, WiringBuilder builder)
    {
        double ohms = part.ContactResistance.Value.Ohms;
        return new WiredPort(
            part,
            builder.Data,
            builder.Add(new Resistance(
                part.Id + ".+", builder.Node(part.Id, "+"), builder.Node(part.Id, WiredPort.PlugPlus), ohms)),
            builder.Add(new Resistance(
                part.Id + ".-", builder.Node(part.Id, WiredPort.PlugMinus), builder.Node(part.Id, "-"), ohms)));
    }
}
