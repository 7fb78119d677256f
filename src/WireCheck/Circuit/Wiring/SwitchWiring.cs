using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>A switch: a contact per pole, worked together, and its lamp.</summary>
public sealed class WiredSwitch(Switch part, IReadOnlyList<Contact> poles, Resistance? lamp) : WiredPart(part)
{
    public Switch Switch { get; } = part;

    /// <summary>Positive current flows from terminal 1 to 2, and from 3 to 4.</summary>
    public IReadOnlyList<Contact> Poles { get; } = poles;

    /// <summary>The pilot lamp between terminal 2 and <c>lamp-</c>.</summary>
    public Resistance? Lamp { get; } = lamp;

    public override IEnumerable<Element> Elements => [.. Poles, .. Lamp is null ? Array.Empty<Element>() : [Lamp]];

    /// <summary>True when the switch is closed.</summary>
    public bool Closed
    {
        get => Poles[0].Closed;
        set
        {
            foreach (Contact pole in Poles)
            {
                pole.Closed = value;
            }
        }
    }
}

/// <summary>How a switch becomes elements.</summary>
public sealed class SwitchWiring : KindWiring<Switch>
{
    public override WiredPart AddElements(Switch part, WiringBuilder builder)
    {
        double ohms = part.ContactResistance.Value.Ohms;
        List<Contact> poles = [builder.Add(new Contact(
            part.Id, builder.Node(part.Id, "1"), builder.Node(part.Id, "2"), ohms))];
        if (part.Poles.Value > 1)
        {
            poles.Add(builder.Add(new Contact(
                part.Id + ".pole2", builder.Node(part.Id, "3"), builder.Node(part.Id, "4"), ohms)));
        }

        Resistance? lamp = part.Lamp is null ? null : builder.Add(new Resistance(
            part.Id + ".lamp", builder.Node(part.Id, "2"), builder.Node(part.Id, "lamp-"),
            part.Lamp.Voltage.Value.Volts / part.Lamp.Current.Value.Amperes));
        return new WiredSwitch(part, poles, lamp);
    }
}
