using System.Globalization;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;

namespace WireCheck.Facts.Gather;

/// <summary>
/// Whose cells the BMS of parallel banks feels. A BMS has one set of sense leads: those that are drawn say where it looks;
/// told in short, each BMS looks at one bank, in the order of the description. Banks whose taps are joined group by group are
/// felt together.
/// </summary>
internal static class WatchedCells
{
    /// <summary>
    /// The bank beside this one whose cells the BMS feels while it carries the current of both; null when this bank's own are
    /// felt, or it has no BMS at all.
    /// </summary>
    internal static WiredBank? InsteadOf(WiredBank bank, GatherContext context)
    {
        if (bank.Cells.Series.Value < 2 || Banks.BmsOf(context, bank) is not { } first)
        {
            return null;
        }

        WiredBank[] beside = [.. Banks.BanksBehind(context, first).Where(b => StandsBeside(b, bank, context))];
        WiredBms[] all = [.. context.Wiring.Of<WiredBms>().Where(m => Banks.BanksBehind(context, m).Contains(bank))];
        List<WiredBank> felt = [];
        foreach (WiredBms bms in all.Where(m => SensesDrawn(m, context)))
        {
            felt.AddRange(beside.Where(b => Felt(b, bms, context)));
        }

        foreach (WiredBms bms in all.Where(m => !SensesDrawn(m, context)))
        {
            felt.AddRange(beside.Where(b => !felt.Contains(b)).Take(1));
        }

        bool watched = felt.Exists(b => b == bank || TapsJoined(b, bank, context));
        return watched ? null : felt.FirstOrDefault();
    }

    /// <summary>Both poles are joined, whatever fuses and contacts lie between, and it has no BMS inside.</summary>
    private static bool StandsBeside(WiredBank other, WiredBank bank, GatherContext context) =>
        other == bank || (other.Cells.Packaged?.Value != true && other.Cells.Series.Value == bank.Cells.Series.Value
            && Joined(bank, "+", other, "+", context) && Joined(bank, "-", other, "-", context));

    private static bool Joined(WiredBank bank, string terminal, WiredBank other, string otherTerminal, GatherContext context) =>
        Reach.From(context.Graph, context.Wiring.Node(bank.Part.Id, terminal), e => context.Wiring[e.PartId] is not WiredBank)
            [context.Wiring.Node(other.Part.Id, otherTerminal)];

    private static bool TapsJoined(WiredBank bank, WiredBank other, GatherContext context) =>
        Taps(bank).All(tap => Joined(bank, tap, other, tap, context));

    private static IEnumerable<string> Taps(WiredBank bank) =>
        Enumerable.Range(1, bank.Cells.Series.Value - 1).Select(k => "t" + k.ToString(CultureInfo.InvariantCulture));

    private static bool SensesDrawn(WiredBms bms, GatherContext context) => Pins(bms, context).Any();

    private static IEnumerable<string> Pins(WiredBms bms, GatherContext context) =>
        Enumerable.Range(1, bms.Bms.Series.Value - 1).Select(k => "s" + k.ToString(CultureInfo.InvariantCulture))
            .Where(pin => TerminalReferences.IsWired(context.Pack, bms.Part.Id, pin));

    private static bool Felt(WiredBank bank, WiredBms bms, GatherContext context)
    {
        foreach (string pin in Pins(bms, context))
        {
            bool[] reached = Reach.From(context.Graph, context.Wiring.Node(bms.Part.Id, pin), _ => true);
            if (Taps(bank).Any(tap => reached[context.Wiring.Node(bank.Part.Id, tap)]))
            {
                return true;
            }
        }

        return false;
    }
}
