using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;

namespace WireCheck.Switching;

/// <summary>Lists what the control table has a row for.</summary>
internal static class LivePoints
{
    /// <summary>Parts in the order of the description, then rails in the order of their first terminal.</summary>
    internal static IReadOnlyList<LivePoint> Of(BoxWiring wiring, Rails rails)
    {
        List<LivePoint> points = [];
        WiredInverter[] inverters = [.. wiring.Of<WiredInverter>()];
        foreach (WiredPart part in wiring.Parts)
        {
            if (part is WiredLoad { Inverter: { } feeder })
            {
                int number = Array.FindIndex(inverters, i => i.Part.Id == feeder);
                points.Add(new LivePoint(LivePointKind.Outlet, part.Part.Id, part.Part.Kind, 0, 0, []) { Inverter = number });
            }
            else if (Poles(part) is { } poles)
            {
                points.Add(new LivePoint(LivePointKind.Part, part.Part.Id, part.Part.Kind, poles.Plus, poles.Minus, []));
            }
        }

        AddRails(points, wiring, rails);
        return points;
    }

    /// <summary>The two poles of a part that is fed; null for a part that only passes current on.</summary>
    internal static (int Plus, int Minus)? Poles(WiredPart part) => part switch
    {
        IPoweredInput input => (input.InputPlus, input.InputMinus),
        WiredMeter meter => (meter.Element.A, meter.Element.B),
        WiredPort port => (port.Plus.B, port.Minus.A),
        WiredLoad { LeadPlus: { } plus, LeadMinus: { } minus } => (plus.B, minus.A),
        WiredLoad { PowerElement: { } element } => (element.A, element.B),
        WiredSwitch { Lamp: { } lamp } => (lamp.A, lamp.B),
        _ => null,
    };

    private static void AddRails(List<LivePoint> points, BoxWiring wiring, Rails rails)
    {
        List<string>[] names = new List<string>[rails.Count];
        int[] node = new int[rails.Count];
        foreach (((string part, string terminal), int at) in wiring.Nodes)
        {
            int rail = rails.Of(at);
            bool outside = wiring.Pack.Find(part) is null;
            if (rail == rails.Of(wiring.Network.Reference) || (outside && names[rail] is null && !IsLinked(wiring, at)))
            {
                continue;
            }

            if (names[rail] is null)
            {
                (names[rail], node[rail]) = ([], at);
            }

            names[rail].Add(terminal.Length == 0 ? part : $"{part}.{terminal}");
        }

        for (int rail = 0; rail < rails.Count; rail++)
        {
            // The taps between a bank's groups are live whatever is switched; an enable terminal without a wire never is.
            if (names[rail] is { } terminals && !terminals.TrueForAll(t => IsTap(wiring, t))
                && (terminals is not [{ } only] || !only.EndsWith(".enable", StringComparison.Ordinal)))
            {
                points.Add(new LivePoint(
                    LivePointKind.Rail, terminals[0], "rail", node[rail], wiring.Network.Reference, terminals));
            }
        }
    }

    private static bool IsTap(BoxWiring wiring, string terminal)
    {
        int dot = terminal.IndexOf('.', StringComparison.Ordinal);
        string part = dot < 0 ? terminal : terminal[..dot];
        return wiring.Pack.Find(part) is Cells && !terminal.EndsWith('+')
            || (wiring.Pack.Find(part) is Bms && dot >= 0 && terminal[dot + 1] == 's' && terminal.Length > dot + 2);
    }

    private static bool IsLinked(BoxWiring wiring, int node)
    {
        foreach (Circuit.Elements.Element link in wiring.OutsideLinks)
        {
            if (link.A == node || link.B == node)
            {
                return true;
            }
        }

        return false;
    }
}
