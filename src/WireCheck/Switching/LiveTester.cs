using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;

namespace WireCheck.Switching;

/// <summary>
/// Tells what is live in a settled state: more than 1 V into the test burden. What is dead without a burden is dead; what
/// hangs on a source by wire and contacts alone keeps its voltage. Only what hangs on a lamp, a coil, a resistor or a
/// junction is solved again with the burden on it, since the leakage of a junction is no straight line whose slope would
/// tell.
/// </summary>
internal sealed class LiveTester
{
    private readonly SwitchedBox _box;
    private readonly RailWay[] _contacts;
    private readonly int[] _cluster;
    private readonly bool[] _firm;
    private readonly int[] _testedPlus;
    private readonly int[] _testedMinus;
    private readonly bool[] _testedLive;
    private readonly double[] _open;
    private readonly double[] _lowest;
    private readonly double _liveVolts;

    internal LiveTester(SwitchedBox box)
    {
        _box = box;
        _contacts = [.. box.Rails.Contacts];
        _cluster = new int[box.Rails.Count];
        _firm = new bool[box.Rails.Count];
        _testedPlus = new int[box.Points.Count];
        _testedMinus = new int[box.Points.Count];
        _testedLive = new bool[box.Points.Count];
        _open = new double[box.Points.Count];
        _lowest = new double[box.Wiring.Network.NodeCount];
        _liveVolts = box.Wiring.Data.Assumed("live_above");
    }

    /// <summary>Burdened solves so far.</summary>
    internal long BurdenedSolves { get; private set; }

    /// <summary>Marks the live points of a state; what is marked already stays so.</summary>
    /// <param name="solution">The settled state, no burden on.</param>
    /// <param name="running">Converters and inverters that run.</param>
    /// <param name="live">One mark for each point.</param>
    internal void Mark(Solution solution, IReadOnlyList<bool> running, Span<byte> live)
    {
        FindClusters();
        FindLowest(solution);
        for (int i = 0; i < _open.Length; i++)
        {
            _open[i] = OpenVolts(_box.Points[i], solution);
        }

        int tested = 0;
        for (int i = 0; i < _open.Length; i++)
        {
            LivePoint point = _box.Points[i];
            if (live[i] != 0)
            {
                continue;
            }

            if (point.Kind == LivePointKind.Outlet)
            {
                live[i] = Runs(point.Inverter, running) ? (byte)1 : (byte)0;
            }
            else if (_open[i] > _liveVolts && (IsFirm(point, solution) || IsLiveBurdened(i, ref tested)))
            {
                live[i] = 1;
            }
        }
    }

    /// <summary>Marks live parts with the burden on each: with the BMS open no rail may be trusted to be firm.</summary>
    internal void MarkBurdened(Solution solution, byte[] live)
    {
        for (int i = 0; i < _open.Length; i++)
        {
            _open[i] = OpenVolts(_box.Points[i], solution);
        }

        for (int i = 0; i < _open.Length; i++)
        {
            live[i] = _box.Points[i].Kind == LivePointKind.Part && _open[i] > _liveVolts && BurdenedVolts(i) > _liveVolts ? (byte)1 : (byte)0;
        }
    }

    private bool Runs(int inverter, IReadOnlyList<bool> running)
    {
        for (int i = 0; i < _box.Inputs.Length; i++)
        {
            if (ReferenceEquals(_box.Inputs[i], _box.Inverters[inverter]))
            {
                return running[i];
            }
        }

        return false;
    }

    private double OpenVolts(LivePoint point, Solution solution)
    {
        if (point.Kind == LivePointKind.Rail && solution.IsFloating(point.Plus))
        {
            return solution.Voltage(point.Plus) - _lowest[solution.Island(point.Plus)];
        }

        bool joined = solution.IsFloating(point.Plus) == solution.IsFloating(point.Minus);
        return joined ? Math.Abs(solution.Voltage(point.Plus, point.Minus)) : 0;
    }

    /// <summary>Lowest voltage in each island that floats: the output of an isolated converter has its own zero.</summary>
    private void FindLowest(Solution solution)
    {
        Array.Fill(_lowest, double.PositiveInfinity);
        for (int node = 0; node < _lowest.Length; node++)
        {
            ref double lowest = ref _lowest[solution.Island(node)];
            lowest = Math.Min(lowest, solution.Voltage(node));
        }
    }

    private bool IsFirm(LivePoint point, Solution solution)
    {
        if (point.Kind == LivePointKind.Rail && solution.IsFloating(point.Plus))
        {
            return true;
        }

        return _firm[_cluster[_box.Rails.Of(point.Plus)]] && _firm[_cluster[_box.Rails.Of(point.Minus)]];
    }

    private bool IsLiveBurdened(int i, ref int tested)
    {
        LivePoint point = _box.Points[i];
        int plus = _cluster[_box.Rails.Of(point.Plus)];
        int minus = _cluster[_box.Rails.Of(point.Minus)];
        for (int t = 0; t < tested; t++)
        {
            if (_testedPlus[t] == plus && _testedMinus[t] == minus)
            {
                return _testedLive[t];
            }
        }

        bool isLive = BurdenedVolts(i) > _liveVolts;
        (_testedPlus[tested], _testedMinus[tested], _testedLive[tested]) = (plus, minus, isLive);
        tested++;
        return isLive;
    }

    /// <summary>Voltage across a point with its burden on, V; 0 where there is no answer.</summary>
    private double BurdenedVolts(int i)
    {
        if (_box.Burdens[i] is not { } burden)
        {
            return 0;
        }

        burden.Closed = true;
        BurdenedSolves++;
        Solution burdened = _box.Solver.Solve();
        burden.Closed = false;
        return burdened.Outcome == SolveOutcome.Solved ? Math.Abs(burdened.Voltage(burden.A, burden.B)) : 0;
    }

    /// <summary>Joins rails over closed contacts; a cluster that holds a pole of a source is firm.</summary>
    private void FindClusters()
    {
        for (int i = 0; i < _cluster.Length; i++)
        {
            _cluster[i] = i;
        }

        foreach (RailWay way in _contacts)
        {
            if (((Contact)way.Element).Closed)
            {
                int a = Leader(way.From);
                int b = Leader(way.To);
                _cluster[Math.Max(a, b)] = Math.Min(a, b);
            }
        }

        Array.Clear(_firm);
        for (int i = 0; i < _cluster.Length; i++)
        {
            _cluster[i] = Leader(i);
        }

        foreach (Circuit.Topology.SourcePoint source in _box.Sources)
        {
            if (_box.GivesPower(source))
            {
                _firm[_cluster[_box.Rails.Of(source.Plus)]] = true;
                _firm[_cluster[_box.Rails.Of(source.Minus)]] = true;
            }
        }
    }

    private int Leader(int rail)
    {
        while (_cluster[rail] != rail)
        {
            rail = _cluster[rail];
        }

        return rail;
    }
}
