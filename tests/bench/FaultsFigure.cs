using System.Diagnostics;
using System.Globalization;
using System.Text;
using WireCheck.Circuit;
using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Faults;
using WireCheck.Knowledge;
using WireCheck.States;

namespace WireCheck.Bench;

/// <summary>The whole fault study: of the flagship, and of generated boxes against one run of ngspice for each short.</summary>
internal static class FaultsFigure
{
    private const int Sampled = 12;

    /// <summary>
    /// How long the study is run before it is timed, s. The just-in-time compiler makes its quick code only after it has seen
    /// the loops and found a pause; what is timed before is the slow code of the first start.
    /// </summary>
    private const double WarmingSeconds = 3;

    internal static void Print()
    {
        string file = Path.Combine(Repository.Root, "examples", "market-stall-12v.yaml");
        Pack flagship = PackReader.Read(file, File.ReadAllText(file), LibraryClasses.Embedded).Pack
            ?? throw new InvalidOperationException("the flagship example does not read");
        FaultInput input = Input(flagship);
        (double seconds, double processor, FaultStudy study) = Time(input, 200);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"faults of the flagship: {study.Points.Count} places, {study.Solved} shorts followed to their end in {seconds * 1e3:0.00} ms (below 10); processor time, mean: {processor * 1e3:0.00} ms"));
        double thousand = OfGenerated(1000, withSimulator: true);
        double more = OfGenerated(8000, withSimulator: false);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"8 times the conductors: {more / thousand:0.0} times as long for each short (at most 10)"));
    }

    /// <summary>Prints one generated box and returns the seconds for each short.</summary>
    private static double OfGenerated(int conductors, bool withSimulator)
    {
        Pack pack = FaultBox.Make(conductors);
        FaultInput input = Input(pack);
        (double seconds, _, FaultStudy study) = Time(input, withSimulator ? 4 : 1);
        int atEnds = study.Points.Count(p => p.Point.PartId[0] is 'w' or 't' or 'a' or 'b' or 'c');
        double each = seconds / study.Solved;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"faults of {pack.Conductors.Count} conductors: {study.Points.Count} places, {atEnds} of them ends of conductors, {study.Solved} different shorts followed to their end in {seconds:0.000} s{(conductors == 1000 ? " (below 1)" : "")}, {each * 1e6:0} µs each; {study.Unsolved.Count} without an answer"));
        if (withSimulator)
        {
            double theirs = Simulate(pack, study);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"ngspice, mean of {Sampled} runs of one short each: {theirs * 1e3:0.0} ms, ratio {theirs / each:0} (at least 200); all {study.Solved} would take {theirs * study.Solved:0} s"));
        }

        return each;
    }

    /// <summary>The best time of several runs, and the mean of the processor time, which other programs disturb less.</summary>
    private static (double Seconds, double Processor, FaultStudy Study) Time(FaultInput input, int repeats)
    {
        FaultStudy study = FaultStudy.Of(input);
        for (long begin = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(begin).TotalSeconds < WarmingSeconds;)
        {
            study = FaultStudy.Of(input);
        }

        double best = double.PositiveInfinity;
        TimeSpan used = Environment.CpuUsage.TotalTime;
        for (int i = 0; i < repeats; i++)
        {
            long start = Stopwatch.GetTimestamp();
            study = FaultStudy.Of(input);
            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalSeconds);
        }

        return (best, (Environment.CpuUsage.TotalTime - used).TotalSeconds / repeats, study);
    }

    /// <summary>What the study takes; every conductor is given the same ampacity, since finding it is no part of the figure.</summary>
    private static FaultInput Input(Pack pack)
    {
        WiringData data = new(Library.Embedded);
        BoxWiring wiring = BoxWiring.Build(pack, data);
        WiringGraph graph = WiringGraph.Of(wiring);
        return new FaultInput(
            pack, data, Corner.For(pack, data), graph, Poles.Of(wiring, graph, SourcePoint.In(wiring)), _ => 20, _ => 35, _ => 20, 35);
    }

    /// <summary>Mean seconds of a whole run of ngspice on the box with one short in it.</summary>
    private static double Simulate(Pack pack, FaultStudy study)
    {
        WiringData data = new(Library.Embedded);
        BoxWiring wiring = BoxWiring.Build(pack, data);
        wiring.SetConditions(Corner.For(pack, data)[0].Conditions);
        double total = 0;
        for (int i = 0; i < Sampled; i++)
        {
            PointFaults point = study.Points[i * (study.Points.Count - 1) / (Sampled - 1)];
            total += Run(Deck(wiring.Network, point.Point.Node, wiring.Network.Reference));
        }

        return total / Sampled;
    }

    private static string Deck(Network network, int from, int to)
    {
        StringBuilder deck = new("* box\n");
        foreach (Element element in network.Elements)
        {
            switch (element)
            {
                case Resistance resistance:
                    deck.Append(CultureInfo.InvariantCulture, $"R{element.Index} {element.A} {element.B} {resistance.Ohms:R}\n");
                    break;
                case Contact contact:
                    deck.Append(CultureInfo.InvariantCulture, $"R{element.Index} {element.A} {element.B} {contact.Ohms:R}\n");
                    break;
                case Circuit.Elements.Source source:
                    deck.Append(CultureInfo.InvariantCulture, $"I{element.Index} {element.B} {element.A} {source.Emf / source.Ohms:R}\nR{element.Index} {element.A} {element.B} {source.Ohms:R}\n");
                    break;
            }
        }

        deck.Append(CultureInfo.InvariantCulture, $"Rshort {from} {to} 1e-6\nRzero {network.Reference} 0 1\n.op\n.end\n");
        return deck.ToString();
    }

    private static double Run(string deck)
    {
        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, deck);
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
