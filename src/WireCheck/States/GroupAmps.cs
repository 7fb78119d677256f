using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;

namespace WireCheck.States;

/// <summary>Current through the groups of a bank, the cells side by side taken together. Groups count from 0 at the negative end.</summary>
internal static class GroupAmps
{
    /// <summary>Current into a group, A; negative while it is drawn from.</summary>
    internal static double Into(WiredBank bank, int group, Solution solution)
    {
        double amps = 0;
        for (int column = 0; column < bank.Columns; column++)
        {
            amps += solution.Current(bank.CellElements[(group * bank.Columns) + column]);
        }

        return amps;
    }

    /// <summary>Current out of a group, A. Taken from zero, so that none is not told as minus nothing.</summary>
    internal static double Out(WiredBank bank, int group, Solution solution) => 0 - Into(bank, group, solution);

    /// <summary>Current out of the group that is drawn from most, A; a sense lead or a tap draws from some only.</summary>
    internal static double MostOut(WiredBank bank, Solution solution)
    {
        double most = double.NegativeInfinity;
        for (int group = 0; group < bank.Cells.Series.Value; group++)
        {
            most = Math.Max(most, Out(bank, group, solution));
        }

        return most;
    }
}
