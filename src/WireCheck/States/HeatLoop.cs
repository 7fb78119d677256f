using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Heat;
using WireCheck.Knowledge;

namespace WireCheck.States;

/// <summary>
/// Settles circuit and heat together. In turn, the circuit is solved with the temperatures of copper, coils and cells as
/// they stand, and heat turns watts into temperatures, until both stand still. Neither knows the other. Joints and cells are as old as
/// the corner has them, cells as warm as the air inside; the copper of bars counts as warm as that air too.
/// Where loads come and go, each conductor is as warm as at the end of their spells and the box as by their average.
/// </summary>
internal sealed class HeatLoop
{
    /// <summary>More rounds than circuit and heat need: each round moves the temperatures by a few per cent of the last.</summary>
    private const int MostRounds = 8;

    /// <summary>A smaller step of the air inside moves no verdict, K.</summary>
    private const double SmallestStep = 0.05;

    /// <summary>Heat below this warms no box by a noticeable degree, W: one round is enough.</summary>
    private const double NoticeableWatts = 0.2;

    private readonly BoxWiring _wiring;
    private readonly StateSolver _solver;
    private readonly EnclosureBalance? _enclosure;
    private readonly ConductorHeat _conductors;
    private readonly WiredConductor[] _wires;
    private readonly double[] _amps;
    private readonly double[] _limits;
    private readonly double[] _timeConstants;
    private readonly double _ambient;

    /// <summary>Prepares a loop.</summary>
    /// <param name="wiring">The box.</param>
    /// <param name="solver">Solves its circuit.</param>
    /// <param name="ambient">Air around the box, °C.</param>
    internal HeatLoop(BoxWiring wiring, StateSolver solver, double ambient)
    {
        _wiring = wiring;
        _solver = solver;
        _ambient = ambient;
        _enclosure = wiring.Pack.Surroundings.Enclosure is { } box ? new EnclosureBalance(box, wiring.Data.Library) : null;
        _wires = [.. wiring.Of<WiredConductor>()];
        _amps = new double[_wires.Length];
        _limits = new double[_wires.Length];
        _timeConstants = new double[_wires.Length];
        double[] ohms = new double[_wires.Length];
        for (int i = 0; i < ohms.Length; i++)
        {
            InsulationClass insulation = wiring.Data.Library.Insulation[_wires[i].Conductor.Insulation.Value];
            _limits[i] = insulation.LimitCelsius;
            _timeConstants[i] = WireShape.Of(_wires[i].Conductor, wiring.Data.Library)
                .TimeConstant(Math.Max(insulation.RatedCelsius, _ambient + LeastRise), _ambient);
            ohms[i] = wiring.Data.OhmsPerMetre(_wires[i].Conductor, TableCelsius);
        }

        _conductors = new ConductorHeat([.. _wires.Select(w => w.Conductor)], ohms, wiring.Data.Library);
    }

    /// <summary>Temperature of the tables of resistance, °C.</summary>
    private const double TableCelsius = 20;

    /// <summary>Rise at which a time constant is told for insulation that the air alone is too hot for, K.</summary>
    private const double LeastRise = 10;

    /// <summary>A current that is larger by less warms no conductor by a degree that matters.</summary>
    private const double NoticeableRatio = 1.02;

    /// <summary>A current that is larger by more was another state of the load, not the same one at another voltage.</summary>
    private const double CollapsedRatio = 2;

    /// <summary>Time constants of the conductors, each lying alone, s.</summary>
    internal IReadOnlyList<double> TimeConstants => _timeConstants;

    /// <summary>One mode at one corner; null when the circuit has no solution there.</summary>
    internal HeatedMode? Settle(BoxMode mode, Corner corner)
    {
        DutyAverage average = new(
            DutyStates.Of(mode, _wiring.Pack), _wiring.Data.Assumed("box_time_constant"), _timeConstants, _wiring.Parts.Count);
        double inside = _ambient;
        double[] celsius = new double[_wires.Length];
        HeatedMode? cooler = null;
        for (int round = 1; ; round++)
        {
            if (SolveAll(average, corner, inside, round > 1 ? celsius : null) is not { } point)
            {
                return null;
            }

            if (cooler is not null && Stops(point, cooler.Point))
            {
                return cooler;
            }

            double total = Sum(average.Watts);
            double next = _enclosure?.InsideCelsius(total, _ambient) ?? _ambient;
            double moved = Heat(average.Amps, next, celsius);
            bool still = Math.Abs(next - inside) < SmallestStep && moved < SmallestStep;
            cooler = new HeatedMode
            {
                Point = point,
                AmbientCelsius = _ambient,
                InsideCelsius = next,
                SimpleInsideCelsius = _enclosure?.SimpleCelsius(total, _ambient) ?? _ambient,
                PartWatts = [.. average.Watts],
                ConductorAmps = [.. average.Amps],
                ConductorCelsius = [.. celsius],
                PeakCelsius = [.. celsius],
                InsideWatts = total,
                Charging = IsCharging(point),
                Lasts = Lasts(celsius),
                Rounds = round,
            };
            if (still || total < NoticeableWatts || round == MostRounds)
            {
                return cooler;
            }

            inside = next;
        }
    }

