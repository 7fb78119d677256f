using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Facts.Gather;
using WireCheck.States;

namespace WireCheck.Numbers;

/// <summary>A mode in one line: the state in which most current leaves the banks, and the lowest and highest voltage.</summary>
/// <param name="Mode">Id of the mode.</param>
/// <param name="Words">What it is.</param>
/// <param name="Corner">The corner of the largest current.</param>
/// <param name="Amps">Current that leaves the banks there, A; negative while they are charged.</param>
/// <param name="Watts">Power that leaves the banks there, W.</param>
/// <param name="LowestVolts">Lowest voltage of the first bank over the corners, V.</param>
/// <param name="HighestVolts">Highest, V.</param>
/// <param name="Unsolved">Corners without an answer.</param>
public sealed record ModeSummary(
    string Mode, string Words, string Corner, double Amps, double Watts, double LowestVolts, double HighestVolts, int Unsolved)
{
    /// <summary>Every mode of a box, in order; a mode without any solved corner is left out.</summary>
    public static IReadOnlyList<ModeSummary> Of(SolvedBox box)
    {
        List<ModeSummary> all = [];
        WiredBank? bank = box.Wiring.Of<WiredBank>().FirstOrDefault();
        if (bank is null)
        {
            return all;
        }

        (int plus, int minus) = (box.Wiring.Node(bank.Part.Id, "+"), box.Wiring.Node(bank.Part.Id, "-"));
        foreach (BoxMode mode in box.Modes)
        {
            List<OperatingPoint> solved = [.. box.In(mode.Id).Where(p => p.Solution.Outcome == SolveOutcome.Solved)];
            if (solved.Count > 0)
            {
                OperatingPoint most = solved.MaxBy(p => Math.Abs(Banks.AmpsLeavingAll(box.Wiring, p)))!;
                double amps = Banks.AmpsLeavingAll(box.Wiring, most);
                all.Add(new ModeSummary(
                    mode.Id, mode.Words, most.Corner.Words, amps, amps * most.Volts(plus, minus),
                    solved.Min(p => p.Volts(plus, minus)), solved.Max(p => p.Volts(plus, minus)), box.In(mode.Id).Count() - solved.Count));
            }
        }

        return all;
    }
}
