namespace WireCheck.Reports.Svg;

/// <summary>Where the lines of a grid lie.</summary>
internal static class PlotTicks
{
    private const int MostNamed = 8;

    /// <summary>
    /// Values of an axis: whole decades with the steps between them, or round steps of one, two or five; those that bear a
    /// number come with true.
    /// </summary>
    internal static IEnumerable<(double Value, bool Named)> Of(PlotAxis axis) => axis.Logarithmic ? Decades(axis) : Steps(axis);

    private static IEnumerable<(double Value, bool Named)> Decades(PlotAxis axis)
    {
        for (int power = (int)Math.Floor(Math.Log10(axis.From)); Math.Pow(10, power) <= axis.To; power++)
        {
            for (int step = 1; step < 10; step++)
            {
                double value = step * Math.Pow(10, power);
                if (value >= axis.From * (1 - 1e-9) && value <= axis.To * (1 + 1e-9))
                {
                    yield return (value, step == 1);
                }
            }
        }
    }

    private static IEnumerable<(double Value, bool Named)> Steps(PlotAxis axis)
    {
        double rough = (axis.To - axis.From) / MostNamed;
        double decade = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double step = decade * (rough / decade <= 1 ? 1 : rough / decade <= 2 ? 2 : rough / decade <= 5 ? 5 : 10);
        for (double index = Math.Ceiling((axis.From / step) - 1e-9); index * step <= axis.To + (step * 1e-9); index++)
        {
            yield return (index * step, true);
        }
    }
}
