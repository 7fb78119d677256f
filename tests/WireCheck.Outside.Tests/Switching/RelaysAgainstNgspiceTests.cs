using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Knowledge;
using WireCheck.Outside.Tests.Circuit;
using WireCheck.Switching;
using WireCheck.Tests.Switching;
using Xunit.Abstractions;

namespace WireCheck.Outside.Tests.Switching;

/// <summary>
/// Which relays pull in, and which hold themselves by their own contact or through a lamp, in boxes drawn by lot: against
/// ngspice's switch with hysteresis. Each run takes a new seed; WIRECHECK_SEED repeats one.
/// </summary>
public sealed partial class RelaysAgainstNgspiceTests(ITestOutputHelper output)
{
    private const int Wanted = 120;

    /// <summary>Two relays closer than this, in lags, may go either way within the steps of the simulator.</summary>
    private const double CloseRace = 0.1;

    private readonly int _seed = int.TryParse(Environment.GetEnvironmentVariable("WIRECHECK_SEED"), CultureInfo.InvariantCulture, out int given)
        ? given : Random.Shared.Next();

    [Fact]
    public void Relays_stand_as_switches_with_hysteresis_do()
    {
        List<RelayDeck> decks = Decks(out int heldIn, out int pulledIn, out int several);
        Dictionary<string, double> answers = Run(decks);
        int answered = 0;
        double worst = 0;
        for (int i = 0; i < decks.Count; i++)
        {
            (bool told, bool same, double volts) = decks[i].Compare(i, answers);
            if (told)
            {
                answered++;
                same.ShouldBeTrue($"WIRECHECK_SEED={_seed}, circuit {i}\n{decks[i].Text}");
                worst = Math.Max(worst, volts);
            }
        }

        string summary = FormattableString.Invariant(
            $"seed {_seed}: {answered} of {decks.Count} circuits answered, {pulledIn} with a relay pulled in ({several} of them among two or three), {heldIn} held in only, worst {worst:e2} V");
        output.WriteLine(summary);
        Console.WriteLine(summary);
        answered.ShouldBeGreaterThanOrEqualTo(100, summary);
        pulledIn.ShouldBeGreaterThan(10, summary);
        several.ShouldBeGreaterThan(5, summary);
        heldIn.ShouldBeGreaterThan(0, summary);
        worst.ShouldBeLessThan(1e-4, summary);
    }

    private List<RelayDeck> Decks(out int heldIn, out int pulledIn, out int several)
    {
        Random random = new(_seed);
        WiringData data = new(Library.Embedded);
        List<RelayDeck> decks = [];
        (heldIn, pulledIn, several) = (0, 0, 0);
        while (decks.Count < Wanted)
        {
            Pack pack = PackReader.Read("box.yaml", GeneratedBox.Text(random), LibraryClasses.Embedded).Pack.ShouldNotBeNull();
            SwitchedBox box = new(pack, data);
            PlugCase plugs = PlugCase.For(pack)[0];
            List<(ulong Closed, bool HeldIn, ulong Started, ulong Energised)> states = [];
            new Enumeration(box).Run(plugs, state =>
            {
                // What never rests has no end.
                if (state.Chattering == 0 && (state.Energised != 0 || random.Next(6) == 0))
                {
                    states.Add((state.Closed, state.HeldIn, state.Started, state.Energised));
                }
            });
            Settling settling = new(box);
            box.Plug(plugs);
            foreach ((ulong closed, bool held, ulong started, ulong energised) in states)
            {
                box.SetSwitches(closed);
                Solution solution = held ? settling.FromPulledIn(started) : settling.FromRest();
                settling.Energised().ShouldBe(energised, $"WIRECHECK_SEED={_seed}");
                if (settling.ClosestRace < CloseRace)
                {
                    continue;
                }

                decks.Add(new RelayDeck(box, new SettledState
                {
                    Plugs = plugs, Closed = closed, HeldIn = held, Started = started, Energised = energised, Solution = solution, Running = [],
                }));
                heldIn += held ? 1 : 0;
                pulledIn += energised != 0 ? 1 : 0;
                several += box.Relays.Length > 1 && energised != 0 ? 1 : 0;
            }
        }

        return decks;
    }

    private static Dictionary<string, double> Run(List<RelayDeck> decks)
    {
        string folder = Directory.CreateTempSubdirectory("wirecheck-relays-").FullName;
        try
        {
            StringBuilder script = new("* batch\n.control\nset numdgt=12\n");
            for (int i = 0; i < decks.Count; i++)
            {
                string file = Path.Combine(folder, FormattableString.Invariant($"c{i}.cir"));
                File.WriteAllText(file, decks[i].Text);
                script.Append(CultureInfo.InvariantCulture, $"source {file}\n{decks[i].Commands(i)}destroy all\nremcirc\n");
            }

            script.Append("quit\n.endc\n.end\n");
            string main = Path.Combine(folder, "batch.cir");
            File.WriteAllText(main, script.ToString());
            return Read(Simulator.Run("ngspice", "-b", main));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Dictionary<string, double> Read(string printed)
    {
        Dictionary<string, double> answers = [];
        string circuit = "";
        foreach (string line in printed.Split('\n'))
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

    [GeneratedRegex(@"^(x\w+) = (\S+)")]
    private static partial Regex Printed();
}
