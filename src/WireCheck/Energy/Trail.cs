namespace WireCheck.Energy;

/// <summary>Which way the charge moves in a mode.</summary>
public enum TrailDirection
{
    /// <summary>It stands still.</summary>
    Still,

    /// <summary>The bank is emptied.</summary>
    Discharging,

    /// <summary>The bank is filled.</summary>
    Charging,
}

/// <summary>One point of a trail.</summary>
/// <param name="Charge">Charge of the cells; 0 is empty, 1 full.</param>
/// <param name="SecondsPerCharge">Time in which the whole counted charge would pass at the current of this point, s.</param>
/// <param name="Amps">Current out of the banks, A.</param>
/// <param name="Joules">Energy given, used and lost while the whole counted charge would pass, J, by part.</param>
internal sealed record TrailPoint(double Charge, double SecondsPerCharge, double Amps, PowerSplit Joules);

/// <summary>
/// How a mode moves the charge of the bank: time and energy over charge, as straight lines between points that lie so close that
/// they stand for the curve. Where a cut-off trips, it ends.
/// </summary>
internal sealed class Trail(TrailDirection direction, IReadOnlyList<TrailPoint> points, RunEnd end, RunHeat? heat, int solves)
{
    /// <summary>Which way the charge moves.</summary>
    internal TrailDirection Direction { get; } = direction;

    /// <summary>Points by rising charge; none when it stands still or never runs.</summary>
    internal IReadOnlyList<TrailPoint> Points { get; } = points;

    /// <summary>What ends it.</summary>
    internal RunEnd End { get; } = end;

    /// <summary>How warm the box is meanwhile; null when it cannot be told.</summary>
    internal RunHeat? Heat { get; } = heat;

    /// <summary>States that were solved for it.</summary>
    internal int Solves { get; } = solves;

    /// <summary>Charge at which it ends.</summary>
    internal double EndCharge => Points.Count == 0 ? double.NaN : Direction == TrailDirection.Charging ? Points[^1].Charge : Points[0].Charge;

    /// <summary>Time to move from one charge to another, s; beyond the ends no time passes.</summary>
    internal double Seconds(double from, double to) => Sum(Math.Min(from, to), Math.Max(from, to), p => p.SecondsPerCharge);

    /// <summary>Integral over charge of a value of the points.</summary>
    internal double Sum(double low, double high, Func<TrailPoint, double> value)
    {
        double sum = 0;
        for (int i = 1; i < Points.Count; i++)
        {
            double a = Math.Max(low, Points[i - 1].Charge);
            double b = Math.Min(high, Points[i].Charge);
            if (b > a)
            {
                double va = Between(i, a, value);
                double vb = Between(i, b, value);
                sum += (b - a) * (va + vb) / 2;
            }
        }

        return sum;
    }

    /// <summary>The charge after some time, and how much of the time the mode could run.</summary>
    internal (double Charge, double Ran) After(double from, double seconds)
    {
        if (Direction == TrailDirection.Still || Points.Count < 2)
        {
            return (from, Direction == TrailDirection.Still ? seconds : 0);
        }

        double end = EndCharge;
        bool past = Direction == TrailDirection.Charging ? from >= end : from <= end;
        double most = past ? 0 : Seconds(from, end);
        if (most <= seconds)
        {
            // A charge that has ended holds; a discharge that has ended does not serve.
            return (past ? from : end, Direction == TrailDirection.Charging ? seconds : most);
        }

        (double near, double far) = (from, end);
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (near + far) / 2;
            (near, far) = Seconds(from, middle) <= seconds ? (middle, far) : (near, middle);
        }

        return (near, seconds);
    }

    /// <summary>Halvings of the search for a moment: the charge of a bank comes down to a millionth of a millionth.</summary>
    private const int Halvings = 40;

    private double Between(int i, double charge, Func<TrailPoint, double> value)
    {
        TrailPoint a = Points[i - 1];
        TrailPoint b = Points[i];
        double part = (charge - a.Charge) / (b.Charge - a.Charge);
        return value(a) + (part * (value(b) - value(a)));
    }
}
