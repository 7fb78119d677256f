using WireCheck.Circuit.Wiring;
using WireCheck.Facts.Catalogue;
using WireCheck.Faults;
using WireCheck.Faults.Coordination;

namespace WireCheck.Facts.Gather;

/// <summary>
/// Which wire tells of a fuse that is too slow or too large. One such fuse hurts many wires: all in series of one short, and
/// all of its branch. The wire that comes to harm first tells of it and names the others, so that one mistake is one finding.
/// Currents that nothing ends are told at each wire that is the first to be hurt by one.
/// </summary>
public sealed class UnclearedShorts
{
    private readonly GatherContext _context;
    private readonly List<Harm> _harms = [];
    private readonly Dictionary<string, string> _teller = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<string>> _also = new(StringComparer.Ordinal);

    internal UnclearedShorts(GatherContext context)
    {
        _context = context;
        foreach (WiredConductor wire in context.Wiring.Of<WiredConductor>())
        {
            if (!context.Pack.IsSense(wire.Conductor))
            {
                _harms.Add(Of(wire));
            }
        }

        foreach (WiredLoad load in context.Wiring.Of<WiredLoad>())
        {
            if (load.LeadPlus is not null)
            {
                _harms.Add(OfWire(load.Part.Id) ?? new Harm(load.Part.Id, null, HarmDegree.None, 0));
            }
        }

        Group();
        foreach (FaultOutcome outcome in context.Faults.HurtingSeveral)
        {
            foreach (string id in outcome.AlsoHurt)
            {
                Name(_teller.GetValueOrDefault(outcome.FirstHurt!, outcome.FirstHurt!), id);
            }
        }
    }

    /// <summary>True when the wire tells of its own harm; false when another wire names it.</summary>
    public bool IsTeller(string wireId) => _teller.GetValueOrDefault(wireId) == wireId;

    /// <summary>Other wires that come to harm with one that tells, in words, in the order of the description.</summary>
    public IReadOnlyList<string> Also(string tellerId)
    {
        List<string> words = [];
        if (_also.TryGetValue(tellerId, out List<string>? ids))
        {
            foreach (Harm harm in _harms)
            {
                if (ids.Contains(harm.Id) && !IsToldAlone(harm))
                {
                    words.Add(_context.Wiring[harm.Id] is WiredLoad ? $"the lead of {harm.Id}" : harm.Id);
                }
            }
        }

        return words;
    }

    private bool IsToldAlone(Harm harm) => harm.Degree != HarmDegree.None && IsTeller(harm.Id);

    private void Group()
    {
        foreach (Harm harm in _harms)
        {
            Harm teller = harm;
            foreach (Harm other in _harms)
            {
                if (harm.Key is not null && other.Key == harm.Key && harm.Degree != HarmDegree.Sustained && other.IsWorseThan(teller))
                {
                    teller = other;
                }
            }

            _teller[harm.Id] = teller.Id;
            if (teller != harm && harm.Degree is HarmDegree.Heat or HarmDegree.Margin)
            {
                Name(teller.Id, harm.Id);
            }
        }
    }

    private void Name(string teller, string id)
    {
        if (teller == id)
        {
            return;
        }

        if (!_also.TryGetValue(teller, out List<string>? names))
        {
            names = [];
            _also.Add(teller, names);
        }

        if (!names.Contains(id))
        {
            names.Add(id);
        }
    }

    private Harm Of(WiredConductor wire)
    {
        if (OfWire(wire.Part.Id) is { } harm)
        {
            return harm;
        }

        if (_context.Coordination.Of(wire)?.ShortCircuit is { Ratio: < 1 } margin)
        {
            return new Harm(wire.Part.Id, _context.Guards.Of(wire).FuseId, HarmDegree.Margin, margin.Ratio);
        }

        FaultOutcome? lowest = FaultGathering.LowestOf(wire.Part.Id, _context)?.Lowest;
        return FaultGathering.MultipleOf(lowest, _context) is { } multiple
            ? new Harm(wire.Part.Id, lowest!.GuardId, HarmDegree.Slow, multiple)
            : new Harm(wire.Part.Id, null, HarmDegree.None, 0);
    }

    /// <summary>What shorts do to a conductor or lead; null when none hurts it before another.</summary>
    private Harm? OfWire(string id) =>
        _context.Faults.SustainedIn(id) is { } sustained ? new Harm(id, sustained.In.GuardId, HarmDegree.Sustained, -sustained.Amps)
        : _context.Faults.HottestOf(id) is { Heat.Share: > 1 } hottest ? new Harm(id, hottest.In.GuardId, HarmDegree.Heat, hottest.Heat.HurtSeconds)
        : null;

    /// <summary>From the worst to none.</summary>
    private enum HarmDegree
    {
        /// <summary>More than it may carry, for ever.</summary>
        Sustained,

        /// <summary>Too hot by the time a bolted short is cleared.</summary>
        Heat,

        /// <summary>Hurt before its device has cleared a smaller short.</summary>
        Margin,

        /// <summary>Only the multiple of the fuse's rating is told.</summary>
        Slow,

        None,
    }

    /// <param name="Id">Conductor leg, or load whose lead it is.</param>
    /// <param name="Key">Fuse or breaker that the short is left to.</param>
    /// <param name="Degree">How bad it is.</param>
    /// <param name="Measure">Smaller is worse among the same degree.</param>
    private sealed record Harm(string Id, string? Key, HarmDegree Degree, double Measure)
    {
        internal bool IsWorseThan(Harm other) =>
            Degree != HarmDegree.Sustained
            && (Degree < other.Degree || (Degree == other.Degree && Measure < other.Measure));
    }
}
