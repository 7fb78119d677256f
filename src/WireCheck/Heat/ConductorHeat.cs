using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.Physics;

namespace WireCheck.Heat;

/// <summary>
/// The temperature of every conductor from its current and the air around it. Conductors of one bundle are one body: the heat
/// of all leaves by the circle around them, and those in the middle are warmer by what the bundle itself resists. A bundle lies
/// inside the box when one of them does. Conductors are taken as long, a sleeve as part of the air: cooling by the ends and by what they are bolted to is
/// not counted.
/// </summary>
public sealed class ConductorHeat
{
    private readonly Group[] _groups;

    /// <summary>Conductors in an order that <see cref="Settle"/> keeps.</summary>
    /// <param name="conductors">The conductors.</param>
    /// <param name="ohmsAt20">Resistance of each at 20 °C, Ω/m.</param>
    /// <param name="library">Insulation, diameters and what is assumed of bundles.</param>
    public ConductorHeat(IReadOnlyList<Conductor> conductors, IReadOnlyList<double> ohmsAt20, Library library)
    {
        SortedDictionary<string, List<int>> bundles = new(StringComparer.Ordinal);
        List<Group> groups = [];
        for (int i = 0; i < conductors.Count; i++)
        {
            if (conductors[i].Bundle is not { } bundle)
            {
                groups.Add(GroupOf([i], conductors, ohmsAt20, library));
            }
            else if (bundles.TryGetValue(bundle.Value, out List<int>? held))
            {
                held.Add(i);
            }
            else
            {
                bundles.Add(bundle.Value, [i]);
            }
        }

        foreach (List<int> members in bundles.Values)
        {
            groups.Add(GroupOf([.. members], conductors, ohmsAt20, library));
        }

        _groups = [.. groups];
    }

    /// <summary>Settles all conductors: fills in the temperature of each one's metal, °C.</summary>
    /// <param name="amps">Current in each, A, of either sign.</param>
    /// <param name="inside">Air inside the box, °C.</param>
    /// <param name="outside">Air around the box, °C.</param>
    /// <param name="celsius">Filled in.</param>
    public void Settle(double[] amps, double inside, double outside, double[] celsius)
    {
        foreach (Group group in _groups)
        {
            for (int i = 0; i < group.Members.Length; i++)
            {
                group.Amps[i] = amps[group.Members[i]];
            }

            group.Wires.Settle(group.Amps, group.Outside ? outside : inside, group.Celsius);
            for (int i = 0; i < group.Members.Length; i++)
            {
                celsius[group.Members[i]] = group.Celsius[i];
            }
        }
    }

    private static Group GroupOf(int[] members, IReadOnlyList<Conductor> conductors, IReadOnlyList<double> ohmsAt20, Library library)
    {
        WireCore[] cores = new WireCore[members.Length];
        double squares = 0;
        double emissivity = 1;
        bool outside = true;
        for (int i = 0; i < members.Length; i++)
        {
            WireShape shape = WireShape.Of(conductors[members[i]], library);
            cores[i] = new WireCore(ohmsAt20[members[i]], shape.Zero, shape.Layer);
            squares += shape.OuterDiameter * shape.OuterDiameter;
            emissivity = Math.Min(emissivity, shape.Emissivity);
            outside &= conductors[members[i]].Place?.Value == PartPlace.Outside;
        }

        bool bundled = members.Length > 1;
        double diameter = Math.Sqrt(bundled ? squares / library.Assumptions["bundle_fill"].Value : squares);
        double core = bundled ? Conduction.HeatedCore(library.Assumptions["bundle_conductivity"].Value) : 0;
        return new Group(members, new WiresInAir(cores, diameter, emissivity, core), outside);
    }

    private sealed class Group(int[] members, WiresInAir wires, bool outside)
    {
        internal int[] Members { get; } = members;

        internal WiresInAir Wires { get; } = wires;

        internal bool Outside { get; } = outside;

        internal double[] Amps { get; } = new double[members.Length];

        internal double[] Celsius { get; } = new double[members.Length];
    }
}
