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
    /// <summary>The worst it meets in any fault; null while no fault warms it.</summary>
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
    private readonly bool[] _warmed;
    private readonly List<int> _touched = [];

    internal FaultWires(IReadOnlyList<FaultWire> wires)
    {
        All = [.. wires];
        _celsius = new double[All.Length];
        _energy = new double[All.Length];
        _sustained = new double[All.Length];
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
                _warmed[i] = true;
                _celsius[i] = wire.Damage.RatedCelsius;
                _touched.Add(i);
            }

            double next = forEver ? wire.Damage.Heating.SteadyCelsius(carried) : wire.Damage.Heating.Celsius(_celsius[i], carried, seconds);
            _celsius[i] = Math.Min(next, MeltingCelsius);
            _energy[i] += energy;
            _sustained[i] = forEver ? carried : 0;
        }
    }

    /// <summary>Ends a fault that lasted so many seconds: its worst wire, and the worst of each wire so far.</summary>
    internal void Finish(FaultOutcome outcome)
    {
        foreach (int i in _touched)
        {
            FaultWire wire = All[i];
            double limit = wire.Damage.LimitCelsius(outcome.Seconds);
            double rated = wire.Damage.RatedCelsius;
            WireHeat heat = new(wire.Id, _celsius[i], limit, _energy[i], (_celsius[i] - rated) / Math.Max(1, limit - rated), _sustained[i]);
            if (outcome.Hottest is not { } hottest || heat.Share > hottest.Share)
            {
                outcome.Hottest = heat;
            }

            // A short without any fuse in its way is the matter of the missing fuse, not of this wire.
            if (outcome.GuardId is null)
            {
                continue;
            }

            if (wire.Worst is not { } worst || heat.Share > worst.Share)
            {
                (wire.Worst, wire.WorstIn) = (heat, outcome);
            }

            if (heat.SustainedAmps > wire.Ampacity && heat.SustainedAmps > wire.SustainedAmps)
            {
                (wire.SustainedAmps, wire.SustainedIn) = (heat.SustainedAmps, outcome);
            }
        }
    }

    /// <summary>A current below this part of the ampacity warms nothing worth telling.</summary>
    private const double SmallestPart = 0.05;
}
