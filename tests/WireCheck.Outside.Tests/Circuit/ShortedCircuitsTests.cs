using System.Globalization;
using WireCheck.Circuit;
using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using Xunit.Abstractions;

namespace WireCheck.Outside.Tests.Circuit;

/// <summary>
/// Fault currents solved on the factor of the sound circuit, and by ngspice with a bolted short of 1 µΩ in its deck. Each run
/// takes a new seed; WIRECHECK_SEED in the environment repeats one.
/// </summary>
public sealed class ShortedCircuitsTests(ITestOutputHelper output)
{
    private const int Count = 500;
    private const double Tolerance = 1e-6;
    private const double ShortOhms = 1e-6;

    private readonly int _seed = int.TryParse(
        Environment.GetEnvironmentVariable("WIRECHECK_SEED"), CultureInfo.InvariantCulture, out int given)
        ? given
        : Random.Shared.Next();

    [Fact]
    public void Fault_currents_of_generated_circuits_agree_with_ngspice()
    {
        Random random = new(_seed);
        List<GeneratedCircuit> shorted = [];
        List<double> ours = [];
        int unsolved = 0;
        foreach (GeneratedCircuit sound in new CircuitGenerator(_seed, onlyPiecewise: true).Make(Count + 60, out _))
        {
            Network network = sound.Network;
            (int from, int to) = Ends(network, random);
            ShortedNetwork solver = new(network);
            solver.Prepare().ShouldBeTrue();
            if (!solver.Short(from, to, ShortOhms))
            {
                unsolved++;
                continue;
            }

            double amps = solver.ShortAmps;
            double[] currents = (double[])solver.Amps.Clone();
            solver.End();
            shorted.Add(new GeneratedCircuit(sound.Number, network, WithShort(network, from, to, currents, amps, solver)));
            ours.Add(amps);
        }

        Comparison comparison = Ngspice.Compare(shorted);
        string summary = FormattableString.Invariant(
            $"ngspice, shorted circuits, seed {_seed}: {comparison.Circuits} circuits, {comparison.Values} values, currents up to {ours.Max():0} A, worst {comparison.Worst:e2} at {comparison.Where}; it refused {comparison.Refused}, {unsolved} had no answer here");
        output.WriteLine(summary);
        Console.WriteLine(summary);
        comparison.Circuits.ShouldBeGreaterThanOrEqualTo(Count, summary);
        unsolved.ShouldBe(0, summary);
        comparison.Worst.ShouldBeLessThan(Tolerance, summary);
    }

    /// <summary>A place of the positive pole's side and one of the negative's: the ends of some element between them.</summary>
    private static (int From, int To) Ends(Network network, Random random)
    {
        Element[] across = [.. network.Elements.Where(e => e is not Resistance { Ohms: < 1 } and not Contact)];
        Element chosen = across[random.Next(across.Length)];
        return (chosen.A, chosen.B);
    }

    /// <summary>The answer of the low-rank solve, held for comparison as a solution of the circuit with the short in it.</summary>
    private static Solution WithShort(Network network, int from, int to, double[] currents, double amps, ShortedNetwork solver)
    {
        solver.Short(from, to, ShortOhms);
        double[] volts = [.. Enumerable.Range(0, network.NodeCount).Select(n => solver.Volts(n, network.Reference))];
        solver.End();
        network.Add(new Resistance("short", from, to, ShortOhms));
        Islands islands = new(network.NodeCount);
        islands.FindTied([.. network.Elements]);
        return new Solution(
            volts, new double[volts.Length], [.. currents, amps], new double[network.Elements.Count],
            [.. Enumerable.Range(0, network.NodeCount).Select(islands.Of)], new int[network.NodeCount], network.Reference)
        {
            Outcome = SolveOutcome.Solved,
        };
    }
}
