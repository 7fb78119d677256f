using System.Diagnostics;
using System.Globalization;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Knowledge;
using WireCheck.States;

namespace WireCheck.Bench;

/// <summary>Circuit and heat of the flagship settled together, beside its modes without heat in the same run.</summary>
internal static class HeatFigure
{
    private const int Rounds = 20;

    internal static void Print()
    {
        string file = Path.Combine(Repository.Root, "examples", "market-stall-12v.yaml");
        Pack pack = PackReader.Read(file, File.ReadAllText(file), LibraryClasses.Embedded).Pack
            ?? throw new InvalidOperationException("the flagship example does not read");
        SolvedBox box = SolvedBox.Solve(pack, new WiringData(Library.Embedded));
        StateSolver solver = new(box.Wiring);
        double cold = double.PositiveInfinity;
        double heated = double.PositiveInfinity;
        int modes = 0;
        for (int round = 0; round < Rounds; round++)
        {
            long start = Stopwatch.GetTimestamp();
            solver.SolveAll(box.Modes, box.Corners);
            cold = Math.Min(cold, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            start = Stopwatch.GetTimestamp();
            modes = HeatedBox.Solve(box, solver).Modes.Count;
            heated = Math.Min(heated, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"flagship, circuit and heat settled in {modes} lasting modes: {heated:0.0} ms, {heated / cold:0.0} times all modes and corners without heat ({cold:0.0} ms)"));
    }
}
