using WireCheck.Numbers;
using WireCheck.Quantities;

namespace WireCheck.Reports.Svg;

/// <summary>A fuse against what it guards, on logarithmic paper: its band, the damage curves, the range of shorts through it.</summary>
internal static class TimeCurrentPlot
{
    /// <summary>Curves of conductors beyond this many would hide each other; the thinnest are drawn.</summary>
    private const int MostConductors = 6;
    private const double ShortestTime = 1e-4;
    private const double LongestTime = 1e5;

    /// <summary>The plot.</summary>
    /// <param name="numbers">The device.</param>
    /// <param name="lowest">Lowest current of a short through it, A; null when none is known.</param>
    /// <param name="highest">Highest, A.</param>
    internal static Plot Of(TimeCurrentNumbers numbers, double? lowest, double? highest)
    {
        double right = Math.Max(numbers.Rating * 100, (highest ?? 0) * 1.2);
        List<PlotCurve> curves =
        [
            new($"{numbers.Id} may begin to melt", Points(numbers.Fastest)),
            new($"{numbers.Id} has cleared", Points(numbers.Slowest)),
            .. numbers.Guarded.Take(MostConductors).Select(g => new PlotCurve($"{g.Id} ({g.Size}) is hurt", Points(g.Damage))),
        ];
        PlotRange? range = highest is { } most ? new PlotRange("shorts through it", lowest ?? most * 0.9, most) : null;
        return new Plot(
            $"{numbers.Id}, {QuantityText.WithPrefix(numbers.Rating, "A")}, and what it guards",
            new PlotAxis("current", "A", numbers.Rating, right, Logarithmic: true),
            new PlotAxis("time", "s", ShortestTime, LongestTime, Logarithmic: true),
            curves,
            range);
    }

    private static PlotPoint[] Points(IReadOnlyList<TimeAtCurrent> times) => [.. times.Select(t => new PlotPoint(t.Amps, t.Seconds))];
}
