using WireCheck.Circuit.Elements;

namespace WireCheck.Circuit.Solving;

/// <summary>
/// Finds the operating point of a network: Newton's method with damping around a sparse direct solve. The pattern is
/// worked out once; each solve starts from the last answer.
/// </summary>
public sealed class OperatingPointSolver
{
    /// <summary>A solve counts only when less than this is left over at every node, A.</summary>
    public const double LargestResidualAmps = 1e-9;

    /// <summary>Newton goes on to this while it still helps, A.</summary>
    private const double AimAmps = 1e-12;

    private const int MostSteps = 60;

    private const int MostFullSteps = 15;

    private readonly NodalEquations _equations;
    private readonly ConstantPowerSink[] _sinks;
    private readonly ConverterStage[] _stages;
    private readonly PowerDemand _demand;
    private readonly PowerSearch _search;
    private readonly Solution _solution;
    private readonly int[] _island;
    private readonly int[] _reached;
    private readonly int _reference;
    private bool _forget;
    private bool _everyInputHeld;
    private readonly double[] _heldHigh;
    private readonly double[] _heldLow;
    private readonly double[] _startHigh;
    private readonly double[] _startLow;

    /// <summary>Prepares a network; its nodes and elements must not change afterwards, their values may.</summary>
    public OperatingPointSolver(Network network)
    {
        ArgumentNullException.ThrowIfNull(network);
        _equations = new NodalEquations(network);
        _sinks = [.. _equations.Elements.OfType<ConstantPowerSink>()];
        _stages = [.. _equations.Elements.OfType<ConverterStage>()];
        _demand = new PowerDemand(_sinks, _stages);
        _search = new PowerSearch(_demand, _equations, () => Newton() && IsStable(), () => Newton(MostFullSteps, damped: false) && IsStable());
        _island = new int[network.NodeCount];
        _reached = new int[network.NodeCount];
        _reference = network.Reference;
        _heldHigh = new double[network.NodeCount];
        _heldLow = new double[network.NodeCount];
        _startHigh = new double[network.NodeCount];
        _startLow = new double[network.NodeCount];
        _solution = new Solution(_equations.High, _equations.Low, _equations.Amps, _equations.OutputAmps, _island, _reached, _reference);
    }

    /// <summary>The equations of the last solve, for what changes the network a little and solves on.</summary>
    internal NodalEquations Equations => _equations;

    /// <summary>Solves from given voltages, one for each node; see <see cref="Solve()"/>.</summary>
    /// <exception cref="ArgumentException">There is not one voltage for each node.</exception>
    public Solution Solve(ReadOnlySpan<double> startVoltages)
    {
        if (startVoltages.Length != _island.Length)
        {
            throw new ArgumentException($"{_island.Length} voltages are needed, one for each node", nameof(startVoltages));
        }

        startVoltages.CopyTo(_equations.High);
        Array.Clear(_equations.Low);
        double zero = startVoltages[_reference];
        for (int node = 0; node < _island.Length; node++)
        {
            _equations.High[node] -= zero;
        }

        return Solve();
    }

    /// <summary>
    /// Lets the next solve start from 0 V everywhere but in the island of the reference: behind diodes and converters that
    /// have been switched off no old voltage must be taken for a supply.
    /// </summary>
    public void ForgetIslands() => _forget = true;

    /// <summary>Solves from the last answer. The result is overwritten by the next solve; take a snapshot to keep it.</summary>
    public Solution Solve()
    {
        _equations.FindIslands();
        int home = _equations.Islands.Of(_reference);
        for (int node = 0; node < _island.Length; node++)
        {
            int island = _equations.Islands.Of(node);
            if (island != home && (_forget || island != _island[node]))
            {
                // Behind a contact that has opened nothing holds the old voltage up.
                _equations.High[node] = 0;
                _equations.Low[node] = 0;
            }

            _island[node] = island;
            _reached[node] = _equations.Reached.Of(node);
        }

        _forget = false;
        _solution.Iterations = 0;
        bool found = Find(everyInputHeld: true);
        if (!found && Array.Exists(_stages, stage => stage.On && !stage.HoldsInput))
        {
            // Behind a source too weak for it a stage does break down, and the box goes on with that.
            found = Find(everyInputHeld: false);
        }

        if (_solution.Collapsed.Count > 0)
        {
            _solution.Outcome = SolveOutcome.Collapsed;
        }
        else
        {
            _solution.Outcome = found ? SolveOutcome.Solved : SolveOutcome.NotConverged;
        }

        return _solution;
    }

