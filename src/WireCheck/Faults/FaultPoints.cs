using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;

namespace WireCheck.Faults;

/// <summary>
/// Lists the places that are shorted: both ends of every conductor leg, every busbar, both sides of every port, every load
/// and charger. Places on the negative are left out: a short to the negative draws nothing there.
/// </summary>
internal sealed class FaultPoints
{
    private readonly BoxWiring _wiring;
    private readonly Pole[] _poles;
    private readonly ReturnFinder _returns;
    private readonly List<FaultPoint> _points = [];

    private FaultPoints(BoxWiring wiring, Pole[] poles, ReturnFinder returns)
    {
        _wiring = wiring;
        _poles = poles;
        _returns = returns;
    }

    /// <summary>In the order of the description, conductors first.</summary>
    internal static IReadOnlyList<FaultPoint> In(BoxWiring wiring, WiringGraph graph, Pole[] poles)
    {
        FaultPoints found = new(wiring, poles, new ReturnFinder(wiring, graph, poles));
        foreach (Conductor conductor in wiring.Pack.Conductors)
        {
            found.Add(conductor.Id, conductor.From);
            found.Add(conductor.Id, conductor.To);
        }

        foreach (Part part in wiring.Pack.Parts)
        {
            found.AddPart(part);
        }

        return found._points;
    }

    private void AddPart(Part part)
    {
        switch (part)
        {
            case Busbar:
                foreach (KeyValuePair<(string Part, string Terminal), int> named in _wiring.Nodes)
                {
                    if (named.Key.Part == part.Id)
                    {
                        Add(part.Id, part.Id, named.Key.Terminal, named.Value);
                        break;
                    }
                }

                break;
            case Port:
                Add(part.Id, part.Id, "+", _wiring.Node(part.Id, "+"));
                Add(part.Id, part.Id, WiredPort.PlugPlus, _wiring.Node(part.Id, WiredPort.PlugPlus));
                break;
            case Load when _wiring.Nodes.TryGetValue((part.Id, "+"), out int node):
                Add(part.Id, part.Id, "+", node);
                break;
            case Charger { At: null }:
                Add(part.Id, part.Id, "out+", _wiring.Node(part.Id, "out+"));
                break;
            case Charger { At: { } at } when _wiring.Find<WiredPort>(at.Value) is not null:
                Add(part.Id, at.Value, WiredPort.PlugPlus, _wiring.Node(at.Value, WiredPort.PlugPlus));
                break;
        }
    }

    private void Add(string partId, TerminalReference end) => Add(partId, end.PartId, end.Terminal, _wiring.Node(end));

    private void Add(string partId, string atPart, string terminal, int node)
    {
        if (_poles[node] == Pole.Negative || _returns.Of(node, atPart, terminal) is not { } back || back.Node == node)
        {
            return;
        }

        _points.Add(new FaultPoint
        {
            PartId = partId,
            Place = terminal.Length == 0 ? atPart : $"{atPart}.{terminal}",
            Node = node,
            ReturnNode = back.Node,
            ReturnName = back.Name,
        });
    }
}
