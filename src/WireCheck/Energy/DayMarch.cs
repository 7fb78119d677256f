using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Energy;

/// <summary>One mode of one day.</summary>
/// <param name="Day">1 for the first.</param>
/// <param name="Mode">Id of the mode.</param>
/// <param name="Seconds">Time it is meant to last, s.</param>
/// <param name="Ran">Time it lasted, s.</param>
/// <param name="Before">Charge of the cells at its start; 1 is full.</param>
/// <param name="After">Charge at its end.</param>
/// <param name="End">What ended it too soon; null when nothing did.</param>
/// <param name="Starts">False when the mode does not run even from a full bank, which is no matter of its charge.</param>
public sealed record DayStep(int Day, string Mode, double Seconds, double Ran, double Before, double After, RunEnd? End, bool Starts);

/// <summary>Days that begin full: each mode with a time of its own in the order of the description, then the rest of the day.</summary>
/// <param name="Condition">In what state the cells are.</param>
/// <param name="Steps">Every mode of every day.</param>
/// <param name="RestMode">The mode in which the rest of the day is spent.</param>
/// <param name="ChargingModes">Ids of the modes of the day in which the bank is charged.</param>
public sealed record DayMarch(EnergyCondition Condition, IReadOnlyList<DayStep> Steps, string RestMode, IReadOnlyList<string> ChargingModes)
{
    /// <summary>Days that are reckoned.</summary>
    public const int Days = 7;

    /// <summary>The first step that started and ended too soon; null when all last.</summary>
    public DayStep? FirstStop
    {
        get
        {
            foreach (DayStep step in Steps)
            {
                if (step.End is not null && step.Starts)
                {
                    return step;
                }
            }

            return null;
        }
    }

    /// <summary>Charge at the end of a day, 1 for the first; NaN when it was not reckoned.</summary>
    public double AfterDay(int day)
    {
        double charge = double.NaN;
        foreach (DayStep step in Steps)
        {
            charge = step.Day == day ? step.After : charge;
        }

        return charge;
    }

    /// <summary>Marches; null when no mode has a time of its own.</summary>
    internal static DayMarch? Of(EnergyStudy study, EnergyCondition condition)
    {
        double timed = 0;
        foreach (Description.Mode mode in study.Box.Pack.Modes)
        {
            timed += mode.For?.Value.Seconds ?? 0;
        }

        if (!(timed > 0))
        {
            return null;
        }

        BoxMode rest = RestOf(study, condition);
        List<DayStep> steps = [];
        List<string> charging = [];
        double charge = 1;
        for (int day = 1; day <= Days; day++)
        {
            foreach (Description.Mode mode in study.Box.Pack.Modes)
            {
                if (mode.For is { } time)
                {
                    BoxMode timedMode = study.Mode(mode.Id);
                    charge = Step(study.TrailOf(timedMode, condition), day, mode.Id, time.Value.Seconds, charge, steps);
                    NoteCharging(study.TrailOf(timedMode, condition), mode.Id, charging);
                }
            }

            if (timed < Durations.SecondsPerDay)
            {
                charge = Step(study.TrailOf(rest, condition), day, rest.Id, Durations.SecondsPerDay - timed, charge, steps);
                NoteCharging(study.TrailOf(rest, condition), rest.Id, charging);
            }
        }

        return new DayMarch(condition, steps, rest.Id, charging);
    }

    private static void NoteCharging(Trail trail, string mode, List<string> charging)
    {
        if (trail.Direction == TrailDirection.Charging && !charging.Contains(mode))
        {
            charging.Add(mode);
        }
    }

    private static double Step(Trail trail, int day, string mode, double seconds, double charge, List<DayStep> steps)
    {
        (double after, double ran) = trail.After(charge, seconds);
        bool tooShort = ran < seconds * (1 - ShortestShare);
        bool starts = trail.Direction == TrailDirection.Still || trail.Points.Count > 1;
        steps.Add(new DayStep(day, mode, seconds, ran, charge, after, tooShort ? trail.End : null, starts));
        return after;
    }

    /// <summary>A step that lacks less than this is whole.</summary>
    private const double ShortestShare = 1e-9;

    /// <summary>The first described mode without a time in which the bank is charged; else the box stored.</summary>
    private static BoxMode RestOf(EnergyStudy study, EnergyCondition condition)
    {
        foreach (Description.Mode mode in study.Box.Pack.Modes)
        {
            if (mode.For is null && study.TrailOf(study.Mode(mode.Id), condition).Direction == TrailDirection.Charging)
            {
                return study.Mode(mode.Id);
            }
        }

        return study.Mode(Modes.Stored);
    }
}
