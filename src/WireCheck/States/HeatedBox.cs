using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;

namespace WireCheck.States;

/// <summary>
/// A box warm in each of its lasting modes. Of the three charges with the highest resistance, the one at which the conductors
/// make the most heat is settled: it decides, unless a load then asks for more than the wiring brings and collapses.
/// </summary>
public sealed class HeatedBox
{
    /// <summary>A corner at which the conductors make less than this times the heat of another decides nothing.</summary>
    private const double NoticeableRatio = 1.02;

    private HeatedBox(SolvedBox box, IReadOnlyList<HeatedMode> modes, IReadOnlyList<double> timeConstants)
    {
        Box = box;
        TimeConstants = timeConstants;
        Modes = modes;
        foreach (HeatedMode mode in modes)
        {
            Hottest = Hotter(Hottest, mode, mode.Lasts);
            HottestCharging = Hotter(HottestCharging, mode, mode.Lasts && mode.Charging);
        }
    }

    /// <summary>The box as it was solved before.</summary>
    public SolvedBox Box { get; }

    /// <summary>Lasting modes that have a solution, in the order of the box.</summary>
    public IReadOnlyList<HeatedMode> Modes { get; }

    /// <summary>Time constant of each conductor lying alone, s, in the order of the wired conductors.</summary>
    public IReadOnlyList<double> TimeConstants { get; }

    /// <summary>The mode with the hottest air inside, of those that can last; null when there is none.</summary>
    public HeatedMode? Hottest { get; }

    /// <summary>The same among the modes in which cells take charge; null when there is none.</summary>
    public HeatedMode? HottestCharging { get; }

    /// <summary>Hottest air in the box, °C; without any solved mode, that around it.</summary>
    public double HottestInsideCelsius => Hottest?.InsideCelsius ?? Box.Pack.Surroundings.Ambient.Value.To.DegreesCelsius;

    /// <summary>The mode of that id; null when it has no solution.</summary>
    public HeatedMode? In(string modeId)
    {
        foreach (HeatedMode mode in Modes)
        {
            if (mode.Mode.Id == modeId)
            {
                return mode;
            }
        }

        return null;
    }

    /// <summary>Settles circuit and heat of every lasting mode of a solved box.</summary>
    public static HeatedBox Solve(SolvedBox box, StateSolver solver)
    {
        HeatLoop loop = new(box.Wiring, solver, box.Pack.Surroundings.Ambient.Value.To.DegreesCelsius);
        List<HeatedMode> modes = [];
        for (int m = 0; m < box.Modes.Count; m++)
        {
            if (box.Modes[m].Steady && SettledAtHottest(box, m, loop) is { } heated)
            {
                modes.Add(loop.AtLargestCurrents(heated, box.Points.Skip(m * box.Corners.Count).Take(box.Corners.Count)));
            }
        }

        return new HeatedBox(box, modes, loop.TimeConstants);
    }

    private static HeatedMode? Hotter(HeatedMode? held, HeatedMode mode, bool counts) =>
        counts && (held is null || mode.InsideCelsius > held.InsideCelsius) ? mode : held;

    /// <summary>
    /// A mode settled at the corner of the highest resistance at which its conductors make the most heat; where they make more at
    /// another corner, because a load collapses at this one, the hotter of the two.
    /// </summary>
    private static HeatedMode? SettledAtHottest(SolvedBox box, int mode, HeatLoop loop)
    {
        Corner? aged = null;
        Corner? any = null;
        double agedWatts = -1;
        double anyWatts = -1;
        for (int c = 0; c < box.Corners.Count; c++)
        {
            OperatingPoint point = box.Points[(mode * box.Corners.Count) + c];
            if (point.Solution.Outcome != SolveOutcome.Solved)
            {
                continue;
            }

            double watts = 0;
            foreach (WiredPart part in box.Wiring.Parts)
            {
                watts += part is WiredConductor wire ? point.Solution.Power(wire.Element) : 0;
            }

            if (point.Corner.HighestResistance && watts > agedWatts)
            {
                (agedWatts, aged) = (watts, point.Corner);
            }

            if (watts > anyWatts)
            {
                (anyWatts, any) = (watts, point.Corner);
            }
        }

        HeatedMode? heated = aged is null ? null : loop.Settle(box.Modes[mode], aged);
        HeatedMode? other = any is null || (heated is not null && anyWatts <= agedWatts * NoticeableRatio) ? null : loop.Settle(box.Modes[mode], any);
        return heated is null || other?.InsideCelsius > heated.InsideCelsius ? other : heated;
    }
}
