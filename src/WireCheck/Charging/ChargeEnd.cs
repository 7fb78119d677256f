using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Charging;

/// <summary>
/// Where a charge ends when nothing stops it: the cells have risen so far that only a small current still flows. What the
/// diodes and wires then drop is missing at the cells.
/// </summary>
/// <param name="Mode">The mode that charges.</param>
/// <param name="Point">The box at that moment.</param>
/// <param name="TailAmps">The current that counts as the end, A.</param>
/// <param name="Banks">Each bank then.</param>
public sealed record ChargeEnd(BoxMode Mode, OperatingPoint Point, double TailAmps, IReadOnlyList<BankCharge> Banks)
{
    /// <summary>Halvings of the search: a volt or two per cell come down to some microvolts.</summary>
    private const int Halvings = 20;

    /// <summary>
    /// Searches for the cells' open-circuit voltage at which the current into the banks has fallen to the end current. The
    /// current falls steadily with that voltage, so halving finds it.
    /// </summary>
    /// <param name="states">A solver of the box.</param>
    /// <param name="wiring">The box.</param>
    /// <param name="mode">A mode that charges.</param>
    /// <param name="corner">Whose resistances to take.</param>
    /// <param name="highestVolts">Highest voltage of any source of the mode, V.</param>
    /// <returns>The end; null when the mode charges nothing, or has no solution.</returns>
    internal static ChargeEnd? Find(StateSolver states, BoxWiring wiring, BoxMode mode, Corner corner, double highestVolts)
    {
        WiredBank[] banks = [.. wiring.Of<WiredBank>()];
        wiring.SetConditions(corner.Conditions);
        double low = LowestCellVolts(banks);
        double high = low + (highestVolts / FewestInSeries(banks));
        double start = AmpsAt(low);
        if (!(start > ChargeSource.SmallestAmps))
        {
            return null;
        }

        double tail = Math.Min(wiring.Data.Assumed("charge_tail") * AmpereHours(banks), start / 2);
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            double amps = AmpsAt(middle);
            if (double.IsNaN(amps))
            {
                return null;
            }

            (low, high) = amps > tail ? (middle, high) : (low, middle);
        }

        OperatingPoint end = SolveAt(high);
        return end.Solution.Outcome != SolveOutcome.Solved
            ? null
            : new ChargeEnd(mode, end, tail, [.. banks.Select(b => BankCharge.Of(wiring, b, end))]);

        double AmpsAt(double cellVolts)
        {
            OperatingPoint point = SolveAt(cellVolts);
            return point.Solution.Outcome == SolveOutcome.Solved ? BankCharge.AmpsIntoAll(banks, point) : double.NaN;
        }

        OperatingPoint SolveAt(double cellVolts)
        {
            foreach (WiredBank bank in banks)
            {
                foreach (Source cell in bank.CellElements)
                {
                    cell.Emf = cellVolts;
                }
            }

            return states.SolveAsSet(mode, corner);
        }
    }

    private static double LowestCellVolts(WiredBank[] banks)
    {
        double lowest = double.PositiveInfinity;
        foreach (WiredBank bank in banks)
        {
            lowest = Math.Min(lowest, bank.Cells.Window.Value.From.Volts);
        }

        return lowest;
    }

    private static int FewestInSeries(WiredBank[] banks)
    {
        int fewest = int.MaxValue;
        foreach (WiredBank bank in banks)
        {
            fewest = Math.Min(fewest, bank.Cells.Series.Value);
        }

        return fewest;
    }

    private static double AmpereHours(WiredBank[] banks)
    {
        double sum = 0;
        foreach (WiredBank bank in banks)
        {
            sum += bank.Cells.Capacity.Value.AmpereHours * bank.Columns;
        }

        return sum;
    }
}
