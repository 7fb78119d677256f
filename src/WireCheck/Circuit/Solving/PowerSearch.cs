using WireCheck.Circuit.Elements;

namespace WireCheck.Circuit.Solving;

/// <summary>Seeks how much of the power that is asked for can be served, and who stands in the way of the rest.</summary>
/// <param name="demand">The parts that ask for power.</param>
/// <param name="equations">The equations, whose voltages it moves.</param>
/// <param name="hasAnswer">Seeks an answer on the stable branch from the voltages as they stand.</param>
/// <param name="hasNearAnswer">The same with a few full steps only, for an answer that lies near.</param>
internal sealed class PowerSearch(PowerDemand demand, NodalEquations equations, Func<bool> hasAnswer, Func<bool> hasNearAnswer)
{
    /// <summary>More parts than this are not tried one by one: the search would take the square of their number.</summary>
    private const int MostTried = 64;

    /// <summary>
    /// So much more for the others, as a share, is room that a part makes. The search for the limit must come nearer than that, or
    /// what is left of it passes for room.
    /// </summary>
    private const double LeastHelp = 0.02;

    /// <summary>
    /// The largest of the parts without which the others could be given more, where there is one. Behind a supply that is at
    /// its limit the voltage stands until it breaks down, so that the deepest sag tells of others.
    /// </summary>
    internal List<Element> InTheWay(double reached, List<Element> weakest)
    {
        Element[] asking = [.. demand.Asking];
        if (asking.Length is 1 or > MostTried)
        {
            return weakest;
        }

        (double[] high, double[] low) = equations.CopyVolts();
        double next = Math.Min(1, reached * (1 + LeastHelp));
        List<Element> helping = [];
        foreach (Element part in asking)
        {
            demand.SetShare(next, without: part);
            if (hasNearAnswer())
            {
                helping.Add(part);
            }

            equations.PutBack(high, low);
        }

        demand.SetShare(1);
        double largest = helping.Select(PowerDemand.Watts).DefaultIfEmpty().Max();
        return helping.Count == 0 ? weakest : [.. helping.Where(p => PowerDemand.Watts(p) >= largest)];
    }

    /// <summary>
    /// Raises the power from none, with a smaller step where Newton fails; returns the share reached. Until some share is
    /// reached the step may become very small, and does so fast: what hangs behind next to nothing is told only by how far it falls.
    /// </summary>
    internal double Raise()
    {
        double reached = 0;
        double step = 0.25;
        while (reached < 1 && step > (reached == 0 ? 1e-13 : Math.Min(1e-4, reached * LeastHelp / 4)))
        {
            double next = Math.Min(1, reached + step);
            demand.SetShare(next);
            (double[] high, double[] low) = equations.CopyVolts();
            if (reached > 0 ? hasNearAnswer() : hasAnswer())
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
