using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.States;
using WireCheck.Tolerances;

namespace WireCheck.Sheets;

/// <summary>
/// The new box as it stands after some steps of its first connection: which fuses are in, which breakers and switches are
/// closed, nothing plugged in. It is solved anew for each step, half charged and at 20 °C.
/// </summary>
internal sealed class SteppedBox
{
    private readonly Pack _pack;
    private readonly BoxWiring _wiring;
    private readonly StateSolver _solver;
    private readonly Corner _corner;
    private readonly HashSet<string> _on = [];
    private readonly double _liveVolts;
    private (OperatingPoint Point, FirmNodes Firm)? _now;

    internal SteppedBox(Pack pack, Library library)
    {
        (_pack, WiringData data) = ToleranceCorner.Described.Build(pack, library, onTheBench: true);
        _wiring = BoxWiring.Build(_pack, data);
        _solver = new StateSolver(_wiring);
        _corner = Corner.For(_pack, data).First(c => c is { Charge: Charge.Nominal, HighestResistance: false });
        _liveVolts = data.Assumed("live_above");
    }

    /// <summary>True while the wiring has an answer as it stands.</summary>
    internal bool Solved => Now.Point.Solution.Outcome == SolveOutcome.Solved;

    /// <summary>Fuses that are in and breakers and switches that are closed.</summary>
    internal IReadOnlySet<string> On => _on;

    /// <summary>What the banks give together, A; negative when they are charged.</summary>
    internal double BankAmps => -_wiring.Of<WiredBank>().Sum(b => b.CellElements.Take(b.Columns).Sum(c => Now.Point.Amps(c)));

    /// <summary>The modes of the box.</summary>
    internal IReadOnlyList<BoxMode> Modes => States.Modes.For(_pack);

    /// <summary>Fits a fuse or closes a breaker or switch.</summary>
    internal void TurnOn(string id)
    {
        _on.Add(id);
        _now = null;
    }

    /// <summary>Takes a fuse out or opens a breaker or switch.</summary>
    internal void TurnOff(string id)
    {
        _on.Remove(id);
        _now = null;
    }

    /// <summary>Pairs of terminals that hold more than what counts as live, with their voltage, V.</summary>
    internal IReadOnlyDictionary<ProbePair, double> LivePairs()
    {
        Dictionary<ProbePair, double> live = [];
        foreach (ProbePair pair in ProbePair.In(_pack))
        {
            double volts = pair.Volts(_wiring, Now.Point);
            if (Math.Abs(volts) > _liveVolts && pair.Holds(_wiring, Now.Firm))
            {
                live.Add(pair, volts);
            }
        }

        return live;
    }

    /// <summary>
    /// The two sides of each way through a fuse, breaker or switch, with the voltage of each above the bank's negative, V; null
    /// where it is dead.
    /// </summary>
    internal IReadOnlyList<(string First, double? FirstVolts, string Second, double? SecondVolts)> Sides(string id)
    {
        Contact[] ways = _wiring[id] switch
        {
            WiredFuse fuse => [fuse.Element],
            WiredSwitch wired => [.. wired.Poles],
            _ => [],
        };
        return [.. ways.Select((w, i) => (
            FormattableString.Invariant($"{id}.{(2 * i) + 1}"), VoltsOf(w.A), FormattableString.Invariant($"{id}.{(2 * i) + 2}"), VoltsOf(w.B)))];
    }

    /// <summary>True when one side of it is live, so that closing it does something that can be read.</summary>
    internal bool IsFed(string id) => Sides(id).Any(s => s.FirstVolts is not null || s.SecondVolts is not null);

    /// <summary>True when a relay has pulled in, or a switch is closed.</summary>
    internal bool IsClosed(string contact) => _on.Contains(contact) || Now.Point.Relays.Any(r => r.Id == contact && r.Energised);

    /// <summary>The relays that have pulled in.</summary>
    internal IReadOnlyList<string> PulledIn => [.. Now.Point.Relays.Where(r => r.Energised).Select(r => r.Id)];

    private (OperatingPoint Point, FirmNodes Firm) Now => _now ??= Solve();

    private double? VoltsOf(int node)
    {
        int zero = _wiring.Network.Reference;
        return !Now.Point.Solution.IsFloating(node) && Now.Firm.Hold(node, zero) && Now.Point.Volts(node, zero) is var volts && Math.Abs(volts) > _liveVolts
            ? volts
            : null;
    }

    private (OperatingPoint, FirmNodes) Solve()
    {
        foreach (WiredFuse fuse in _wiring.Of<WiredFuse>())
        {
            fuse.LeftOpen = !_on.Contains(fuse.Part.Id);
        }

        OperatingPoint point = _solver.Solve(
            new BoxMode
            {
                Id = "step",
                Words = "a step of the first connection",
                Added = true,
                ClosedSwitches = _on.Where(id => _pack.Find(id) is Switch).ToHashSet(StringComparer.Ordinal),
                Sources = new Dictionary<string, SourceState>(),
                Loads = new Dictionary<string, LoadUse>(),
            },
            _corner);
        return (point, new FirmNodes(_wiring, point));
    }
}
