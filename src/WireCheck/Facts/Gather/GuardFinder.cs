using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;

namespace WireCheck.Facts.Gather;

/// <summary>What guards a conductor against the source that is worst for it.</summary>
/// <param name="Amps">Rating of the fuse that may be all that limits its current, A; null when a source reaches it with none.</param>
/// <param name="FuseId">Id of that fuse; of a return behind several, the largest of them.</param>
/// <param name="UnfusedSource">Id of the source that reaches it without a fuse and drives the most; null when none does.</param>
/// <param name="UnfusedAmps">What that source can drive, A; 0 when there is none.</param>
public sealed record ConductorGuard(double? Amps, string? FuseId, string? UnfusedSource, double UnfusedAmps)
{
    /// <summary>The fuses that together let <see cref="Amps"/> through, where several consumers share a return; empty otherwise.</summary>
    public IReadOnlyList<string> Together { get; init; } = [];
}

/// <summary>Finds the fuses that stand between sources and conductors.</summary>
public sealed class GuardFinder
{
    private readonly GatherContext _context;
    private readonly Dictionary<SourcePoint, Guard[]> _guards = [];
    private readonly Dictionary<string, ConductorGuard> _known = new(StringComparer.Ordinal);

    internal GuardFinder(GatherContext context) => _context = context;

    /// <summary>Guards of every node against one source.</summary>
    public Guard[] Against(SourcePoint source)
    {
        if (!_guards.TryGetValue(source, out Guard[]? guards))
        {
            guards = WeakestFuse.Guards(_context.Graph, source.Plus, source.Volts);
            _guards.Add(source, guards);
        }

        return guards;
    }

    /// <summary>True when a conductor lies on the negative side.</summary>
    public bool IsReturn(WiredConductor wire) =>
        _context.Poles[wire.Element.A] == Pole.Negative && _context.Poles[wire.Element.B] == Pole.Negative;

    /// <summary>The guard of a conductor.</summary>
    public ConductorGuard Of(WiredConductor wire)
    {
        if (!_known.TryGetValue(wire.Part.Id, out ConductorGuard? guard))
        {
            guard = IsReturn(wire) ? OfReturn(wire) : OfFeed(wire);
            _known.Add(wire.Part.Id, guard);
        }

        return guard;
    }

    /// <summary>
    /// A feed: over all sources and both ends, the path whose smallest fuse is largest. A conductor that joins two
    /// parts of a loop is reached by each end without the other.
    /// </summary>
    private ConductorGuard OfFeed(WiredConductor wire)
    {
        double? worst = null;
        string? fuse = null;
        string? source = null;
        double unfused = 0;
        foreach (SourcePoint point in _context.Sources)
        {
            Guard guard = Wider(Against(point)[wire.Element.A], Against(point)[wire.Element.B]);
            if (!guard.Reached)
            {
                continue;
            }

            double drives = Math.Min(Math.Min(point.LimitAmps, guard.LimitAmps), ShortAmps(point, wire));
            if (guard.Unfused)
            {
                if (drives > unfused)
                {
                    (unfused, source) = (drives, point.PartId);
                }
            }
            else if (Math.Min(guard.Amps, drives) > (worst ?? 0))
            {
                // A charger that cannot blow the fuse is itself the limit, and then no fuse decides.
                (worst, fuse) = (Math.Min(guard.Amps, drives), guard.FuseId);
            }
        }

        return new ConductorGuard(source is null || worst > unfused ? worst : null, fuse, source, unfused);
    }

