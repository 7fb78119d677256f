using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.States;

namespace WireCheck.Sheets;

/// <summary>Two terminals of a part between which a voltage is worth reading: each against its own negative.</summary>
/// <param name="Part">Id of the part.</param>
/// <param name="Plus">Terminal at the red probe.</param>
/// <param name="Minus">Terminal at the black probe.</param>
internal sealed record ProbePair(string Part, string Plus, string Minus)
{
    /// <summary>All pairs of a box, in the order of the description.</summary>
    internal static IEnumerable<ProbePair> In(Pack pack) => pack.Parts.SelectMany(p => Of(p).Select(t => new ProbePair(p.Id, t.Plus, t.Minus)));

    /// <summary>The name of the terminal at the red probe.</summary>
    internal string Red => $"{Part}.{Plus}";

    /// <summary>The name of the terminal at the black probe.</summary>
    internal string Black => $"{Part}.{Minus}";

    /// <summary>What is told is an output of its own, so that a difference to the bank means nothing.</summary>
    internal bool IsOutput => Plus.StartsWith("out", StringComparison.Ordinal);

    /// <summary>Red above black, V; 0 where nothing joins the two.</summary>
    internal double Volts(BoxWiring wiring, OperatingPoint point)
    {
        int above = wiring.NodeUnderProbe(Part, Plus);
        int below = wiring.NodeUnderProbe(Part, Minus);
        return point.Solution.Group(above) == point.Solution.Group(below) ? point.Volts(above, below) : 0;
    }

    /// <summary>Whether that voltage holds into the test burden.</summary>
    internal bool Holds(BoxWiring wiring, FirmNodes firm) => firm.Hold(wiring.NodeUnderProbe(Part, Plus), wiring.NodeUnderProbe(Part, Minus));

    private static (string Plus, string Minus)[] Of(Part part) => part switch
    {
        Cells or Port or Meter or Load { At: null } => [("+", "-")],
        Inverter => [("in+", "in-")],
        Converter => [("in+", "in-"), ("out+", "out-")],
        Charger { At: null } charger =>
        [
            .. charger.Terminals.Contains("pv+") ? new[] { ("pv+", "pv-") } : charger.Terminals.Contains("in+") ? [("in+", "in-")] : [],
            ("out+", "out-"),
        ],
        Relay => [("86", "85")],
        _ => [],
    };
}
