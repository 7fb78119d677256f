using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Faults.SingleFaults;

/// <summary>
/// The box with one thing wrong at a time, solved on the network it has already: a contact held, a fuse left open, a BMS
/// open, a conductor off. Each list is solved when it is first asked for, in the two corners that differ most: full cells with
/// the lowest resistance (most voltage) and empty ones with the highest (most current for a given power).
/// </summary>
public sealed class SingleFaultStudy
{
    /// <summary>Resistance of a conductor that has come off, Ω: nothing worth counting passes.</summary>
    private const double OffOhms = 1e9;

    private readonly SolvedBox _box;
    private readonly Corner _full;
    private readonly Corner[] _corners;
    private readonly WiringGraph _graph;
    private readonly Pole[] _poles;
    private readonly Dictionary<string, SingleFault?> _welded = new(StringComparer.Ordinal);
    private StateSolver? _solver;
    private IReadOnlyList<SingleFault>? _fusesOpen;
    private IReadOnlyList<SingleFault>? _bmsOpen;
    private IReadOnlyList<SingleFault>? _returnsWithWayRound;
    private IReadOnlyList<SingleFault>? _returnsWithout;

    /// <summary>Prepares the study of a box; nothing is solved before it is asked.</summary>
    /// <param name="box">The box.</param>
    /// <param name="graph">Its ways, contacts counted as closed.</param>
    /// <param name="poles">The pole of each node.</param>
    public SingleFaultStudy(SolvedBox box, WiringGraph graph, Pole[] poles)
    {
        ArgumentNullException.ThrowIfNull(box);
        _box = box;
        _graph = graph;
        _poles = poles;
        _full = box.Corners.First(c => c is { Charge: Charge.Full, HighestResistance: false });
        _corners = [_full, box.Corners.First(c => c is { Charge: Charge.Empty, HighestResistance: true })];
    }

    /// <summary>Each fuse and breaker left open, with every load on.</summary>
    public IReadOnlyList<SingleFault> FusesOpen => _fusesOpen ??= SolveFusesOpen();

    /// <summary>Every BMS open, with every load on.</summary>
    public IReadOnlyList<SingleFault> BmsOpen => _bmsOpen ??= SolveBmsOpen();

    /// <summary>Each return off that has a way round it, with every load on: what flows takes that way.</summary>
    public IReadOnlyList<SingleFault> ReturnsWithWayRound => _returnsWithWayRound ??= SolveReturns(wayRound: true);

    /// <summary>Each return off that has none.</summary>
    public IReadOnlyList<SingleFault> ReturnsWithoutWayRound => _returnsWithout ??= SolveReturns(wayRound: false);

    /// <summary>
    /// The contact of a relay or a switch welded, everything that a hand can open being open: every switch and every breaker.
    /// Null when that has no solution.
    /// </summary>
    public SingleFault? Welded(WiredPart contact)
    {
        string id = contact.Part.Id;
        if (!_welded.TryGetValue(id, out SingleFault? fault))
        {
            fault = SolveWelded(contact);
            _welded.Add(id, fault);
        }

        return fault;
    }

    private StateSolver Solver => _solver ??= new StateSolver(_box.Wiring);

    private SingleFault? SolveWelded(WiredPart contact)
    {
        BoxMode stored = Mode(Modes.Stored);
        WiredFuse[] breakers = [.. _box.Wiring.Of<WiredFuse>().Where(f => f.Fuse.IsBreaker)];
        Array.ForEach(breakers, b => b.LeftOpen = true);
        WiredRelay? relay = contact as WiredRelay;
        if (relay is not null)
        {
            relay.Held = true;
        }

        OperatingPoint point = Solver.Solve(relay is null ? stored.WithSwitches(new HashSet<string> { contact.Part.Id }) : stored, _full);
        if (relay is not null)
        {
            relay.Held = null;
        }

        Array.ForEach(breakers, b => b.LeftOpen = false);
        return Fault(SingleFaultKind.ContactWelded, contact.Part.Id, point);
    }

    private List<SingleFault> SolveFusesOpen()
    {
        List<SingleFault> faults = [];
        foreach (WiredFuse fuse in _box.Wiring.Of<WiredFuse>())
        {
            fuse.LeftOpen = true;
            foreach (Corner corner in _corners)
            {
                AddTo(faults, Fault(SingleFaultKind.FuseOpen, fuse.Part.Id, Solver.Solve(Mode(Modes.Everything), corner)));
            }

            fuse.LeftOpen = false;
        }

        return faults;
    }

    private List<SingleFault> SolveBmsOpen()
    {
        List<SingleFault> faults = [];
        WiredBms? bms = _box.Wiring.Of<WiredBms>().FirstOrDefault();
        foreach (Corner corner in bms is null ? [] : _corners)
        {
            AddTo(faults, Fault(SingleFaultKind.BmsStuckOpen, bms!.Part.Id, Solver.Solve(Mode(Modes.Everything), corner, bmsConducts: false)));
        }

        return faults;
    }

    private List<SingleFault> SolveReturns(bool wayRound)
    {
        List<SingleFault> faults = [];
        foreach (WiredConductor wire in _box.Wiring.Of<WiredConductor>())
        {
            if (!IsReturn(wire) || HasWayRound(wire) != wayRound)
            {
                continue;
            }

            foreach (Corner corner in _corners)
            {
                _box.Wiring.SetConditions(corner.Conditions);
                double ohms = wire.Element.Ohms;
                wire.Element.Ohms = OffOhms;
                OperatingPoint point = Solver.SolveAsSet(Mode(Modes.Everything), corner);
                wire.Element.Ohms = ohms;
                AddTo(faults, Fault(SingleFaultKind.ReturnLost, wire.Part.Id, point));
            }
        }

        return faults;
    }

    private bool IsReturn(WiredConductor wire) =>
        _poles[wire.Element.A] == Pole.Negative && _poles[wire.Element.B] == Pole.Negative;

    private bool HasWayRound(WiredConductor wire) =>
        Reach.From(_graph, wire.Element.A, e => e.PartId != wire.Part.Id)[wire.Element.B];

    private SingleFault? Fault(SingleFaultKind kind, string id, OperatingPoint point)
    {
        OperatingPoint? whole = _box.Points.FirstOrDefault(p => p.Mode.Id == point.Mode.Id && p.Corner == point.Corner);
        return point.Solution.Outcome == SolveOutcome.Solved && whole?.Solution.Outcome == SolveOutcome.Solved
            ? new SingleFault(kind, id, point, whole)
            : null;
    }

    private static void AddTo(List<SingleFault> faults, SingleFault? fault)
    {
        if (fault is not null)
        {
            faults.Add(fault);
        }
    }

    private BoxMode Mode(string id) => _box.Modes.First(m => m.Id == id);
}
