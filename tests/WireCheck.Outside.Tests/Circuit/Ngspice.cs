using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace WireCheck.Outside.Tests.Circuit;

/// <summary>Solves circuits with ngspice, many in one run.</summary>
internal static partial class Ngspice
{
    private const int Batch = 50;

    internal static Comparison Compare(IReadOnlyList<GeneratedCircuit> circuits)
    {
        Comparison comparison = new();
        string folder = Directory.CreateTempSubdirectory("wirecheck-ngspice-").FullName;
        try
        {
            foreach (GeneratedCircuit[] batch in circuits.Chunk(Batch))
            {
                Dictionary<int, IReadOnlyList<NgspiceProbe>> probes = [];
                Dictionary<string, double> answers = Solve(folder, batch, probes);
                Array.ForEach(batch, circuit => Compare(circuit.Number, probes[circuit.Number], answers, comparison));
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        return comparison;
    }

    private static Dictionary<string, double> Solve(
        string folder, GeneratedCircuit[] batch, Dictionary<int, IReadOnlyList<NgspiceProbe>> probes)
    {
        StringBuilder script = new("* batch\n.control\nset numdgt=15\n");
        foreach (GeneratedCircuit circuit in batch)
        {
            string file = Path.Combine(folder, $"c{circuit.Number}.cir");
            NgspiceDeck deck = new(circuit);
            File.WriteAllText(file, deck.Write());
            probes[circuit.Number] = deck.Probes;
            script.Append(CultureInfo.InvariantCulture, $"source {file}\nop\necho circuit {circuit.Number}\n");
            foreach (string name in deck.Probes.SelectMany(probe => probe.Names))
            {
                script.Append(CultureInfo.InvariantCulture, $"print {name}\n");
            }

            script.Append("destroy all\nremcirc\n");
        }

        script.Append("quit\n.endc\n.end\n");
        string main = Path.Combine(folder, "batch.cir");
        File.WriteAllText(main, script.ToString());
        return Read(Simulator.Run("ngspice", "-b", main));
    }

    /// <summary>What it printed, by circuit and name; a circuit it could not solve prints nothing.</summary>
    private static Dictionary<string, double> Read(string output)
    {
        Dictionary<string, double> answers = [];
        string circuit = "";
        foreach (string line in output.Split('\n'))
        {
            if (line.StartsWith("circuit ", StringComparison.Ordinal))
            {
                circuit = line[8..].Trim();
            }
            else if (Printed().Match(line) is { Success: true } match)
            {
                answers[$"{circuit} {match.Groups[1].Value}"] = double.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture);
            }
        }

        return answers;
    }

    private static void Compare(
        int circuit, IReadOnlyList<NgspiceProbe> probes, Dictionary<string, double> answers, Comparison comparison)
    {
        if (!probes.SelectMany(probe => probe.Names).All(name => answers.ContainsKey($"{circuit} {name}")))
        {
            comparison.Refused++;
            return;
        }

        comparison.Circuits++;
        foreach (NgspiceProbe probe in probes)
        {
            double theirs = probe.Names.Sum(name => answers[$"{circuit} {name}"]) + probe.Offset;
            comparison.Add(probe.Ours, theirs, probe.Floor, $"circuit {circuit}, {probe.Where}");
        }
    }

    [GeneratedRegex(@"^(\S+) = (\S+)")]
    private static partial Regex Printed();
}
