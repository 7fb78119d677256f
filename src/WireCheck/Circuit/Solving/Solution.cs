using WireCheck.Circuit.Elements;

namespace WireCheck.Circuit.Solving;

/// <summary>How a solve ended.</summary>
public enum SolveOutcome
{
    /// <summary>Kirchhoff's current law holds at every node to <see cref="OperatingPointSolver.LargestResidualAmps"/>.</summary>
    Solved,

    /// <summary>Some constant-power part asks for more than the wiring can carry at any voltage.</summary>
    Collapsed,

    /// <summary>No answer was found; the voltages mean nothing.</summary>
    NotConverged,
}

/// <summary>Voltages and currents of a solved network.</summary>
public sealed class Solution
{
    private readonly double[] _high;
    private readonly double[] _low;
    private readonly double[] _amps;
    private readonly double[] _outputAmps;
    private readonly int[] _island;
    private readonly int[] _reached;
    private readonly int _reference;

    internal Solution(double[] high, double[] low, double[] amps, double[] outputAmps, int[] island, int[] reached, int reference)
    {
        _high = high;
        _low = low;
        _amps = amps;
        _outputAmps = outputAmps;
        _island = island;
        _reached = reached;
        _reference = reference;
    }

    public SolveOutcome Outcome { get; internal set; }

    /// <summary>Largest sum of currents left over at any node, A.</summary>
    public double WorstResidualAmps { get; internal set; }

    /// <summary>Newton steps taken.</summary>
    public int Iterations { get; internal set; }

    /// <summary>The constant-power elements that cannot be served, when <see cref="Outcome"/> is Collapsed.</summary>
    public IReadOnlyList<Element> Collapsed { get; internal set; } = [];

    /// <summary>Share of the power asked for that could be served, when <see cref="Outcome"/> is Collapsed: 0 when none at all, below 1.</summary>
    public double ServedShare { get; internal set; } = 1;

    /// <summary>Voltage of a node above its island's zero, V.</summary>
    public double Voltage(int node) => _high[node] + _low[node];

    /// <summary>Voltage of one node above another, V; meaningful within one island.</summary>
    public double Voltage(int above, int below) => (_high[above] - _high[below]) + (_low[above] - _low[below]);

    /// <summary>Current through an element from A to B, A.</summary>
    public double Current(Element element) => _amps[element.Index];

    /// <summary>Current a converter delivers at its output, A.</summary>
    public double OutputCurrent(ConverterStage stage) => _outputAmps[stage.Index];

    /// <summary>Power an element takes at A and B, W; negative when it gives.</summary>
    public double Power(Element element) => Current(element) * Voltage(element.A, element.B);

    /// <summary>Number of the island a node lies in; voltages between islands mean nothing.</summary>
    public int Island(int node) => _island[node];

    /// <summary>True when nothing joins a node to the reference; its voltage above the reference then means nothing.</summary>
    public bool IsFloating(int node) => _reached[node] != _reached[_reference];

    /// <summary>
    /// Number of the group a node lies in that anything joins which is neither open nor unplugged: a converter's output pair, a
    /// panel's poles, what hangs on a diode. Between groups no voltage is defined.
    /// </summary>
    public int Group(int node) => _reached[node];

    /// <summary>A copy that later solves do not change.</summary>
    public Solution Snapshot() => new(
        (double[])_high.Clone(),
        (double[])_low.Clone(),
        (double[])_amps.Clone(),
        (double[])_outputAmps.Clone(),
        (int[])_island.Clone(),
        (int[])_reached.Clone(),
        _reference)
    {
        Outcome = Outcome,
        WorstResidualAmps = WorstResidualAmps,
        Iterations = Iterations,
        Collapsed = Collapsed,
        ServedShare = ServedShare,
    };
}
