using System.Globalization;
using WireCheck.Circuit.Elements;
using Xunit.Abstractions;

namespace WireCheck.Outside.Tests.Circuit;

/// <summary>
/// Generated circuits solved here and by ngspice and gnucap, as Debian packages them. Each run takes a new seed;
/// WIRECHECK_SEED in the environment repeats one.
/// </summary>
public sealed class GeneratedCircuitsTests(ITestOutputHelper output)
{
    private const int Count = 500;
    private const double Tolerance = 1e-6;

    private static readonly Type[] AllKinds =
    [
        typeof(Resistance), typeof(Contact), typeof(Source), typeof(ConstantCurrentSink), typeof(ConstantPowerSink),
        typeof(Diode), typeof(ChargerOutput), typeof(PanelCurve), typeof(ConverterStage),
    ];

    private readonly int _seed = int.TryParse(
        Environment.GetEnvironmentVariable("WIRECHECK_SEED"), CultureInfo.InvariantCulture, out int given)
        ? given
        : Random.Shared.Next();

    [Fact]
    public void Circuits_of_every_kind_agree_with_ngspice()
    {
        List<GeneratedCircuit> circuits = new CircuitGenerator(_seed, onlyPiecewise: false).Make(Count + 100, out int dropped);
        AllKinds.Except(circuits.SelectMany(c => c.Network.Elements).Select(e => e.GetType())).ShouldBeEmpty();
        Judge("ngspice, every kind", Ngspice.Compare(circuits), dropped);
    }

    [Fact]
    public void Circuits_of_straight_and_broken_lines_and_diodes_agree_with_gnucap_and_ngspice()
    {
        List<GeneratedCircuit> circuits = new CircuitGenerator(_seed, onlyPiecewise: true).Make(2 * Count, out int dropped);
        Judge("gnucap", Gnucap.Compare(circuits, Count), dropped);
        Judge("ngspice, the same circuits", Ngspice.Compare([.. circuits.Take(Count)]), dropped);
    }

    private void Judge(string by, Comparison comparison, int dropped)
    {
        string summary = FormattableString.Invariant(
            $"{by}, seed {_seed}: {comparison.Circuits} circuits, {comparison.Values} values, worst {comparison.Worst:e2} at {comparison.Where}; it refused {comparison.Refused}, {dropped} had no answer here");
        output.WriteLine(summary);
        Console.WriteLine(summary);
        comparison.Circuits.ShouldBeGreaterThanOrEqualTo(Count, summary);
        dropped.ShouldBeLessThan(Count / 20, summary);
        comparison.Worst.ShouldBeLessThan(Tolerance, summary);
    }
}
