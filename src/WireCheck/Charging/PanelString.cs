using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;

namespace WireCheck.Charging;

/// <summary>Panels in series, the negative of one joined to the positive of the next.</summary>
internal static class PanelString
{
    /// <summary>The panels of the longest string that a panel is part of, by open-circuit voltage; the panel alone where it is in none.</summary>
    internal static IReadOnlyList<WiredPanel> Of(BoxWiring wiring, WiringGraph graph, WiredPanel panel)
    {
        WiredPanel[] others = [.. wiring.Of<WiredPanel>().Where(p => p != panel && p.Element is not null)];
        if (panel.Element is null || others.Length == 0)
        {
            return [panel];
        }

        List<WiredPanel> below = Longest(graph, panel, others, under: true);
        List<WiredPanel> above = Longest(graph, panel, [.. others.Except(below)], under: false);
        return [panel, .. below, .. above];
    }

    private static List<WiredPanel> Longest(WiringGraph graph, WiredPanel from, WiredPanel[] others, bool under)
    {
        bool[] joined = Reach.From(graph, under ? from.Element!.B : from.Element!.A, _ => true, against: under);
        List<WiredPanel> longest = [];
        foreach (WiredPanel next in others)
        {
            // Side by side, positive is joined to positive too.
            int near = under ? next.Element!.A : next.Element!.B;
            int far = under ? next.Element!.B : next.Element!.A;
            if (joined[near] && !joined[far])
            {
                List<WiredPanel> chain = [next, .. Longest(graph, next, [.. others.Where(o => o != next)], under)];
                longest = Volts(chain) > Volts(longest) ? chain : longest;
            }
        }

        return longest;
    }

    private static double Volts(List<WiredPanel> panels) => panels.Sum(p => p.Panel.OpenCircuit.Value.Volts);
}