    /// <summary>
    /// A settled mode with every conductor judged by the largest current it carries at any of the corners, each as hot as the rest of
    /// its bundle at its largest makes it, in the air of the mode.
    /// </summary>
    /// <param name="heated">The mode, settled at one corner.</param>
    /// <param name="corners">The same mode, solved at every corner.</param>
    internal HeatedMode AtLargestCurrents(HeatedMode heated, IEnumerable<OperatingPoint> corners)
    {
        double[] amps = [.. heated.ConductorAmps];
        bool larger = false;
        foreach (OperatingPoint point in corners)
        {
            for (int i = 0; i < amps.Length && point.Solution.Outcome == SolveOutcome.Solved; i++)
            {
                double here = Math.Abs(point.Amps(_wires[i].Element));
                double settled = Math.Abs(heated.Point.Amps(_wires[i].Element));
                if (here > settled * NoticeableRatio && here > amps[i] * NoticeableRatio)
                {
                    // What a load that comes and goes heats less than its peak stays in proportion, unless it had collapsed.
                    double share = settled * CollapsedRatio > here ? heated.ConductorAmps[i] / settled : 1;
                    amps[i] = Math.Max(amps[i], here * share);
                    larger = true;
                }
            }
        }

        if (!larger)
        {
            return heated;
        }

        double[] celsius = new double[amps.Length];
        _conductors.Settle(amps, heated.InsideCelsius, _ambient, celsius);
        return heated with { PeakCelsius = celsius, Lasts = heated.Lasts && Lasts(celsius) };
    }

    /// <summary>
    /// Tells whether something that ran in a cooler round has stopped, since warm wires no longer bring its power. It runs until
    /// then and again once they have cooled, so the cooler round tells how warm the box gets; a box at rest would not.
    /// </summary>
    private static bool Stops(OperatingPoint warmer, OperatingPoint cooler)
    {
        if (warmer.Undeliverable.Count > cooler.Undeliverable.Count)
        {
            return true;
        }

        for (int i = 0; i < warmer.Inputs.Count; i++)
        {
            if (cooler.Inputs[i].On && warmer.Inputs[i].CutOff)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// Solves all states of a mode and returns its first, with everything on; null when that has no solution. Where a further one has
    /// none, the one before stands in for it.
    /// </summary>
    private OperatingPoint? SolveAll(DutyAverage average, Corner corner, double inside, double[]? celsius)
    {
        OperatingPoint? first = null;
        double[] watts = [];
        for (int state = 0; state < average.States.Modes.Count; state++)
        {
            OperatingPoint point = SolveAt(average.States.Modes[state], corner, inside, celsius);
            if (point.Solution.Outcome == SolveOutcome.Solved)
            {
                first ??= point;
                watts = HeatOfParts.Of(_wiring, point.Solution);
                for (int i = 0; i < _wires.Length; i++)
                {
                    _amps[i] = point.Amps(_wires[i].Element);
                }
            }
            else if (first is null)
            {
                return null;
            }

            average.Add(state, _amps, watts);
        }

        return first;
    }

    private OperatingPoint SolveAt(BoxMode mode, Corner corner, double inside, double[]? celsius)
    {
        _wiring.SetConditions(corner.Conditions with { CellCelsius = inside, CopperCelsius = inside, CoilAirCelsius = inside });
        for (int i = 0; celsius is not null && i < _wires.Length; i++)
        {
            if (Math.Abs(celsius[i] - inside) > WiredConductor.NoticeableKelvin)
            {
                _wires[i].SetTemperature(celsius[i], corner.HighestResistance);
            }
        }

        return _solver.SolveAsSet(mode, corner);
    }

    /// <summary>Settles the conductors and returns the largest step of any, K.</summary>
    private double Heat(double[] amps, double inside, double[] celsius)
    {
        double[] before = [.. celsius];
        _conductors.Settle(amps, inside, _ambient, celsius);
        double moved = 0;
        for (int i = 0; i < celsius.Length; i++)
        {
            moved = Math.Max(moved, Math.Abs(celsius[i] - before[i]));
        }

        return moved;
    }

    private bool Lasts(double[] celsius)
    {
        for (int i = 0; i < celsius.Length; i++)
        {
            if (celsius[i] > _limits[i])
            {
                return false;
            }
        }

        return true;
    }

    private static double Sum(double[] watts)
    {
        double sum = 0;
        foreach (double value in watts)
        {
            sum += value;
        }

        return sum;
    }

    /// <summary>True when any bank takes charge by more than its standby takes from it.</summary>
    private bool IsCharging(OperatingPoint point)
    {
        foreach (WiredBank bank in _wiring.Of<WiredBank>())
        {
            double amps = GroupAmps.Into(bank, 0, point.Solution);
            if (amps > _wiring.Data.Assumed("charging_rate") * bank.Cells.Capacity.Value.AmpereHours * bank.Columns)
            {
                return true;
            }
        }

        return false;
    }
}
