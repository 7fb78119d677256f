namespace WireCheck.Knowledge;

/// <summary>Ratings in which fuses are made.</summary>
public sealed class StandardRatings
{
    internal StandardRatings(TableNode file)
    {
        TableNode set = file.Children("sets").First();
        Source = set.Source("source");
        Amps = [.. set.Numbers("ratings").Order()];
    }

    /// <summary>Source of the list.</summary>
    public Source Source { get; }

    /// <summary>Amperes, rising.</summary>
    public IReadOnlyList<double> Amps { get; }

    /// <summary>The smallest rating at or above a current; null above the last.</summary>
    public double? NextAtOrAbove(double amps) => FirstOrNull(Amps.Where(a => a >= amps));

    /// <summary>The largest rating at or below a current; null below the first.</summary>
    public double? LargestAtOrBelow(double amps) => FirstOrNull(Amps.Reverse().Where(a => a <= amps));

    private static double? FirstOrNull(IEnumerable<double> found) => found.Select(a => (double?)a).FirstOrDefault();
}
