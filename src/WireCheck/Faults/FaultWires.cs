using WireCheck.Circuit.Elements;
using WireCheck.Faults.Coordination;

namespace WireCheck.Faults;

/// <summary>A length of wire that a fault heats.</summary>
/// <param name="Id">The conductor leg, or the load whose lead it is.</param>
/// <param name="Element">Carries its current.</param>
/// <param name="Damage">What it stands.</param>
/// <param name="Ampacity">What it may carry for ever, A.</param>
internal sealed record FaultWire(string Id, Element Element, ConductorDamage Damage, double Ampacity)
{
    /// <summary>True for a sense lead, which has checks of its own and never comes before another wire.</summary>
    internal bool IsSense { get; init; }

    /// <summary>The worst it meets in any fault that hurts no other wire before it; null while no such fault warms it.</summary>
    internal WireHeat? Worst { get; set; }

    /// <summary>The fault in which that is.</summary>
    internal FaultOutcome? WorstIn { get; set; }

    /// <summary>The largest current above its ampacity that no device ends, A; 0 when there is none.</summary>
    internal double SustainedAmps { get; set; }

    /// <summary>The fault in which that flows.</summary>
    internal FaultOutcome? SustainedIn { get; set; }
}

/// <summary>Warms every wire along a fault as it goes on, and keeps the worst each of them meets.</summary>
internal sealed class FaultWires
{
    /// <summary>A rise below this is not followed, K: it changes no answer.</summary>
    private const double SmallestRise = 0.01;

    /// <summary>Where the formula ends: copper melts, °C (ITS-90, freezing point of copper).</summary>
    internal const double MeltingCelsius = 1084.62;

    private readonly double[] _celsius;
    private readonly double[] _energy;
    private readonly double[] _sustained;
    private readonly double[] _hurt;
    private readonly bool[] _warmed;
    private readonly List<int> _touched = [];
    private readonly List<WireHeat> _heats = [];
    private readonly List<FaultWire> _over = [];
    private double _elapsed;

    internal FaultWires(IReadOnlyList<FaultWire> wires)
    {
        All = [.. wires];
        _celsius = new double[All.Length];
        _energy = new double[All.Length];
        _sustained = new double[All.Length];
        _hurt = new double[All.Length];
        _warmed = new bool[All.Length];
    }

    internal FaultWire[] All { get; }

    /// <summary>Forgets the last fault.</summary>
    internal void Start()
    {
        foreach (int i in _touched)
        {
            (_warmed[i], _energy[i], _sustained[i]) = (false, 0, 0);
        }

        _touched.Clear();
        _elapsed = 0;
    }

    /// <summary>Lets the currents flow for a time, s; infinite for ever.</summary>
    internal void Carry(double[] amps, double seconds)
    {
        bool forEver = double.IsPositiveInfinity(seconds);
        for (int i = 0; i < All.Length; i++)
        {
            FaultWire wire = All[i];
            double carried = Math.Abs(amps[wire.Element.Index]);
            double energy = carried * carried * seconds;
            if (forEver ? carried <= wire.Ampacity * SmallestPart : energy * wire.Damage.Heating.OhmsAt20 < SmallestRise * wire.Damage.Heating.Heat)
            {
                continue;
            }

            if (!_warmed[i])
            {
                (_warmed[i], _hurt[i], _celsius[i]) = (true, double.PositiveInfinity, wire.Damage.RatedCelsius);
                _touched.Add(i);
            }

            double next = forEver ? wire.Damage.Heating.SteadyCelsius(carried) : wire.Damage.Heating.Celsius(_celsius[i], carried, seconds);
            if (double.IsPositiveInfinity(_hurt[i]) && next > wire.Damage.LimitCelsius(_elapsed + seconds))
            {
                _hurt[i] = _elapsed + wire.Damage.Seconds(carried, _celsius[i], _elapsed);
            }

            _celsius[i] = Math.Min(next, MeltingCelsius);
            _energy[i] += energy;
            _sustained[i] = forEver ? carried : 0;
        }

        _elapsed += seconds;
    }

    /// <summary>
    /// Ends a fault that lasted so many seconds: its worst wire, and the worst of each wire so far. Of several wires that it
    /// hurts only the one that is hurt first counts: once that has melted nothing flows in the others.
    /// </summary>
    internal void Finish(FaultOutcome outcome)
    {
        _heats.Clear();
        _over.Clear();
        FaultWire? first = null;
        WireHeat? soonest = null;
        foreach (int i in _touched)
        {
            FaultWire wire = All[i];
            double limit = wire.Damage.LimitCelsius(outcome.Seconds);
            double rated = wire.Damage.RatedCelsius;
            double share = (_celsius[i] - rated) / Math.Max(1, limit - rated);
            WireHeat heat = new(wire.Id, _celsius[i], limit, _energy[i], share, _sustained[i])
            {
                HurtSeconds = share > 1 ? Math.Min(_hurt[i], outcome.Seconds) : double.PositiveInfinity,
            };
            _heats.Add(heat);
            if (outcome.Hottest is not { } hottest || heat.Share > hottest.Share)
            {
                outcome.Hottest = heat;
            }

            if (!wire.IsSense && IsOver(wire, heat))
            {
                _over.Add(wire);
                if (soonest is null || IsSooner(heat, soonest))
                {
                    (first, soonest) = (wire, heat);
                }
            }
        }

        // A short without any fuse in its way is the matter of the missing fuse, not of a wire.
        if (outcome.GuardId is not null)
        {
            Keep(outcome, first);
        }
    }

    private void Keep(FaultOutcome outcome, FaultWire? first)
    {
        for (int i = 0; i < _heats.Count; i++)
        {
            FaultWire wire = All[_touched[i]];
            WireHeat heat = _heats[i];
            if (first is not null && wire != first && IsOver(wire, heat))
            {
                continue;
            }

            if (wire.Worst is not { } worst || IsWorse(heat, worst))
            {
                (wire.Worst, wire.WorstIn) = (heat, outcome);
            }

            if (heat.SustainedAmps > wire.Ampacity && heat.SustainedAmps > wire.SustainedAmps)
            {
                (wire.SustainedAmps, wire.SustainedIn) = (heat.SustainedAmps, outcome);
            }
        }

        if (first is not null && _over.Count > 1)
        {
            outcome.AlsoHurt = [.. _over.Where(w => w != first).Select(w => w.Id)];
            outcome.FirstHurt = first.Id;
        }
    }

    /// <summary>Hurt by what has flowed, or left with more than it may carry.</summary>
    private static bool IsOver(FaultWire wire, WireHeat heat) => heat.Share > 1 || heat.SustainedAmps > wire.Ampacity;

    /// <summary>What is hurt sooner; of two that are never hurt, what is warmer for what it stands.</summary>
    private static bool IsSooner(WireHeat heat, WireHeat held) =>
        heat.HurtSeconds < held.HurtSeconds || (heat.HurtSeconds == held.HurtSeconds && heat.Share > held.Share);

    /// <summary>The larger rise over what it stands; where copper melts in both, the one that hurts sooner.</summary>
    private static bool IsWorse(WireHeat heat, WireHeat held) =>
        heat.Share > held.Share || (heat.Share == held.Share && heat.HurtSeconds < held.HurtSeconds);

    /// <summary>A current below this part of the ampacity warms nothing worth telling.</summary>
    private const double SmallestPart = 0.05;
}
