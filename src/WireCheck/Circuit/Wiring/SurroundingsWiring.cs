using WireCheck.Circuit.Elements;
using WireCheck.Description;

namespace WireCheck.Circuit.Wiring;

/// <summary>What joins nodes outside the drawn wiring: the bond of a metal case, links the builder declares.</summary>
internal static class SurroundingsWiring
{
    /// <summary>Resistance of the bond of a metal case, Ω.</summary>
    private const double CaseBondOhms = 1e-3;

    internal static void AddElements(WiringBuilder builder)
    {
        if (builder.Pack.Surroundings.Enclosure?.BondedTo is { } bond && NodeOf(bond.Value, builder) is { } node)
        {
            builder.Add(new Resistance("case", builder.Node("case", ""), node, CaseBondOhms));
        }

        foreach (OutsideLink link in builder.Pack.OutsideLinks)
        {
            int first = builder.Node(link.First);
            int second = builder.Node(link.Second);
            if (first != second)
            {
                builder.Add(new Resistance(link.What.Value, first, second, link.Resistance.Value.Ohms));
            }
        }
    }

    private static int? NodeOf(string written, WiringBuilder builder)
    {
        int dot = written.IndexOf('.', StringComparison.Ordinal);
        (string Part, string Terminal) name = dot < 0 ? (written, "") : (written[..dot], written[(dot + 1)..]);
        return builder.Nodes.TryGetValue(name, out int node) ? node : null;
    }
}
