using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;

namespace WireCheck.Facts.Gather;

/// <summary>What takes the kick of a coil when its current is cut.</summary>
internal static class CoilClamp
{
    /// <summary>none, diode, resistor or zener: as the relay is described, else what is drawn across the coil; null when nothing is said.</summary>
    internal static string? Of(WiredRelay relay, GatherContext context)
    {
        CoilSuppression? built = relay.Relay.Coil.Suppression?.Value;
        return built is null or CoilSuppression.None ? Drawn(relay, context) ?? Word(built) : Word(built);
    }

    private static string? Word(CoilSuppression? suppression) => suppression switch
    {
        null => null,
        CoilSuppression.None => "none",
        CoilSuppression.Diode => "diode",
        CoilSuppression.Resistor => "resistor",
        _ => "zener",
    };

    /// <summary>A diode with its cathode at 86 and its anode at 85, or a resistor between them, joined by wire alone.</summary>
    private static string? Drawn(WiredRelay relay, GatherContext context)
    {
        bool[] plus = Reach.From(context.Graph, context.Wiring.Node(relay.Part.Id, "86"), e => IsWire(e, context));
        bool[] minus = Reach.From(context.Graph, context.Wiring.Node(relay.Part.Id, "85"), e => IsWire(e, context));
        foreach (WiredPart part in context.Wiring.Parts)
        {
            switch (part)
            {
                case WiredDiode diode when plus[diode.Element.B] && minus[diode.Element.A]:
                    return "diode";
                case WiredResistor resistor when (plus[resistor.Element.A] && minus[resistor.Element.B])
                    || (plus[resistor.Element.B] && minus[resistor.Element.A]):
                    return "resistor";
            }
        }

        return null;
    }

    private static bool IsWire(WiringEdge edge, GatherContext context) =>
        context.Wiring[edge.PartId] is WiredConductor or WiredJoint or WiredBusbar or WiredFuse;
}
