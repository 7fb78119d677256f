using System.Diagnostics;
using System.Globalization;
using WireCheck.Physics;

namespace WireCheck.Outside.Tests.Physics;

/// <summary>Wire gauge against GNU units, whose <c>wiregauge</c> was written by others from ASTM B258. Standing: published.</summary>
public sealed class GaugeAgainstUnitsTests
{
    [Theory]
    [InlineData(24)]
    [InlineData(22)]
    [InlineData(20)]
    [InlineData(18)]
    [InlineData(16)]
    [InlineData(14)]
    [InlineData(12)]
    [InlineData(10)]
    [InlineData(8)]
    [InlineData(6)]
    [InlineData(4)]
    [InlineData(3)]
    [InlineData(2)]
    [InlineData(1)]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(-2)]
    [InlineData(-3)]
    public void The_diameter_is_that_of_gnu_units(int gauge)
    {
        double millimetres = Ask(FormattableString.Invariant($"wiregauge({gauge})"), "mm");
        (WireGauge.Diameter(gauge) * 1e3).ShouldBe(millimetres, millimetres * 1e-6);
    }

    [Fact]
    public void The_circular_mil_is_that_of_gnu_units() =>
        WireGauge.CircularMil.ShouldBe(Ask("circularmil", "m^2"), 1e-16);

    private static double Ask(string from, string to)
    {
        ProcessStartInfo start = new("units") { RedirectStandardOutput = true };
        start.ArgumentList.Add("--terse");
        start.ArgumentList.Add("--digits");
        start.ArgumentList.Add("12");
        start.ArgumentList.Add(from);
        start.ArgumentList.Add(to);
        using Process process = Process.Start(start)!;
        string answer = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        process.ExitCode.ShouldBe(0, "GNU units must be installed");
        return double.Parse(answer, CultureInfo.InvariantCulture);
    }
}
