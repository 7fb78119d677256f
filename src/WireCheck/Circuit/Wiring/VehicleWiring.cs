using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>A vehicle's outlet as a voltage behind the resistance of its battery and cable, and its own fuse. Current may flow into it.</summary>
public sealed class WiredVehicle(Vehicle vehicle, Source element, Contact fuse) : WiredPart(vehicle)
{
    public Vehicle Vehicle { get; } = vehicle;

    /// <summary>Its battery; its positive end lies behind the fuse.</summary>
    public Source Element { get; } = element;

    /// <summary>Its own fuse, which only shorts open.</summary>
    public Contact Fuse { get; } = fuse;

    /// <summary>Node of its positive contact.</summary>
    public int Plus => Fuse.B;

    /// <summary>Node of its negative contact.</summary>
    public int Minus => Element.B;

    public override IEnumerable<Element> Elements => [Element, Fuse];

    /// <summary>Powered means engine running, unpowered engine off with the outlet still on.</summary>
    public void SetState(SourceState state)
    {
        Element.Connected = state != SourceState.Absent;
        Element.Emf = (state == SourceState.Powered ? Vehicle.Voltage.Value.To : Vehicle.Voltage.Value.From).Volts;
    }
}

/// <summary>How a vehicle becomes elements.</summary>
public sealed class VehicleWiring : KindWiring<Vehicle>
{
    public override WiredPart AddElements(Vehicle part, WiringBuilder builder)
    {
        (int plus, int minus) = Attachment.Nodes(part, part.At?.Value, builder);
        int inner = builder.Network.AddNode(part.Id + ".inner");

        // The description gives one resistance for all of the way; where on it the fuse stands changes no current.
        double half = part.Resistance.Value.Ohms / 2;
        return new WiredVehicle(
            part,
            builder.Add(new Source(part.Id, inner, minus, part.Voltage.Value.From.Volts, half) { Connected = false }),
            builder.Add(new Contact(part.Id + ".fuse", inner, plus, half) { Closed = true }));
    }
}
