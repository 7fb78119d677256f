using System.Diagnostics;
using System.Globalization;
using WireCheck.Circuit.Solving;

namespace WireCheck.Bench;

/// <summary>Time and memory of one operating point of a box whose load has changed since the last.</summary>
internal static class BoxFigure
{
    private const int Repeats = 3000;

    internal static void Print()
    {
        BoxCircuit box = new();
        OperatingPointSolver solver = new(box.Network);
        Solve(box, solver);
        Solve(box, solver);
        double best = double.PositiveInfinity;
        long before = GC.GetAllocatedBytesForCurrentThread();
        int steps = 0;
        for (int round = 0; round < 7; round++)
        {
            long start = Stopwatch.GetTimestamp();
            steps = Solve(box, solver);
            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalMicroseconds / Repeats);
        }

        long bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"box of {box.Network.NodeCount} nodes, {box.Network.Elements.Count} elements: {best:0.0} µs an operating point (below 50), {(double)steps / Repeats:0.0} steps, {bytes / (7.0 * Repeats):0.0} bytes"));
    }

    private static int Solve(BoxCircuit box, OperatingPointSolver solver)
    {
        int steps = 0;
        for (int i = 0; i < Repeats; i++)
        {
            box.Varied.Watts = 100 + (i % 100);
            Solution solution = solver.Solve();
            steps += solution.Iterations;
            if (solution.Outcome != SolveOutcome.Solved)
            {
                throw new InvalidOperationException($"the box was not solved at {box.Varied.Watts} W");
            }
        }

        return steps;
    }
}
