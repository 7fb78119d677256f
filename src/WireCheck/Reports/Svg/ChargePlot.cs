using WireCheck.Energy;

namespace WireCheck.Reports.Svg;

/// <summary>The state of charge over the days of a schedule, fresh and aged.</summary>
internal static class ChargePlot
{
    private const double SecondsPerHour = 3600;

    /// <summary>The plot; null when no mode has a time of its own.</summary>
    internal static Plot? Of(IReadOnlyList<DayMarch> days)
    {
        if (days.Count == 0)
        {
            return null;
        }

        return new Plot(
            "State of charge over the days",
            new PlotAxis("time", "h", 0, days.Max(d => d.Steps.Sum(s => s.Seconds)) / SecondsPerHour, Logarithmic: false),
            new PlotAxis("charge", "%", 0, 100, Logarithmic: false),
            [.. days.Select(d => new PlotCurve(d.Condition.Words, Points(d)))],
            null);
    }

    private static List<PlotPoint> Points(DayMarch march)
    {
        List<PlotPoint> points = [];
        double start = 0;
        foreach (DayStep step in march.Steps)
        {
            points.Add(new PlotPoint(start / SecondsPerHour, 100 * step.Before));
            points.Add(new PlotPoint((start + step.Ran) / SecondsPerHour, 100 * step.After));
            start += step.Seconds;
            points.Add(new PlotPoint(start / SecondsPerHour, 100 * step.After));
        }

        return points;
    }
}
