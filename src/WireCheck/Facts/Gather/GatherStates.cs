using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Further solves and sums over solved points that several gatherers share, each done once.</summary>
public sealed class GatherStates
{
    private readonly GatherContext _context;
    private readonly StateSolver _states;
    private readonly OperatingPointSolver _solver;
    private readonly Dictionary<OperatingPoint, OperatingPoint?> _uncut = [];
    private readonly Dictionary<OperatingPoint, CurrentFlow> _flows = [];

    internal GatherStates(GatherContext context)
    {
        _context = context;
        _states = new StateSolver(context.Wiring);
        _solver = new OperatingPointSolver(context.Wiring.Network);
    }

    /// <summary>The solver of the box, for studies that set its conditions anew at each solve.</summary>
    internal StateSolver Solver => _states;

    /// <summary>Currents of a point in order of their direction.</summary>
    public CurrentFlow FlowAt(OperatingPoint point)
    {
        if (!_flows.TryGetValue(point, out CurrentFlow? flow))
        {
            flow = new CurrentFlow(_context.Wiring, point);
            _flows.Add(point, flow);
        }

        return flow;
    }

    /// <summary>
    /// The same point with every converter and inverter that cut off kept running, relays as they stood; the point itself
    /// when none cut off; null when the wiring cannot carry that.
    /// </summary>
    public OperatingPoint? AsThoughNotCutOff(OperatingPoint point)
    {
        if (!point.Inputs.Any(i => i.CutOff))
        {
            return point;
        }

        if (!_uncut.TryGetValue(point, out OperatingPoint? uncut))
        {
            uncut = SolveUncut(point);
            _uncut.Add(point, uncut);
        }

        return uncut;
    }

    /// <summary>Voltage from 86 to 85 of a relay at a point, its own contact open and everything else as it stood.</summary>
    public double? CoilVoltsBeforeClosing(OperatingPoint point, WiredRelay relay)
    {
        _states.Solve(point.Mode, point.Corner);
        relay.Energised = false;
        Solution solution = _solver.Solve();

        // What lies behind the open contact cannot be served: it is taken off, which is what the contact does.
        for (int round = 0; round < MostTakenOff && solution.Outcome == SolveOutcome.Collapsed; round++)
        {
            TakeOff(solution.Collapsed);
            solution = _solver.Solve();
        }

        return solution.Outcome == SolveOutcome.Solved
            ? solution.Voltage(_context.Wiring.Node(relay.Part.Id, "86"), _context.Wiring.Node(relay.Part.Id, "85"))
            : null;
    }

    /// <summary>More than the constant-power parts of any box.</summary>
    private const int MostTakenOff = 64;

    private static void TakeOff(IEnumerable<Element> elements)
    {
        foreach (Element element in elements)
        {
            if (element is ConstantPowerSink sink)
            {
                sink.On = false;
            }
            else if (element is ConverterStage stage)
            {
                stage.On = false;
            }
        }
    }

    /// <summary>A point solved again with its cells at another temperature, °C; null when it has no solution.</summary>
    public OperatingPoint? WithCellsAt(OperatingPoint point, double celsius)
    {
        Corner corner = point.Corner with { Conditions = point.Corner.Conditions with { CellCelsius = celsius } };
        OperatingPoint again = _states.Solve(point.Mode, corner);
        return again.Solution.Outcome == SolveOutcome.Solved ? again : null;
    }

    private OperatingPoint? SolveUncut(OperatingPoint point)
    {
        _states.Solve(point.Mode, point.Corner);
        foreach (InputState input in point.Inputs.Where(i => i.CutOff))
        {
            if (_context.Wiring[input.Id] is IPoweredInput powered)
            {
                powered.On = true;
            }
        }

        Solution solution = _solver.Solve();
        return solution.Outcome != SolveOutcome.Solved ? null : new OperatingPoint
        {
            Mode = point.Mode,
            Corner = point.Corner,
            Solution = solution.Snapshot(),
            Relays = point.Relays,
            Inputs = point.Inputs,
            Undeliverable = point.Undeliverable,
            RelaysWithTwoStates = point.RelaysWithTwoStates,
            ChatteringRelays = point.ChatteringRelays,
        };
    }
}