    /// <summary>
    /// A return: the largest guard of what comes back through it, which is what it would cut off; where several ports, loads,
    /// converters or inverters come back through it, what their fuses let through together. Coils, meters and lamps add to no sum:
    /// they cannot be overloaded by plugging something in, and two of them do not fail on one day.
    /// </summary>
    private ConductorGuard OfReturn(WiredConductor wire)
    {
        double? worst = null;
        string? fuse = null;
        IReadOnlyList<string> together = [];
        foreach (SourcePoint bank in _context.Sources.Where(s => _context.Wiring[s.PartId] is WiredBank))
        {
            HashSet<int> shared = [];
            HashSet<string> fuses = new(StringComparer.Ordinal);

            // What never comes back to the bank but through another consumer is not cut off by this wire.
            bool[] comesBack = Reach.From(_context.Graph, bank.Minus, _ => true, against: true);
            bool[] still = Reach.From(_context.Graph, bank.Minus, e => e.PartId != wire.Part.Id, against: true);
            Guard[] guards = Against(bank);
            foreach (PowerTap tap in PowerTap.In(_context.Wiring).Where(t => comesBack[t.Minus] && !still[t.Minus]))
            {
                Guard guard = guards[tap.Plus];
                if (guard is not { Reached: true, Unfused: false })
                {
                    continue;
                }

                if (guard.Amps > (worst ?? 0))
                {
                    (worst, fuse, together) = (guard.Amps, guard.FuseId, []);
                }

                if (_context.Wiring[tap.PartId] is WiredPort or WiredLoad or IPoweredInput && guard.FuseId is { } own)
                {
                    shared.Add(tap.Plus);
                    fuses.Add(own);
                }
            }

            if (fuses.Count > 1 && FuseFlow.Find(_context.Graph, bank.Plus, shared) is { } flow
                && double.IsFinite(flow.Amps) && flow.Amps > (worst ?? 0))
            {
                (worst, together) = (flow.Amps, flow.Fuses);
            }
        }

        return new ConductorGuard(worst, fuse, null, 0) { Together = together };
    }

    /// <summary>The more dangerous of the two ends.</summary>
    private static Guard Wider(Guard a, Guard b) =>
        Math.Min(a.Amps, a.LimitAmps) >= Math.Min(b.Amps, b.LimitAmps) ? a : b;

    /// <summary>
    /// Current of a battery into a short at the far end of a wire, A: its voltage over the lowest resistance of its
    /// cells and of this wire alone, which is more than any real loop lets through.
    /// </summary>
    internal double ShortAmps(SourcePoint source, WiredConductor wire)
    {
        if (_context.Wiring[source.PartId] is not WiredBank bank)
        {
            return source.LimitAmps;
        }

        Conditions lowest = _context.Box.Corners.First(c => !c.HighestResistance).Conditions;
        double cell = _context.Data.CellOhms(bank.Cells, 0, lowest);
        double wireOhms = _context.Data.OhmsPerMetre(wire.Conductor, lowest.CopperCelsius) * wire.Conductor.Length.Value.Meters;
        double inner = _context.Stacks.CellsInSeries(bank) * cell / bank.Cells.Parallel.Value;
        return source.Volts / (inner + wireOhms);
    }

    /// <summary>Feeds that a bank reaches without a fuse and without which it cannot reach a fuse: all of the fuse's load passes them.</summary>
    public IEnumerable<WiredConductor> OnlyWayTo(WiredFuse fuse)
    {
        foreach (SourcePoint bank in _context.Sources.Where(s => _context.Wiring[s.PartId] is WiredBank))
        {
            bool[] all = Reach.From(_context.Graph, bank.Plus, e => e.FuseAmps is null);
            if (!all[fuse.Element.A] && !all[fuse.Element.B])
            {
                continue;
            }

            foreach (WiredConductor wire in _context.Wiring.Of<WiredConductor>().Where(w => all[w.Element.A] && !IsReturn(w)))
            {
                bool[] without = Reach.From(_context.Graph, bank.Plus, e => e.FuseAmps is null && e.PartId != wire.Part.Id);
                if (!without[fuse.Element.A] && !without[fuse.Element.B])
                {
                    yield return wire;
                }
            }
        }
    }
}

/// <summary>A place where power is taken from between the poles: a load, a converter's input, a coil, a port.</summary>
/// <param name="PartId">The part.</param>
/// <param name="Plus">Its positive node.</param>
/// <param name="Minus">Its negative node.</param>
public sealed record PowerTap(string PartId, int Plus, int Minus)
{
    /// <summary>Every tap of a box.</summary>
    public static IEnumerable<PowerTap> In(BoxWiring wiring)
    {
        foreach (WiredPart part in wiring.Parts)
        {
            string id = part.Part.Id;
            PowerTap? tap = part switch
            {
                WiredLoad { PowerElement: { } e } => new PowerTap(id, e.A, e.B),
                IPoweredInput input => new PowerTap(id, input.InputPlus, input.InputMinus),
                WiredRelay => new PowerTap(id, wiring.Node(id, "86"), wiring.Node(id, "85")),
                WiredMeter meter => new PowerTap(id, meter.Element.A, meter.Element.B),
                WiredPort => new PowerTap(id, wiring.Node(id, "+"), wiring.Node(id, "-")),
                WiredSwitch { Lamp: { } lamp } => new PowerTap(id, lamp.A, lamp.B),
                _ => null,
            };
            if (tap is not null)
            {
                yield return tap;
            }
        }
    }
}
