using WireCheck.Physics;

namespace WireCheck.Outside.Tests.Physics;

/// <summary>The heating equation and its adiabatic end against printed tables and worked examples.</summary>
public sealed class ConductorHeatingExamplesTests
{
    private const double CopperHeat = 3.45e6;
    private const double CopperZero = 234.5;
    private const double CopperResistivity = 17.241e-9;

    /// <summary>
    /// Electrical Installation Guide, figure G53: highest let-through of copper cables in 10⁶ A² s, by section in mm², PVC of
    /// 70 °C and XLPE of 90 °C. Standing: published.
    /// </summary>
    [Theory]
    [InlineData(1.5, 0.0297, 0.0460)]
    [InlineData(2.5, 0.0826, 0.1278)]
    [InlineData(4, 0.2116, 0.3272)]
    [InlineData(6, 0.4761, 0.7362)]
    [InlineData(10, 1.3225, 2.0450)]
    [InlineData(16, 3.3856, 5.2350)]
    public void Copper_lets_through_what_the_guide_prints(double section, double pvc, double xlpe)
    {
        LetThrough(Copper(section), 70, 160).ShouldBe(pvc, pvc * 0.01);
        LetThrough(Copper(section), 90, 250).ShouldBe(xlpe, xlpe * 0.01);
    }

    /// <summary>The same figure for aluminium. Standing: published.</summary>
    [Theory]
    [InlineData(1.5, 0.0130, 0.0199)]
    [InlineData(4, 0.0924, 0.1414)]
    [InlineData(10, 0.5776, 0.8836)]
    [InlineData(16, 1.4786, 2.2620)]
    public void Aluminium_lets_through_what_the_guide_prints(double section, double pvc, double xlpe)
    {
        ConductorHeating wire = new(28.264e-3 / section, 228, 2.5 * section, 0, 30);
        LetThrough(wire, 70, 160).ShouldBe(pvc, pvc * 0.015);
        LetThrough(wire, 90, 250).ShouldBe(xlpe, xlpe * 0.015);
    }

    /// <summary>ICEA P-32-382: copper from 75 to 150 °C stands one ampere for each 42.25 circular mils for five seconds. Standing: published.</summary>
    [Theory]
    [InlineData(10)]
    [InlineData(2)]
    public void Copper_keeps_the_five_second_rule(int gauge)
    {
        double amps = WireGauge.CircularMils(WireGauge.Area(gauge)) / 42.25;
        Copper(WireGauge.Area(gauge) * 1e6).Seconds(75, 150, amps).ShouldBe(5, 0.1);
    }

    /// <summary>
    /// IEEE 738-2006, the example of a step from 800 to 1200 A in a line conductor of 1309 J/(K m): it warms from 80 to 128 °C
    /// with a time constant of 14 minutes. Standing: from memory.
    /// </summary>
    [Fact]
    public void A_line_conductor_warms_with_the_time_constant_of_the_standard_s_example()
    {
        // 7.283e-5 Ω/m at 25 °C and 8.688e-5 at 75 °C give the straight line of resistance.
        const double Slope = (8.688e-5 - 7.283e-5) / 50;
        const double At20 = 7.283e-5 - (5 * Slope);
        const double Zero = (At20 / Slope) - 20;
        const double HeatAt80 = 800.0 * 800 * (7.283e-5 + (55 * Slope));
        const double HeatAt128 = 1200.0 * 1200 * (7.283e-5 + (103 * Slope));

        // The loss, straight between the two balances; the sun raises the air it seems to lie in.
        const double Loss = (HeatAt128 - HeatAt80) / 48;
        ConductorHeating line = new(At20, Zero, 1309, Loss, 128 - (HeatAt128 / Loss));
        line.SteadyCelsius(800).ShouldBe(80, 0.01);
        line.SteadyCelsius(1200).ShouldBe(128, 0.01);
        (line.Seconds(80, 80 + (48 * (1 - Math.Exp(-1))), 1200) / 60).ShouldBe(14, 1);
    }

    private static ConductorHeating Copper(double section) =>
        new(CopperResistivity * 1e6 / section, CopperZero, CopperHeat * section * 1e-6, 0, 30);

    /// <summary>10⁶ A² s from one temperature to another.</summary>
    private static double LetThrough(ConductorHeating wire, double from, double to) => 1e2 * wire.Seconds(from, to, 1e4);
}
