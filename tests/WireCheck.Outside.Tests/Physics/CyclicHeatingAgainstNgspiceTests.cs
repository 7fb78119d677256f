using System.Globalization;
using System.Text.RegularExpressions;
using WireCheck.Outside.Tests.Circuit;
using WireCheck.Physics;

namespace WireCheck.Outside.Tests.Physics;

/// <summary>
/// A wire heated in spells against a transient of ngspice: watts as amperes, kelvins as volts, the heat its metal stores as a
/// capacitor, its loss as a resistor. Fifteen time constants are let pass first. The transient's steps allow one part in 500.
/// </summary>
public sealed partial class CyclicHeatingAgainstNgspiceTests
{
    [Theory]
    [InlineData(10, 0.2)]
    [InlineData(60, 0.1)]
    [InlineData(180, 0.3)]
    [InlineData(600, 0.5)]
    public void The_highest_rise_is_that_of_a_circuit_of_heat(double onSeconds, double duty)
    {
        const double Heat = 18.2; // J/(K m), 10 AWG of copper
        const double Loss = 0.29; // W/(K m)
        double cycle = onSeconds / duty;
        double settled = Math.Ceiling(15 * (Heat / Loss) / cycle) * cycle;
        string folder = Directory.CreateTempSubdirectory("wirecheck-heating-").FullName;
        string file = Path.Combine(folder, "spells.cir");
        File.WriteAllText(file, $"""
            * a wire heated in spells, 10 W/m
            I1 0 t PULSE(0 10 0 1m 1m {Number(onSeconds)} {Number(cycle)})
            C1 t 0 {Number(Heat)} ic=0
            R1 t 0 {Number(1 / Loss)}
            .options reltol=1e-5
            .control
            set numdgt=12
            tran {Number(onSeconds / 100)} {Number(settled + (2 * cycle))} {Number(settled)} {Number(onSeconds / 100)} uic
            meas tran peak MAX v(t)
            quit
            .endc
            .end

            """);
        string answer = Simulator.Run("ngspice", "-b", file);
        Directory.Delete(folder, recursive: true);
        Match peak = Peak().Match(answer);
        peak.Success.ShouldBeTrue(answer);

        double rise = 10 / Loss * CyclicHeating.Share(onSeconds, duty, Heat / Loss);
        double.Parse(peak.Groups[1].Value, CultureInfo.InvariantCulture).ShouldBe(rise, 0.002 * rise);
    }

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^peak\s+=\s+(\S+)", RegexOptions.Multiline)]
    private static partial Regex Peak();
}
