using System.Diagnostics;
using System.Globalization;
using WireCheck.Fuzz;

// INPUTS [SEED [FIRST]]: runs that many inputs of a seed, from the given number on. Whatever fails is written to a folder of its own.
int inputs = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 300;
int seed = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 1;
int first = args.Length > 2 ? int.Parse(args[2], CultureInfo.InvariantCulture) : 0;

string kept = Path.Combine(Path.GetTempPath(), "wirecheck-fuzz");
string working = Path.Combine(kept, FormattableString.Invariant($"running-{Environment.ProcessId}"));
InputMaker maker = new(SeedTexts.Load(Repository.Root), seed);
InputRun run = new(working);
int[] codes = new int[3];
int failed = 0;
(double Seconds, int Number) slowest = (0, first);
Stopwatch clock = Stopwatch.StartNew();

// An input that never ends cannot be stopped from outside; it is told, its files stay where they are, and all ends.
using Timer watch = new(_ =>
{
    Console.WriteLine(FormattableString.Invariant($"seed {seed}: an input does not end; its files are in {working}"));
    Console.WriteLine("0 passed, 1 failed");
    Environment.Exit(1);
});
for (int number = first; number < first + inputs; number++)
{
    FuzzInput input = maker.Make(number);
    watch.Change(TimeSpan.FromSeconds(60), Timeout.InfiniteTimeSpan);
    RunOutcome outcome = run.Of(input);
    watch.Change(Timeout.Infinite, Timeout.Infinite);
    slowest = outcome.Seconds > slowest.Seconds ? (outcome.Seconds, number) : slowest;
    if (outcome.Failure is not null)
    {
        failed++;
        string folder = Path.Combine(kept, FormattableString.Invariant($"{seed}-{number}"));
        input.WriteTo(folder);
        File.WriteAllText(Path.Combine(folder, "failure.txt"), outcome.Failure + "\n");
        Console.WriteLine(FormattableString.Invariant($"seed {seed} input {number}: {outcome.Failure.Split('\n')[0]} (written to {folder})"));
    }
    else
    {
        codes[outcome.Code!.Value]++;
    }

    if ((number - first + 1) % 5000 == 0)
    {
        Console.WriteLine(FormattableString.Invariant($"{number - first + 1} inputs, {failed} failed, {clock.Elapsed.TotalSeconds:F0} s"));
    }
}

if (Directory.Exists(working))
{
    Directory.Delete(working, recursive: true);
}

using Process self = Process.GetCurrentProcess();
Console.WriteLine(FormattableString.Invariant(
    $"{inputs} inputs of seed {seed} from {first}: exit 0 {codes[0]}, exit 1 {codes[1]}, exit 2 {codes[2]}, failed {failed}; {inputs / clock.Elapsed.TotalSeconds:F0} a second;"));
Console.WriteLine(FormattableString.Invariant(
    $"slowest {slowest.Seconds:F2} s (input {slowest.Number}); the whole process took {self.PeakWorkingSet64 / 1e6:F0} MB at most"));
Console.WriteLine(failed == 0 ? "1 passed, 0 failed" : "0 passed, 1 failed");
return failed == 0 ? 0 : 1;
