using System.Diagnostics;
using System.Globalization;
using System.Text;
using WireCheck.Circuit;
using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;

namespace WireCheck.Bench;

/// <summary>An operating point here and by a whole run of ngspice on the same netlist.</summary>
internal static class NgspiceFigure
{
    internal static void Print()
    {
        Print(48, 60);

        // The full bank takes the simulator four minutes: asked for by name only.
        if (Environment.GetCommandLineArgs().Contains("full"))
        {
            Print(96, 74);
        }
    }

    private static void Print(int series, int parallel)
    {
        Network network = Bank.Make(series, parallel);
        Source first = network.Elements.OfType<Source>().First();
        OperatingPointSolver solver = new(network);
        solver.Solve();
        double ours = double.PositiveInfinity;
        for (int i = 0; i < 20; i++)
        {
            first.Emf += 1e-3;
            long start = Stopwatch.GetTimestamp();
            solver.Solve();
            ours = Math.Min(ours, Stopwatch.GetElapsedTime(start).TotalSeconds);
        }

        double theirs = Simulate(network);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"bank {series} x {parallel}, {network.NodeCount} nodes: {ours * 1e3:0.00} ms here, {theirs * 1e3:0} ms ngspice, ratio {theirs / ours:0} (at least 3000)"));
    }

    private static double Simulate(Network network)
    {
        StringBuilder deck = new("* bank\n");
        foreach (Element element in network.Elements)
        {
            if (element is Resistance resistance)
            {
                deck.Append(CultureInfo.InvariantCulture, $"R{element.Index} {element.A} {element.B} {resistance.Ohms:R}\n");
            }
            else if (element is Source source)
            {
                deck.Append(CultureInfo.InvariantCulture, $"V{element.Index} {element.A} e{element.Index} {source.Emf:R}\n");
                deck.Append(CultureInfo.InvariantCulture, $"R{element.Index} e{element.Index} {element.B} {source.Ohms:R}\n");
            }
        }

        deck.Append(".op\n.end\n");
        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, deck.ToString());
            ProcessStartInfo start = new("ngspice") { RedirectStandardOutput = true, RedirectStandardError = true };
            start.ArgumentList.Add("-b");
            start.ArgumentList.Add(file);
            long begin = Stopwatch.GetTimestamp();
            using Process process = Process.Start(start)!;
            Task<string> errors = process.StandardError.ReadToEndAsync();
            process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            errors.Wait();
            return Stopwatch.GetElapsedTime(begin).TotalSeconds;
        }
        finally
        {
            File.Delete(file);
        }
    }
}
