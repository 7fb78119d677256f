using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;

namespace WireCheck.Faults;

/// <summary>Tells what goes dark when devices open: the loads, ports, converters and inverters that no bank reaches any longer.</summary>
internal sealed class DarkFinder(BoxWiring wiring, WiringGraph graph)
{
    private readonly Dictionary<string, IReadOnlyList<string>> _known = new(StringComparer.Ordinal);
    private bool[]? _all;

    /// <summary>Ids of what goes dark, in the order of the description.</summary>
    internal IReadOnlyList<string> After(IReadOnlyList<string> opened)
    {
        string key = string.Join('\n', opened);
        if (!_known.TryGetValue(key, out IReadOnlyList<string>? dark))
        {
            _all ??= Reached([]);
            bool[] left = Reached(opened);
            dark = [.. wiring.Parts.Where(p => PlusOf(p) is { } node && _all[node] && !left[node]).Select(p => p.Part.Id)];
            _known.Add(key, dark);
        }

        return dark;
    }

    private int? PlusOf(WiredPart part) => part switch
    {
        WiredLoad { PowerElement: { } element } => element.A,
        WiredLoad { Inverter: { } inverter } when wiring.Find<WiredInverter>(inverter) is { } feeder => feeder.InputPlus,
        IPoweredInput input => input.InputPlus,
        WiredPort port => port.Plus.A,
        WiredMeter meter => meter.Element.A,
        _ => null,
    };

    /// <summary>Nodes that a bank reaches, a running converter's output among them.</summary>
    private bool[] Reached(IReadOnlyList<string> opened)
    {
        bool[] reached = new bool[graph.NodeCount];
        foreach (WiredBank bank in wiring.Of<WiredBank>())
        {
            Add(reached, wiring.Node(bank.Part.Id, "+"), opened);
        }

        bool more = true;
        while (more)
        {
            more = false;
            foreach (WiredPart part in wiring.Parts)
            {
                ConverterStage? stage = (part as WiredConverter)?.Stage ?? (part as WiredCharger)?.Stage;
                if (stage is not null && reached[stage.A] && !reached[stage.OutA])
                {
                    Add(reached, stage.OutA, opened);
                    more = true;
                }
            }
        }

        return reached;
    }

    private void Add(bool[] reached, int start, IReadOnlyList<string> opened)
    {
        bool[] from = Reach.From(graph, start, e => !opened.Contains(e.PartId));
        for (int node = 0; node < from.Length; node++)
        {
            reached[node] |= from[node];
        }
    }
}
