using WireCheck.Circuit.Elements;

namespace WireCheck.Circuit.Solving;

/// <summary>Seeks how much of the power that is asked for can be served, and who stands in the way of the rest.</summary>
/// <param name="demand">The parts that ask for power.</param>
/// <param name="equations">The equations, whose voltages it moves.</param>
/// <param name="hasAnswer">Seeks an answer on the stable branch from the voltages as they stand.</param>
internal sealed class PowerSearch(PowerDemand demand, NodalEquations equations, Func<bool> hasAnswer)
{
    /// <summary>More parts than this are not tried one by one: the search would take the square of their number.</summary>
    private const int MostTried = 64;

    /// <summary>
    /// The parts without which the others could be given the most, when that is more than with them. Behind a supply that is at
    /// its limit the voltage stands until it breaks down, so that the deepest sag tells of others.
    /// </summary>
    internal List<Element> InTheWay(double reached, List<Element> weakest, double[] unloadedHigh, double[] unloadedLow)
    {
        Element[] asking = [.. demand.Asking];
        if (asking.Length is 1 or > MostTried)
        {
            return weakest;
        }

        (double[] high, double[] low) = equations.CopyVolts();
        double[] without = new double[asking.Length];
        for (int i = 0; i < asking.Length; i++)
        {
            equations.PutBack(unloadedHigh, unloadedLow);
            without[i] = Raise(asking[i]);
        }

        demand.SetShare(1);
        equations.PutBack(high, low);
        double most = without.Max();
        if (most <= reached * (1 + LeastHelp))
        {
            return weakest;
        }

        // Several may each make room enough; it is the largest that asks too much.
        Element[] helping = [.. asking.Where((_, i) => without[i] >= most)];
        double largest = helping.Max(PowerDemand.Watts);
        return [.. helping.Where(p => PowerDemand.Watts(p) >= largest)];
    }

    /// <summary>Less than this share more for the others is a step of the search, not room that a part has made.</summary>
    private const double LeastHelp = 1e-3;

    /// <summary>
    /// Raises the power from none, with a smaller step where Newton fails; returns the share reached. Until some share is
    /// reached the step may become very small, and does so fast: what hangs behind next to nothing is told only by how far it falls.
    /// </summary>
    internal double Raise(Element? without)
    {
        double reached = 0;
        double step = without is null ? 0.25 : 1;
        while (reached < 1 && step > (reached == 0 ? 1e-13 : Math.Min(1e-4, reached / 8)))
        {
            double next = Math.Min(1, reached + step);
            demand.SetShare(next, without);
            (double[] high, double[] low) = equations.CopyVolts();
            if (hasAnswer())
            {
                reached = next;
            }
            else
            {
                equations.PutBack(high, low);
                step /= reached == 0 ? 16 : 2;
            }
        }

        return reached;
    }
}
