using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>A vehicle's outlet as a voltage behind the resistance of its battery and cable. Current may flow into it.</summary>
public sealed class WiredVehicle(Vehicle vehicle, Source element) : WiredPart(vehicle)
{
    public Vehicle Vehicle { get; } = vehicle;

    public Source Element { get; } = element;

    public override IEnumerable<Element> Elements => [Element];

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
        return new WiredVehicle(part, builder.Add(new Source(
            part.Id, plus, minus, part.Voltage.Value.From.Volts, part.Resistance.Value.Ohms) { Connected = false }));
    }
}
