using WireCheck.Circuit.Solving;
using WireCheck.States;

namespace WireCheck.Energy;

/// <summary>
/// Marches a mode over the charge of its cells. The circuit sees the charge only as the cells' open-circuit voltage, over which
/// the time for a coulomb is nearly a straight line (for constant power: voltage over power). So the march is sampled over
/// that voltage, each stretch halved until its middle lies on the line, and the table of rested voltages tells what charge
/// lies between.
/// </summary>
internal sealed class TrailMaker(ModeStates states, CutOffs cutOffs, double tailShare)
{
    /// <summary>Halvings of the search for the charge at which a discharge ends: to a quarter of a thousandth of the bank.</summary>
    private const int EndHalvings = 12;

    /// <summary>The same for a charge, whose end lies in the last steep hundredth.</summary>
    private const int TailHalvings = 18;

    /// <summary>Error of the time over a stretch that is left, as part of the whole.</summary>
    private const double Tolerance = 2e-5;

    /// <summary>Deepest halving of a stretch: a contact that drops out makes a step that no halving removes.</summary>
    private const int MostDepth = 9;

    /// <summary>A bank that would last longer than this stands still, s: three hundred years.</summary>
    private const double Forever = 1e10;

    private int _solves;

    internal Trail Make()
    {
        HashSet<string> served = Served();
        double rate = Sample(MiddleCharge)?.Rate ?? double.NaN;
        if (double.IsNaN(rate) || Math.Abs(rate) < 1 / Forever)
        {
            // What cannot be solved half full can serve nobody.
            return new Trail(double.IsNaN(rate) ? TrailDirection.Discharging : TrailDirection.Still, [], RunEnd.Nothing, states.Heat, _solves);
        }

        return rate > 0 ? Discharge(served) : Fill();
    }

    private const double MiddleCharge = 0.5;

    private HashSet<string> Served()
    {
        _solves++;
        states.PeakAt(1);
        return cutOffs.Served();
    }

    private Trail Discharge(HashSet<string> served)
    {
        if (Tripped(1, served) is { } atOnce)
        {
            return new Trail(TrailDirection.Discharging, [], atOnce, states.Heat, _solves);
        }

        (double runs, double stops) = (1, states.Cells.Lowest);
        RunEnd end = Tripped(stops, served) ?? RunEnd.Nothing;
        for (int i = 0; i < EndHalvings && end.Kind != RunEndKind.Nothing; i++)
        {
            double middle = (runs + stops) / 2;
            RunEnd? there = Tripped(middle, served);
            (runs, stops) = there is null ? (middle, stops) : (runs, middle);
            end = there ?? end;
        }

        return Sampled(TrailDirection.Discharging, end.Kind == RunEndKind.Nothing ? stops : runs, 1, end);
    }

    private RunEnd? Tripped(double charge, HashSet<string> served)
    {
        _solves++;
        OperatingPoint point = states.PeakAt(charge);
        return point.Solution.Outcome == SolveOutcome.Solved
            ? cutOffs.Discharging(point, served)
            : new RunEnd(RunEndKind.Undeliverable, null, double.NaN);
    }

    private Trail Fill()
    {
        double tail = Math.Min(tailShare * states.AmpereHours, -(Sample(MiddleCharge)?.Amps ?? 0) / 2);
        (double fills, double ended) = (0, states.Cells.Highest);
        RunEnd end = Full(ended, tail) ?? RunEnd.Nothing;
        for (int i = 0; i < TailHalvings && end.Kind != RunEndKind.Nothing; i++)
        {
            double middle = (fills + ended) / 2;
            RunEnd? there = Full(middle, tail);
            (fills, ended) = there is null ? (middle, ended) : (fills, middle);
            end = there ?? end;
        }

        return Sampled(TrailDirection.Charging, 0, end.Kind == RunEndKind.Nothing ? ended : fills, end);
    }

    private RunEnd? Full(double charge, double tail)
    {
        if (Sample(charge) is not { } sample || -sample.Amps <= tail)
        {
            return new RunEnd(RunEndKind.Tail, null, double.NaN);
        }

        _solves++;
        return cutOffs.Charging(states.PointAt(charge));
    }

    private Trail Sampled(TrailDirection direction, double low, double high, RunEnd end)
    {
        List<TrailPoint> points = [];
        if (PointAt(low) is { } first && PointAt(high) is { } last && high > low)
        {
            points.Add(first);
            Refine(points, first, last, 0);
        }

        return new Trail(direction, WithCorners(points), end, states.Heat, _solves);
    }

    /// <summary>Adds what lies above <paramref name="low"/> up to <paramref name="high"/>, both counted as known.</summary>
    private void Refine(List<TrailPoint> points, TrailPoint low, TrailPoint high, int depth)
    {
        double charge = states.Cells.ChargeAt((states.Cells.At(low.Charge) + states.Cells.At(high.Charge)) / 2);
        if (depth < MostDepth && charge > low.Charge && charge < high.Charge && PointAt(charge) is { } middle)
        {
            double line = (low.SecondsPerCharge + high.SecondsPerCharge) / 2;
            double off = Math.Abs(middle.SecondsPerCharge - line) / middle.SecondsPerCharge * (high.Charge - low.Charge);
            if (off > Tolerance)
            {
                Refine(points, low, middle, depth + 1);
                Refine(points, middle, high, depth + 1);
                return;
            }

            points.Add(middle);
        }

        points.Add(high);
    }

    /// <summary>Puts a point at each corner of the table of rested voltages, on the line over voltage.</summary>
    private List<TrailPoint> WithCorners(List<TrailPoint> points)
    {
        List<TrailPoint> all = [];
        for (int i = 0; i < points.Count; i++)
        {
            if (i > 0)
            {
                AddCorners(all, points[i - 1], points[i]);
            }

            all.Add(points[i]);
        }

        return all;
    }

    private void AddCorners(List<TrailPoint> all, TrailPoint low, TrailPoint high)
    {
        double bottom = states.Cells.At(low.Charge);
        double rise = states.Cells.At(high.Charge) - bottom;
        foreach (double corner in states.Cells.Corners)
        {
            if (corner > low.Charge && corner < high.Charge && rise > 0)
            {
                double part = (states.Cells.At(corner) - bottom) / rise;
                all.Add(new TrailPoint(
                    corner,
                    low.SecondsPerCharge + (part * (high.SecondsPerCharge - low.SecondsPerCharge)),
                    low.Amps + (part * (high.Amps - low.Amps)),
                    high.Joules.Mixed(part, low.Joules)));
            }
        }
    }

    private TrailPoint? PointAt(double charge) => Sample(charge) is { } sample && Math.Abs(sample.Rate) > 1 / Forever
        ? new TrailPoint(charge, 1 / Math.Abs(sample.Rate), sample.Amps, sample.Power.Times(1 / Math.Abs(sample.Rate)))
        : null;

    private ModeSample? Sample(double charge)
    {
        _solves++;
        return states.At(charge);
    }
}
