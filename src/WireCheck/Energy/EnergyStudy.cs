using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Energy;

/// <summary>A mode from a full bank until something stops it.</summary>
/// <param name="Mode">Id of the mode.</param>
/// <param name="Condition">In what state the cells are.</param>
/// <param name="Direction">Which way the charge moves.</param>
/// <param name="Seconds">Time it lasts, s; infinite when the charge stands still, and the time to fill when it is charged.</param>
/// <param name="End">What ends it.</param>
/// <param name="EndCharge">Part of the counted charge that is left then; NaN when it never ran.</param>
/// <param name="LeftCoulombs">The same of all banks, C.</param>
/// <param name="MeanAmps">Current out of the banks on the average over the time, A.</param>
/// <param name="Energy">Given, used and lost over the time, J, by wired part.</param>
/// <param name="CellCelsius">Cells on the average over the time, °C, warmed by the box.</param>
/// <param name="InsideCelsius">Air in the box once it has settled, °C.</param>
/// <param name="Solves">States that were solved for it.</param>
public sealed record ModeRun(
    string Mode, EnergyCondition Condition, TrailDirection Direction, double Seconds, RunEnd End, double EndCharge,
    double LeftCoulombs, double MeanAmps, PowerSplit? Energy, double CellCelsius, double InsideCelsius, int Solves);

/// <summary>How long a box runs and how long it charges: each answer is found once, when it is first asked for.</summary>
public sealed class EnergyStudy
{
    private readonly StateSolver _solver;
    private readonly CutOffs _cutOffs;
    private readonly Dictionary<string, Trail> _trails = new(StringComparer.Ordinal);
    private readonly bool _hasCells;
    private DayMarch? _agedDays;
    private DayMarch? _freshDays;

    /// <summary>Prepares the study; nothing is solved yet.</summary>
    public EnergyStudy(SolvedBox box, WiringGraph graph)
    {
        Box = box;
        _solver = new StateSolver(box.Wiring);
        _cutOffs = new CutOffs(box.Wiring, graph);
        _hasCells = box.Wiring.Of<WiredBank>().Any();
        FreshAndWarm = EnergyCondition.FreshAndWarm(box);
        AgedAndCold = EnergyCondition.AgedAndCold(box);
    }

    /// <summary>The box.</summary>
    public SolvedBox Box { get; }

    /// <summary>The longer runtimes.</summary>
    public EnergyCondition FreshAndWarm { get; }

    /// <summary>The shorter runtimes.</summary>
    public EnergyCondition AgedAndCold { get; }

    /// <summary>The days with aged cold cells; null when no mode has a time of its own or there is no bank.</summary>
    public DayMarch? AgedDays => _hasCells ? _agedDays ??= DayMarch.Of(this, AgedAndCold) : null;

    /// <summary>The same with fresh warm cells.</summary>
    public DayMarch? FreshDays => _hasCells ? _freshDays ??= DayMarch.Of(this, FreshAndWarm) : null;

    /// <summary>A mode from full to its end, or from empty to the end of its charge; null without a bank.</summary>
    public ModeRun? Run(BoxMode mode, EnergyCondition condition)
    {
        if (!_hasCells)
        {
            return null;
        }

        Trail trail = TrailOf(mode, condition);
        if (trail.Points.Count < 2)
        {
            double lasts = trail.Direction == TrailDirection.Still ? double.PositiveInfinity : 0;
            return new ModeRun(
                mode.Id, condition, trail.Direction, lasts, trail.End, 1, Counted(condition), 0, null, Cells(trail, condition), Inside(trail, condition), trail.Solves);
        }

        (double low, double high) = (trail.Points[0].Charge, trail.Points[^1].Charge);
        double seconds = trail.Seconds(low, high);
        double end = trail.EndCharge;
        return new ModeRun(
            mode.Id, condition, trail.Direction, seconds, trail.End, end, Math.Max(0, end) * Counted(condition),
            trail.Sum(low, high, p => p.Amps * p.SecondsPerCharge) / seconds, PowerSplit.Over(trail, low, high),
            Cells(trail, condition), Inside(trail, condition), trail.Solves);
    }

    /// <summary>The mode of that id.</summary>
    internal BoxMode Mode(string id)
    {
        foreach (BoxMode mode in Box.Modes)
        {
            if (mode.Id == id)
            {
                return mode;
            }
        }

        throw new ArgumentException($"there is no mode {id}", nameof(id));
    }

    internal Trail TrailOf(BoxMode mode, EnergyCondition condition)
    {
        string key = mode.Id + "/" + condition.Words;
        if (!_trails.TryGetValue(key, out Trail? trail))
        {
            ModeStates states = new(Box, _solver, condition, mode);
            trail = new TrailMaker(states, _cutOffs, Box.Wiring.Data.Assumed("charge_tail")).Make();
            _trails.Add(key, trail);
        }

        return trail;
    }

    private static double Cells(Trail trail, EnergyCondition condition) => trail.Heat?.CellCelsius ?? condition.Corner.Conditions.CellCelsius;

    private static double Inside(Trail trail, EnergyCondition condition) => trail.Heat?.InsideCelsius ?? condition.Corner.Conditions.CellCelsius;

    private double Counted(EnergyCondition condition)
    {
        double sum = 0;
        foreach (WiredBank bank in Box.Wiring.Of<WiredBank>())
        {
            sum += condition.CountedCoulombs(bank);
        }

        return sum;
    }
}
