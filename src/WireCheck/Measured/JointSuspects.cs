using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.States;

namespace WireCheck.Measured;

/// <summary>Which joint on the way between two nodes would explain more voltage than predicted: R = aged R + excess over its current.</summary>
internal sealed class JointSuspects(BoxWiring wiring, WiringGraph graph, OperatingPoint point)
{
    /// <summary>A current below this makes no drop that a meter reads, A.</summary>
    private const double LeastAmps = 1e-3;

    /// <summary>Suspects between two nodes, the most plausible first; empty where no wired way joins them or nothing flows.</summary>
    internal IReadOnlyList<JointSuspect> Between(int first, int second, double excessVolts)
    {
        List<JointSuspect> suspects = [];
        foreach (string id in Way(first, second))
        {
            AddPart(wiring[id], excessVolts, suspects);
        }

        suspects.Sort((a, b) => a.Times != b.Times ? a.Times.CompareTo(b.Times) : string.CompareOrdinal(a.Where, b.Where));
        return suspects;
    }

    /// <summary>Ids of the parts on the wired way between two nodes; empty where there is none.</summary>
    internal IReadOnlyList<string> Parts(int first, int second) => Way(first, second);

    private void AddPart(WiredPart part, double excess, List<JointSuspect> suspects)
    {
        switch (part)
        {
            case WiredConductor wire:
                AddEnd(wire, wire.Conductor.FromEnd, wire.Conductor.From, excess, suspects);
                AddEnd(wire, wire.Conductor.ToEnd, wire.Conductor.To, excess, suspects);
                break;
            case WiredFuse fuse:
                Add($"holder and element of {fuse.Part.Id}", point.Amps(fuse.Element),
                    wiring.Data.HolderOhms(fuse.Fuse, aged: true) + wiring.Data.FuseOhms(fuse.Fuse, hot: true), excess, suspects);
                break;
            case WiredJoint joint:
                Add($"joint {joint.Part.Id}", point.Amps(joint.Element),
                    joint.Joint.Resistance?.Value.Ohms ?? wiring.Data.JointOhms(joint.Joint.JointKind.Value, null, aged: true), excess, suspects);
                break;
            case WiredRelay relay:
                Add($"contact of {relay.Part.Id}", point.Amps(relay.Make), relay.Relay.Contact.Resistance.Value.Ohms, excess, suspects);
                break;
            case WiredPort port:
                Add($"contacts of {port.Part.Id}", point.Amps(port.Plus), wiring.Data.PortContactOhms(port.Port, aged: true), excess, suspects);
                break;
            default:
                break;
        }
    }

    private void AddEnd(WiredConductor wire, ConductorEnd end, TerminalReference at, double excess, List<JointSuspect> suspects) => Add(
        $"{end.Class.Value} at {at} of {wire.Part.Id}", point.Amps(wire.Element),
        wiring.Data.JointOhms(end, wire.Conductor.Size.Value, aged: true), excess, suspects);

    private static void Add(string where, double amps, double agedOhms, double excess, List<JointSuspect> suspects)
    {
        if (Math.Abs(amps) > LeastAmps && agedOhms > 0)
        {
            suspects.Add(new JointSuspect(where, agedOhms, agedOhms + (excess / Math.Abs(amps))));
        }
    }

    /// <summary>Parts of the way with the fewest parts; empty when there is none.</summary>
    private IReadOnlyList<string> Way(int first, int second)
    {
        Dictionary<int, WiringEdge?> cameBy = new() { [first] = null };
        Queue<int> open = new([first]);
        while (open.Count > 0 && !cameBy.ContainsKey(second))
        {
            int node = open.Dequeue();
            foreach (WiringEdge edge in graph.At(node))
            {
                if (cameBy.TryAdd(edge.Other(node), edge))
                {
                    open.Enqueue(edge.Other(node));
                }
            }
        }

        List<string> parts = [];
        for (int node = second; cameBy.GetValueOrDefault(node) is { } edge; node = edge.Other(node))
        {
            parts.Insert(0, edge.PartId);
        }

        return parts;
    }
}
