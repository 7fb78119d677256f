using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;

namespace WireCheck.States;

/// <summary>
/// Where the probe of a meter stands that is held to a terminal. A terminal of the circuit is its own node; what hangs at a
/// port by <c>at:</c> is read at the port's plug, and a sense lead that is told in short at its tap of the bank.
/// </summary>
public static class ProbePoints
{
    /// <summary>The node under a probe held to a terminal.</summary>
    /// <param name="wiring">The box.</param>
    /// <param name="part">Id of the part, or a node that exists everywhere.</param>
    /// <param name="terminal">The terminal; empty for a part with one node.</param>
    public static int NodeUnderProbe(this BoxWiring wiring, string part, string terminal)
    {
        switch (wiring.Pack.Find(part))
        {
            case Panel { At: { } at } when PlugNode(wiring, at.Value, terminal) is { } node:
                return node;
            case Vehicle { At: { } at } when PlugNode(wiring, at.Value, terminal) is { } node:
                return node;
            case Bms { Sense: not null } bms when TapNode(wiring, bms, terminal) is { } node:
                return node;
            default:
                return wiring.Node(part, terminal);
        }
    }

    private static int? PlugNode(BoxWiring wiring, string port, string terminal) => wiring.Pack.Find(port) is Port
        ? wiring.Node(port, terminal == "+" ? WiredPort.PlugPlus : WiredPort.PlugMinus)
        : null;

    /// <summary>Sense lead k lies at the positive pole of group k, lead 0 at the bank's negative.</summary>
    private static int? TapNode(BoxWiring wiring, Bms bms, string terminal)
    {
        if (terminal.Length < 2 || terminal[0] != 's' || !int.TryParse(terminal.AsSpan(1), out int group)
            || TerminalReferences.IsWired(wiring.Pack, bms.Id, terminal)
            || wiring.Pack.Of<Cells>().FirstOrDefault(b => b.Series.Value == bms.Series.Value) is not { } bank)
        {
            return null;
        }

        return group == 0 ? wiring.Node(bank.Id, "-")
            : group == bank.Series.Value ? wiring.Node(bank.Id, "+")
            : wiring.Node(bank.Id, FormattableString.Invariant($"t{group}"));
    }
}
