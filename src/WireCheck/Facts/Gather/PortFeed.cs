using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;

namespace WireCheck.Facts.Gather;

/// <summary>What feeds a port, what fuses and switches stand ahead of it, and the wires of its own branch.</summary>
internal static class PortFeed
{
    /// <summary>Nominal voltage between its contacts, V: of the bank, the converter or the source plugged into it.</summary>
    internal static double? NominalVolts(WiredPort port, GatherContext context)
    {
        if (Banks.Feeding(context, port.Plus.A) is { } bank)
        {
            return Banks.NominalVolts(context, bank.Cells);
        }

        if (FeedingConverter(port, context) is { } converter)
        {
            return converter.Converter.Output.Value.Volts;
        }

        return context.Pack.Parts
            .Select(p => p switch
            {
                Panel panel when panel.At?.Value == port.Part.Id => panel.MaximumPowerVoltage.Value.Volts,
                Vehicle vehicle when vehicle.At?.Value == port.Part.Id => vehicle.Voltage.Value.From.Volts,
                _ => (double?)null,
            })
            .FirstOrDefault(v => v is not null);
    }

    /// <summary>Sets the fuse of a port, the ports that share it and the thinnest wire of its own branch.</summary>
    internal static void AddFuse(WiredPort port, FactSubject subject, GatherContext context)
    {
        Guard? found = GuardOf(port, context);
        subject.Set(PortFacts.Unfused, found is { Unfused: true });
        if (found is not { Unfused: false, FuseId: { } fuse } guard)
        {
            return;
        }

        subject.SetNumber(PortFacts.FuseRating, guard.Amps);
        subject.Set(PortFacts.FuseId, fuse);
        subject.SetNames(
            PortFacts.FuseSharedWith,
            context.Wiring.Of<WiredPort>()
                .Where(o => o != port && GuardOf(o, context)?.FuseId == fuse)
                .Select(o => o.Part.Id));
        WiredConductor? weakest = Branch(port, fuse, context).MinBy(w => context.Ampacities.Amps(w.Conductor));
        if (weakest is not null)
        {
            subject.Set(PortFacts.BranchConductor, weakest.Part.Id);
            subject.SetNumber(PortFacts.BranchAmpacity, context.Ampacities.Amps(weakest.Conductor));
        }
    }

    /// <summary>
    /// True when taking every switch, relay and breaker out leaves the port without a source on one of its poles, or when
    /// the converter that feeds it is switched.
    /// </summary>
    internal static bool IsSwitchedAhead(WiredPort port, GatherContext context)
    {
        if (Banks.Feeding(context, port.Plus.A) is { } bank)
        {
            SourcePoint source = Banks.SourceOf(context, bank);
            return IsSwitched(source, port.Plus.A, port.Minus.B, context);
        }

        if (FeedingConverter(port, context) is not { } converter)
        {
            return false;
        }

        SourcePoint output = OutputOf(converter, context);
        WiredBank? behind = Banks.Feeding(context, converter.InputPlus);
        return converter.EnabledBy is not null || converter.EnableNode is not null
            || IsSwitched(output, port.Plus.A, port.Minus.B, context)
            || (behind is not null
                && IsSwitched(Banks.SourceOf(context, behind), converter.InputPlus, converter.InputMinus, context));
    }

    private static bool IsSwitched(SourcePoint source, int plus, int minus, GatherContext context) =>
        !Reach.From(context.Graph, source.Plus, e => Stays(e, context))[plus]
        || !Reach.From(context.Graph, source.Minus, e => Stays(e, context), against: true)[minus];

    private static bool Stays(WiringEdge edge, GatherContext context) => context.Wiring[edge.PartId] switch
    {
        WiredSwitch or WiredRelay => false,
        WiredFuse fuse => !fuse.Fuse.IsBreaker,
        _ => true,
    };

    private static WiredConverter? FeedingConverter(WiredPort port, GatherContext context) =>
        context.Sources
            .Where(s => context.Guards.Against(s)[port.Plus.A].Reached)
            .Select(s => context.Wiring[s.PartId])
            .OfType<WiredConverter>()
            .FirstOrDefault();

    private static SourcePoint OutputOf(WiredConverter converter, GatherContext context) =>
        context.Sources.First(s => s.PartId == converter.Part.Id);

    /// <summary>What guards a port against the bank or the converter that feeds it; null where neither reaches it.</summary>
    private static Guard? GuardOf(WiredPort port, GatherContext context)
    {
        SourcePoint source;
        if (Banks.Feeding(context, port.Plus.A) is { } bank)
        {
            source = Banks.SourceOf(context, bank);
        }
        else if (FeedingConverter(port, context) is { } converter)
        {
            source = OutputOf(converter, context);
        }
        else
        {
            return null;
        }

        Guard guard = context.Guards.Against(source)[port.Plus.A];
        return guard.Reached ? guard : null;
    }

    /// <summary>Conductors on the shortest way from the port to its fuse, and from its negative to the first bar, shunt or BMS.</summary>
    private static IEnumerable<WiredConductor> Branch(WiredPort port, string fuse, GatherContext context) =>
    [
        .. Way(port.Plus.A, port.Part.Id, p => p.Part.Id == fuse, context),
        .. Way(port.Minus.B, port.Part.Id, p => p is WiredBusbar or WiredShunt or WiredBms, context),
    ];

    private static IEnumerable<WiredConductor> Way(int start, string portId, Func<WiredPart, bool> isEnd, GatherContext context)
    {
        Dictionary<int, (int Node, string PartId)> cameBy = [];
        HashSet<int> seen = [start];
        Queue<int> open = new([start]);
        while (open.TryDequeue(out int node))
        {
            // A bar with one stud is a node without a way through it: its name tells that the end is reached.
            if (node != start && context.Wiring.Of<WiredBusbar>().Any(b => isEnd(b) && IsAt(b, node, context)))
            {
                return Back(start, node, cameBy, context);
            }

            foreach (WiringEdge edge in context.Graph.At(node).Where(e => e.PartId != portId))
            {
                if (isEnd(context.Wiring[edge.PartId]))
                {
                    return Back(start, node, cameBy, context);
                }

                if (seen.Add(edge.Other(node)))
                {
                    cameBy[edge.Other(node)] = (node, edge.PartId);
                    open.Enqueue(edge.Other(node));
                }
            }
        }

        return [];
    }

    private static bool IsAt(WiredBusbar bar, int node, GatherContext context) =>
        context.Wiring.Nodes.Any(n => n.Key.Part == bar.Part.Id && n.Value == node);

    private static IEnumerable<WiredConductor> Back(
        int start, int node, Dictionary<int, (int Node, string PartId)> cameBy, GatherContext context)
    {
        while (node != start)
        {
            (int before, string id) = cameBy[node];
            if (context.Wiring[id] is WiredConductor wire)
            {
                yield return wire;
            }

            node = before;
        }
    }
}
