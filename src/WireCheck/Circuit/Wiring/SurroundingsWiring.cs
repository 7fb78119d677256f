using WireCheck.Circuit.Elements;
using WireCheck.Description;

namespace WireCheck.Circuit.Wiring;

/// <summary>What joins nodes outside the drawn wiring: the bond of a metal case, links the builder declares.</summary>
internal static class SurroundingsWiring
{
    internal static void AddElements(WiringBuilder builder)
    {
        if (builder.Pack.Surroundings.Enclosure?.BondedTo is { } bond)
        {
            builder.Add(new Resistance("case", builder.Node("case", ""), builder.Node(bond), builder.Data.Assumed("case_bond_resistance")));
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
}
