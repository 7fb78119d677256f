using System.Globalization;
using WireCheck.Circuit.Elements;

namespace WireCheck.Outside.Tests.Circuit;

/// <summary>Solves circuits with gnucap, one in each run.</summary>
internal static class Gnucap
{
    private static readonly (string Letters, double Scale)[] Scales =
    [
        ("Meg", 1e6), ("T", 1e12), ("G", 1e9), ("K", 1e3), ("m", 1e-3), ("u", 1e-6), ("n", 1e-9), ("p", 1e-12), ("f", 1e-15),
    ];

    /// <summary>
    /// Compares until it has solved enough. With several diodes its iteration often creeps and is given up; such a
    /// circuit is counted as refused.
    /// </summary>
    internal static Comparison Compare(IReadOnlyList<GeneratedCircuit> circuits, int enough)
    {
        Comparison comparison = new();
        string file = Path.GetTempFileName();
        try
        {
            foreach (GeneratedCircuit circuit in circuits)
            {
                if (comparison.Circuits == enough)
                {
                    break;
                }

                File.WriteAllText(file, new GnucapDeck(circuit).Write());
                Compare(circuit, Simulator.Run("gnucap", "-b", file), comparison);
            }
        }
        finally
        {
            File.Delete(file);
        }

        return comparison;
    }

    private static void Compare(GeneratedCircuit circuit, string output, Comparison comparison)
    {
        string[] lines = output.Split('\n');
        int heading = Array.FindIndex(lines, line => line.StartsWith('#'));
        if (output.Contains("did not converge", StringComparison.OrdinalIgnoreCase) || heading < 0)
        {
            comparison.Refused++;
            return;
        }

        comparison.Circuits++;
        double[] values = [.. lines[heading + 1].Split(' ', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(Number)];
        int next = 0;
        foreach (int node in circuit.Nodes)
        {
            comparison.Add(circuit.Voltage(node), values[next++], Comparison.VoltageFloor, $"circuit {circuit.Number}, node {node}");
        }

        foreach (Element element in circuit.Network.Elements)
        {
            comparison.Add(
                circuit.Solution.Current(element),
                GnucapDeck.Amps(element, values[next++]),
                Comparison.CurrentFloor,
                $"circuit {circuit.Number}, {element.GetType().Name} {element.Index}");
        }
    }

    /// <summary>A number with or without one of the simulator's letters for powers of ten.</summary>
    private static double Number(string text)
    {
        (string letters, double scale) = Scales.FirstOrDefault(s => text.EndsWith(s.Letters, StringComparison.Ordinal), ("", 1));
        return double.Parse(text[..^letters.Length], CultureInfo.InvariantCulture) * scale;
    }
}
