using System.Globalization;
using System.Text.RegularExpressions;
using WireCheck.Outside.Tests.Circuit;
using WireCheck.Physics;
using Xunit.Abstractions;

namespace WireCheck.Outside.Tests.Physics;

/// <summary>
/// Peak and Joule integral of a capacitor's charge against a transient of ngspice, with and without inductance and on both
/// sides of critical damping; and the figures that the trade reckons with. The transient's own steps allow one part in 300.
/// </summary>
public sealed partial class InrushTransientTests(ITestOutputHelper output)
{
    private const double Tolerance = 1.0 / 300;
    private const int StepsToPeak = 200;

    private readonly int _seed = int.TryParse(
        Environment.GetEnvironmentVariable("WIRECHECK_SEED"), CultureInfo.InvariantCulture, out int given)
        ? given
        : Random.Shared.Next();

    // Plain arithmetic of V/R, R C, C V²/2 and C V²/(2 R), as it is passed round among builders, rounded.
    [Theory]
    [InlineData(13.3, 20e-3, 10e-3, 1330, 200e-6, 1.8, 177)]
    [InlineData(53.2, 10e-3, 20e-3, 2660, 200e-6, 14, 708)]
    public void The_figures_of_the_trade_come_out(
        double volts, double farads, double ohms, double amps, double seconds, double joules, double integral)
    {
        SeriesCharge.Peak(volts, ohms, 0, farads).ShouldBe(amps, 1e-9 * amps);
        CapacitorCharge.TimeConstant(ohms, farads).ShouldBe(seconds, 1e-12);
        CapacitorCharge.Energy(volts, farads).ShouldBe(joules, 0.02 * joules);
        SeriesCharge.JouleIntegral(volts, ohms, farads).ShouldBe(integral, 0.005 * integral);
    }

    [Fact]
    public void Charges_agree_with_a_transient_of_ngspice_in_every_damping()
    {
        Random random = new(_seed);
        double worst = 0;
        double[] dampings = [0.1, 0.3, 0.6, 0.95, 1, 1.05, 1.5, 3, 6];
        string folder = Directory.CreateTempSubdirectory("wirecheck-inrush-").FullName;
        try
        {
            for (int i = 0; i < 3 * dampings.Length; i++)
            {
                double henries = Spread(random, 3e-7, 5e-6);
                double farads = Spread(random, 3e-4, 3e-2);
                double damping = dampings[i % dampings.Length] * (i < dampings.Length ? 1 : Spread(random, 0.9, 1.1));
                worst = Math.Max(worst, Compare(folder, Spread(random, 10, 60), 2 * damping * Math.Sqrt(henries / farads), henries, farads));
            }

            for (int i = 0; i < 8; i++)
            {
                worst = Math.Max(worst, Compare(folder, Spread(random, 10, 60), Spread(random, 5e-3, 0.2), 0, Spread(random, 3e-4, 3e-2)));
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        output.WriteLine(FormattableString.Invariant($"seed {_seed}: 35 transients, worst difference {worst:e2}"));
        worst.ShouldBeLessThan(Tolerance, $"seed {_seed}");
    }

    /// <summary>The larger relative difference of peak and Joule integral.</summary>
    private static double Compare(string folder, double volts, double ohms, double henries, double farads)
    {
        double step = henries > 0
            ? SeriesCharge.SecondsToPeak(ohms, henries, farads) / StepsToPeak
            : CapacitorCharge.TimeConstant(ohms, farads) / (5 * StepsToPeak);

        // Until e^−12 of the slowest part is left; its square is what the integral misses.
        double end = 12 * Math.Max(CapacitorCharge.TimeConstant(ohms, farads), 2 * henries / ohms);
        string coil = henries > 0 ? $"L1 a b {Number(henries)} ic=0" : "V2 a b 0";
        string file = Path.Combine(folder, "charge.cir");
        File.WriteAllText(file, $"""
            * a capacitor that is charged
            V1 in 0 {Number(volts)}
            R1 in a {Number(ohms)}
            {coil}
            C1 b 0 {Number(farads)} ic=0
            .options reltol=1e-5
            .control
            set numdgt=12
            tran {Number(step)} {Number(end)} 0 {Number(step)} uic
            let amps = abs((v(in)-v(a))/{Number(ohms)})
            let squared = amps*amps
            meas tran peak MAX amps
            meas tran integral INTEG squared
            quit
            .endc
            .end

            """);
        string answer = Simulator.Run("ngspice", "-b", file);
        double peak = Measured(answer, "peak");
        double integral = Measured(answer, "integral");
        return Math.Max(
            Math.Abs((peak / SeriesCharge.Peak(volts, ohms, henries, farads)) - 1),
            Math.Abs((integral / SeriesCharge.JouleIntegral(volts, ohms, farads)) - 1));
    }

    private static double Measured(string answer, string name)
    {
        Match match = Line().Matches(answer).FirstOrDefault(m => m.Groups[1].Value == name)
            ?? throw new InvalidOperationException($"ngspice measured no {name}:\n{answer}");
        return double.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture);
    }

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static double Spread(Random random, double low, double high) => low * Math.Pow(high / low, random.NextDouble());

    [GeneratedRegex(@"^(\w+)\s+=\s+(\S+)", RegexOptions.Multiline)]
    private static partial Regex Line();
}