    /// <summary>Seeks an answer; with every input held, one in which no stage has broken down.</summary>
    private bool Find(bool everyInputHeld)
    {
        _everyInputHeld = everyInputHeld;
        _solution.Collapsed = [];
        _solution.ServedShare = 1;
        return (Newton() && IsStable()) || (!_demand.IsEmpty && FromUnloaded());
    }

    /// <summary>
    /// Starts from the voltages without any constant power, where the stable answer lies nearest. If that fails too,
    /// raises the power step by step; where it cannot be raised further, those that stand in the way cannot be served.
    /// </summary>
    private bool FromUnloaded()
    {
        Array.Clear(_equations.High);
        Array.Clear(_equations.Low);
        _demand.SetShare(0);
        bool unloaded = Newton();
        double[] unloadedVolts = _demand.InputVolts(_solution);
        _demand.SetShare(1);
        if (!unloaded)
        {
            return false;
        }

        (double[] high, double[] low) = _equations.CopyVolts();
        if (Newton() && IsStable())
        {
            return true;
        }

        _equations.PutBack(high, low);
        double reached = _search.Raise();
        _demand.SetShare(1);
        if (reached >= 1)
        {
            return true;
        }

        List<Element> weakest = _demand.Weakest(unloadedVolts, _demand.InputVolts(_solution));
        _solution.Collapsed = reached > 0 ? _search.InTheWay(reached, weakest) : weakest;
        _solution.ServedShare = reached;
        return false;
    }

    /// <summary>
    /// On the stable branch more current means less voltage at every part: no pivot is negative, and no constant-power
    /// part sits below its floor.
    /// </summary>
    private bool IsStable() => _equations.Factor.NegativePivots == 0 && StableInputs.Hold(_sinks, _stages, _solution, _everyInputHeld);

    /// <summary>
    /// Full steps first: across the corner of a straight-line element what is left over may grow for a moment, and a full step
    /// lands on the right line. Damped steps where a few full ones do not end.
    /// </summary>
    private bool Newton()
    {
        if (!_equations.IsLinear)
        {
            Array.Copy(_equations.High, _startHigh, _startHigh.Length);
            Array.Copy(_equations.Low, _startLow, _startLow.Length);
            if (Newton(MostFullSteps, damped: false))
            {
                return true;
            }

            _equations.PutBack(_startHigh, _startLow);
        }

        return Newton(MostSteps, damped: true);
    }

    private bool Newton(int most, bool damped)
    {
        double worst = _equations.Evaluate();
        bool factored = false;
        for (int step = 0; step < most; step++)
        {
            if (worst <= AimAmps && factored)
            {
                break;
            }

            if (!factored || !_equations.IsLinear)
            {
                _equations.Refactor();
                factored = true;
            }

            if (worst == 0)
            {
                break;
            }

            double before = worst;
            worst = TakeStep(worst, damped);
            _solution.Iterations++;
            if (worst < LargestResidualAmps && worst > before / 2)
            {
                break;
            }
        }

        _solution.WorstResidualAmps = worst;
        return worst < LargestResidualAmps;
    }

    /// <summary>One step, shortened until what is left over shrinks; the best try is kept when none shrinks it.</summary>
    private double TakeStep(double worst, bool damped)
    {
        double largest = _equations.FindStep();
        double share = largest > MostVoltsPerStep ? MostVoltsPerStep / largest : 1;
        share = _equations.ShareToEdge(share);
        Hold();
        _equations.Move(share);
        double now = _equations.Evaluate();
        if (!damped || now < worst || _equations.IsLinear)
        {
            return now;
        }

        (double bestShare, double best) = (share, now);
        for (int halving = 0; halving < 6; halving++)
        {
            share /= 2;
            Restore();
            _equations.Move(share);
            now = _equations.Evaluate();
            if (now < best)
            {
                (bestShare, best) = (share, now);
            }

            if (now < worst)
            {
                break;
            }
        }

        Restore();
        _equations.Move(bestShare);
        return _equations.Evaluate();
    }

    /// <summary>No box works above a few hundred volts; a longer step comes from a node that hardly anything holds.</summary>
    private const double MostVoltsPerStep = 1000;

    private void Hold()
    {
        Array.Copy(_equations.High, _heldHigh, _heldHigh.Length);
        Array.Copy(_equations.Low, _heldLow, _heldLow.Length);
    }

    private void Restore()
    {
        Array.Copy(_heldHigh, _equations.High, _heldHigh.Length);
        Array.Copy(_heldLow, _equations.Low, _heldLow.Length);
    }
}
