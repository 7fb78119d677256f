using WireCheck.Circuit.Wiring;

namespace WireCheck.Circuit.Topology;

/// <summary>The side of the box a node lies on.</summary>
public enum Pole
{
    /// <summary>Reached from neither side of any source: a coil feed behind a converter's enable, an unwired part.</summary>
    None,

    Positive,

    Negative,

    /// <summary>Reached from both, or from the middle of a bank: a sense lead.</summary>
    Between,
}

/// <summary>Which pole each node lies on, whatever the position of the switches.</summary>
public static class Poles
{
    /// <summary>One pole per node of the network.</summary>
    public static Pole[] Of(BoxWiring wiring, WiringGraph graph, IReadOnlyList<SourcePoint> sources)
    {
        Pole[] poles = new Pole[graph.NodeCount];
        foreach (SourcePoint source in sources)
        {
            Mark(poles, Reach.From(graph, source.Plus, Passes), Pole.Positive);
            Mark(poles, Reach.From(graph, source.Minus, Passes, against: true), Pole.Negative);
        }

        foreach (WiredBank bank in wiring.Of<WiredBank>())
        {
            for (int group = 1; group < bank.Cells.Series.Value; group++)
            {
                int tap = wiring.Node(bank.Part.Id, FormattableString.Invariant($"t{group}"));
                Mark(poles, Reach.From(graph, tap, Passes), Pole.Between);
            }
        }

        return poles;
    }

    // A resistor between the poles, such as a bleeder, must not make one pole of both.
    private static bool Passes(WiringEdge edge) => edge.LimitingOhms is null;

    private static void Mark(Pole[] poles, bool[] reached, Pole pole)
    {
        for (int node = 0; node < poles.Length; node++)
        {
            if (reached[node])
            {
                poles[node] = poles[node] == Pole.None || poles[node] == pole ? pole : Pole.Between;
            }
        }
    }
}
