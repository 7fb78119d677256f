using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Faults.Coordination;

namespace WireCheck.Facts.Gather;

/// <summary>Time-current bands of the devices and withstand of the conductors of a box, each worked out once.</summary>
public sealed class CoordinationFinder
{
    private readonly GatherContext _context;
    private readonly Dictionary<string, TimeCurrentBand> _bands = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<TimeCurrentBand>> _series = new(StringComparer.Ordinal);
    private readonly Dictionary<string, GuardComparison> _compared = new(StringComparer.Ordinal);

    internal CoordinationFinder(GatherContext context) => _context = context;

    /// <summary>The band of a fuse or breaker where it stands.</summary>
    public TimeCurrentBand BandOf(Fuse fuse)
    {
        if (!_bands.TryGetValue(fuse.Id, out TimeCurrentBand? band))
        {
            double coldest = _context.Pack.Surroundings.Ambient.Value.From.DegreesCelsius;
            band = TimeCurrentBand.Of(fuse, _context.Library, coldest, _context.HottestInsideCelsius);
            _bands.Add(fuse.Id, band);
        }

        return band;
    }

    /// <summary>The withstand of a conductor where it lies.</summary>
    public ConductorDamage DamageOf(Conductor conductor) => ConductorDamage.Of(
        conductor, _context.Library, _context.Ampacities.Amps(conductor), _context.Ampacities.AmbientOf(conductor));

    /// <summary>The device that guards a conductor against the conductor's withstand; null when no device does.</summary>
    public GuardComparison? Of(WiredConductor wire)
    {
        if (_context.Guards.Of(wire).FuseId is not { } id || _context.Wiring.Find<WiredFuse>(id) is not { } fuse)
        {
            return null;
        }

        if (!_compared.TryGetValue(wire.Part.Id, out GuardComparison? compared))
        {
            double share = ShareOf(wire);
            compared = GuardComparison.Of(
                InSeries(fuse), DamageOf(wire.Conductor), _context.Ampacities.Amps(wire.Conductor), share * HighestAmps(wire, id), share);
            _compared.Add(wire.Part.Id, compared);
        }

        return compared;
    }

    /// <summary>
    /// A device and all that every way from a bank to it passes: what flows through the one flows through the others, together
    /// with what else they carry.
    /// </summary>
    private List<TimeCurrentBand> InSeries(WiredFuse fuse)
    {
        if (_series.TryGetValue(fuse.Part.Id, out List<TimeCurrentBand>? known))
        {
            return known;
        }

        List<TimeCurrentBand> series = [BandOf(fuse.Fuse)];
        foreach (WiredFuse above in _context.Wiring.Of<WiredFuse>())
        {
            if (above.Part.Id != fuse.Part.Id && IsCutOffBy(above, fuse))
            {
                series.Add(BandOf(above.Fuse));
            }
        }

        _series.Add(fuse.Part.Id, series);
        return series;
    }

    /// <summary>True when some bank reaches the device, and none does once the other is open.</summary>
    private bool IsCutOffBy(WiredFuse above, WiredFuse fuse)
    {
        bool reached = false;
        foreach (SourcePoint source in _context.Sources)
        {
            Guard[] guards = _context.Guards.Against(source);
            if (_context.Wiring[source.PartId] is not WiredBank || !(guards[fuse.Element.A].Reached || guards[fuse.Element.B].Reached))
            {
                continue;
            }

            reached = true;
            bool[] still = Reach.From(_context.Graph, source.Plus, e => e.PartId != above.Part.Id);
            if (still[fuse.Element.A] || still[fuse.Element.B])
            {
                return false;
            }
        }

        return reached;
    }

    /// <summary>
    /// The most that flows through a conductor and its device, A: a bound from the source's voltage over the resistance of its
    /// cells and of this wire alone; a supply's own limit.
    /// </summary>
    private double HighestAmps(WiredConductor wire, string fuseId)
    {
        double highest = 0;
        foreach (SourcePoint source in _context.Sources)
        {
            Guard[] guards = _context.Guards.Against(source);
            bool through = _context.Guards.IsReturn(wire)
                ? _context.Wiring[source.PartId] is WiredBank
                : guards[wire.Element.A].FuseId == fuseId || guards[wire.Element.B].FuseId == fuseId;
            if (through)
            {
                highest = Math.Max(highest, _context.Guards.ShortAmps(source, wire));
            }
        }

        return highest;
    }

    /// <summary>Part of the current that a conductor takes of those between the same two terminals.</summary>
    private double ShareOf(WiredConductor wire)
    {
        double own = ConductanceOf(wire);
        double all = 0;
        foreach (WiredConductor beside in ConductorGatherer.BesideAndSelf(wire, _context))
        {
            all += ConductanceOf(beside);
        }

        return own / all;
    }

    private double ConductanceOf(WiredConductor wire)
    {
        double metres = wire.Conductor.Length.Value.Meters;
        double copper = _context.Data.Assumed("cold_copper");
        return 1 / (_context.Data.OhmsPerMetre(wire.Conductor, copper) * metres);
    }

    /// <summary>Sets the margins of a conductor.</summary>
    internal void Gather(WiredConductor wire, FactSubject subject)
    {
        if (Of(wire) is not { } compared)
        {
            return;
        }

        if (compared.Worst is { } worst)
        {
            subject.Set(CoordinationFacts.WorstMargin, worst.Ratio);
            subject.Set(CoordinationFacts.WorstMarginCurrent, worst.Amps);
            subject.Set(CoordinationFacts.WorstMarginDamageTime, worst.DamageSeconds);
            subject.SetNumber(CoordinationFacts.WorstMarginClearingTime, worst.ClearingSeconds);
            subject.SetWord(CoordinationFacts.WorstMarginDevice, worst.DeviceId);
        }

        if (compared.ShortCircuit is { } inShort)
        {
            subject.Set(CoordinationFacts.ShortMargin, inShort.Ratio);
            subject.Set(CoordinationFacts.ShortMarginCurrent, inShort.Amps);
            subject.Set(CoordinationFacts.ShortMarginDamageTime, inShort.DamageSeconds);
            subject.SetNumber(CoordinationFacts.ShortMarginClearingTime, inShort.ClearingSeconds);
            subject.SetWord(CoordinationFacts.ShortMarginDevice, inShort.DeviceId);
        }
    }
}
