using System.Diagnostics;
using System.Globalization;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Knowledge;
using WireCheck.States;

namespace WireCheck.Bench;

/// <summary>Time of one warm operating point of the flagship example, and of all its modes at all corners.</summary>
internal static class FlagshipFigure
{
    private const int Repeats = 200;

    internal static void Print()
    {
        string file = Path.Combine(Repository.Root, "examples", "market-stall-12v.yaml");
        Pack pack = PackReader.Read(file, File.ReadAllText(file), LibraryClasses.Embedded).Pack
            ?? throw new InvalidOperationException("the flagship example does not read");
        WiringData data = new(Library.Embedded);
        SolvedBox box = SolvedBox.Solve(pack, data);
        StateSolver solver = new(box.Wiring);
        BoxMode mode = box.Modes.First(m => m.Id == Modes.Everything);
        double point = double.PositiveInfinity;
        double all = double.PositiveInfinity;
        double whole = double.PositiveInfinity;
        for (int round = 0; round < 8; round++)
        {
            long start = Stopwatch.GetTimestamp();
            for (int i = 0; i < Repeats; i++)
            {
                solver.Solve(mode, box.Corners[i % box.Corners.Count]);
            }

            point = Math.Min(point, Stopwatch.GetElapsedTime(start).TotalMicroseconds / Repeats);
            start = Stopwatch.GetTimestamp();
            for (int i = 0; i < Repeats / 10; i++)
            {
                solver.SolveAll(box.Modes, box.Corners);
            }

            all = Math.Min(all, Stopwatch.GetElapsedTime(start).TotalMilliseconds / (Repeats / 10.0));
            start = Stopwatch.GetTimestamp();
            SolvedBox.Solve(pack, data);
            whole = Math.Min(whole, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"flagship, relays and converters settled: {point:0} µs a state (mode everything, relays from both starts); all {box.Points.Count} modes and corners: {all:0.00} ms (below 5); with wiring and ordering anew: {whole:0.00} ms"));
    }
}
