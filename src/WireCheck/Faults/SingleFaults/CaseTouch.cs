using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.States;

namespace WireCheck.Faults.SingleFaults;

/// <summary>
/// A positive conductor that has chafed through onto the metal case. With the case bonded a current flows by way of the
/// bond; it is solved where it is least: empty, aged and cold cells, hot copper, nothing else running.
/// </summary>
public sealed class CaseTouch
{
    private readonly SolvedBox _box;
    private readonly Dictionary<int, Solution?> _touches = [];
    private Contact[]? _contacts;
    private StateSolver? _states;
    private OperatingPointSolver? _solver;

    /// <summary>Prepares the study of a box; nothing is solved before it is asked.</summary>
    public CaseTouch(SolvedBox box)
    {
        ArgumentNullException.ThrowIfNull(box);
        _box = box;
        IsMetal = box.Pack.Surroundings.Enclosure?.Conducts == true;
        int wall = box.Wiring.Node("case", "");
        IsBonded = IsMetal && box.Wiring.Network.Elements.Any(e => e.A == wall || e.B == wall);
        Corner = box.Corners.First(c => c is { Charge: Charge.Empty, HighestResistance: true });
    }

    /// <summary>The box is of metal, or its wall conducts.</summary>
    public bool IsMetal { get; }

    /// <summary>The metal is joined to the wiring, so that a touch drives a current.</summary>
    public bool IsBonded { get; }

    /// <summary>The corner of the least current.</summary>
    public Corner Corner { get; }

    /// <summary>Current through a fuse while a node lies on the case, A; null where the case is not bonded or nothing is solved.</summary>
    public double? AmpsThrough(WiredFuse fuse, int node) =>
        At(node) is { } solution ? Math.Abs(solution.Current(fuse.Element)) : null;

    /// <summary>Current from a node into the case, A; null as for <see cref="AmpsThrough"/>.</summary>
    public double? AmpsInto(int node) => At(node) is { } solution ? Math.Abs(solution.Current(_contacts![node])) : null;

    private Solution? At(int node)
    {
        int wall = _box.Wiring.Node("case", "");
        if (!IsBonded || node == wall)
        {
            return null;
        }

        if (!_touches.TryGetValue(node, out Solution? solution))
        {
            solution = Solve(node, wall);
            _touches.Add(node, solution);
        }

        return solution;
    }

    private Solution? Solve(int node, int wall)
    {
        if (_solver is null)
        {
            double touch = _box.Wiring.Data.Assumed("touch_resistance");
            _contacts = new Contact[_box.Wiring.Network.NodeCount];
            for (int other = 0; other < _contacts.Length; other++)
            {
                // The case touches itself nowhere; any other place keeps the numbers of the nodes.
                _contacts[other] = new Contact("touch", other, other == wall ? (wall + 1) % _contacts.Length : wall, touch);
            }

            _solver = new OperatingPointSolver(_box.Wiring.Network.With(_contacts));
        }

        _states ??= new StateSolver(_box.Wiring);
        _states.Solve(_box.Modes.First(m => m.Id == Modes.Idle), Corner);
        foreach (WiredPart part in _box.Wiring.Parts)
        {
            if (part is IPoweredInput input)
            {
                input.On = false;
            }
            else if (part is WiredLoad load)
            {
                load.SetRunning(false);
            }
        }

        _contacts![node].Closed = true;
        _solver.ForgetIslands();
        Solution solution = _solver.Solve();
        _contacts[node].Closed = false;
        return solution.Outcome == SolveOutcome.Solved ? solution.Snapshot() : null;
    }
}
