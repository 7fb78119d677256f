using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Knowledge;
using WireCheck.Switching;

namespace WireCheck.Bench;

/// <summary>
/// Time to solve every state of the switches, warm. The examples have three switches each; more are put into branches here
/// to make ten and twelve.
/// </summary>
internal static class StatesFigure
{
    private const int Rounds = 12;

    internal static void Print()
    {
        Print("market-stall-12v", ["w8", "w14", "w16", "w18", "w20", "w22", "w25"], "below 50");
        Print("bicycle-workshop-48v", ["w9", "w13", "w16", "w18", "w30", "w20", "w22", "w25", "w28"], "below 500");
    }

    private static void Print(string example, string[] switched, string wanted)
    {
        string file = Path.Combine(Repository.Root, "examples", example + ".yaml");
        Pack pack = PackReader.Read(file, WithSwitches(File.ReadAllText(file), switched), LibraryClasses.Embedded).Pack
            ?? throw new InvalidOperationException($"{example} with more switches does not read");
        SwitchedBox box = new(pack, new WiringData(Library.Embedded));
        Enumeration enumeration = new(box);
        PlugCase unplugged = PlugCase.For(pack)[0];
        double best = double.PositiveInfinity;
        for (int round = 0; round < Rounds; round++)
        {
            long start = Stopwatch.GetTimestamp();
            enumeration.Run(unplugged);
            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{example}, {box.Switches.Length} switches ({switched.Length} of them put in here), {box.Wiring.Network.NodeCount} nodes: {enumeration.States.Length} states in {best:0.0} ms ({wanted}), {best * 1000 / enumeration.States.Length:0.0} µs a state, relays from both starts, {enumeration.Tester.BurdenedSolves / Rounds} solves with a burden"));
        PrintOneContact(box);
    }

    /// <summary>What one moved contact costs: a numeric factor anew, or its terms on a standing factor.</summary>
    private static void PrintOneContact(SwitchedBox box)
    {
        NodalEquations equations = new(box.Wiring.Network);
        equations.FindIslands();
        equations.Evaluate();
        equations.Refactor();
        BranchPair[] pairs = [.. box.Rails.Contacts.Select(c => new BranchPair(Place(equations, c.Element.A), Place(equations, c.Element.B)))];
        LowRankUpdate update = new(equations.Factor, box.Wiring.Network.NodeCount - 1, pairs, pairs);
        double[] siemens = [.. pairs.Select(_ => 1.0)];
        double anew = Time(equations.Refactor);
        double terms = Time(() => update.Prepare(siemens));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"  a numeric factor anew takes {anew:0.0} µs, {pairs.Length} contacts as low-rank terms {terms:0.0} µs; junctions ask for a new factor at each step in any case"));
    }

    private static int Place(NodalEquations equations, int node) => Array.IndexOf(equations.NodeOfPlace, node);

    private static double Time(Action action)
    {
        double best = double.PositiveInfinity;
        for (int round = 0; round < 20; round++)
        {
            long start = Stopwatch.GetTimestamp();
            for (int i = 0; i < 100; i++)
            {
                action();
            }

            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalMicroseconds / 100);
        }

        return best;
    }

    /// <summary>Puts a switch at the far end of each named conductor.</summary>
    internal static string WithSwitches(string text, IEnumerable<string> conductors)
    {
        StringBuilder switches = new("switches:\n");
        StringBuilder joints = new("joints:\n");
        foreach (string wire in conductors)
        {
            Match match = Regex.Match(text, $@"  {wire}: \{{from: [\w.+-]+, to: (?<to>[\w.+-]+),");
            Group to = match.Groups["to"];
            text = text.Remove(to.Index, to.Length).Insert(to.Index, $"sw-{wire}.1");
            switches.Append(CultureInfo.InvariantCulture, $"  sw-{wire}: {{part: isolator-275a-60v}}\n");
            joints.Append(CultureInfo.InvariantCulture, $"  j-sw-{wire}: {{between: [sw-{wire}.2, {to.Value}], kind: bolted}}\n");
        }

        return text.Replace("\nswitches:\n", "\n" + switches, StringComparison.Ordinal)
            .Replace("\njoints:\n", "\n" + joints, StringComparison.Ordinal);
    }
}
