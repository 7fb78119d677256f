using WireCheck.Physics;

namespace WireCheck.Outside.Tests.Physics;

/// <summary>Formulas against figures that handbooks print.</summary>
public sealed class HandbookFormulaTests
{
    /// <summary>NEC Table 310.15(B)(1)(1), base 30 °C, at the top of each step of ambient. Standing: published to 60 °C, above from memory.</summary>
    [Theory]
    [InlineData(60, 35, 0.91)]
    [InlineData(60, 40, 0.82)]
    [InlineData(60, 45, 0.71)]
    [InlineData(60, 50, 0.58)]
    [InlineData(60, 55, 0.41)]
    [InlineData(75, 10, 1.20)]
    [InlineData(75, 25, 1.05)]
    [InlineData(75, 40, 0.88)]
    [InlineData(75, 50, 0.75)]
    [InlineData(75, 60, 0.58)]
    [InlineData(75, 70, 0.33)]
    [InlineData(90, 10, 1.15)]
    [InlineData(90, 20, 1.08)]
    [InlineData(90, 35, 0.96)]
    [InlineData(90, 50, 0.82)]
    [InlineData(90, 70, 0.58)]
    [InlineData(90, 85, 0.29)]
    public void The_ambient_factor_is_the_table_s_to_its_last_digit(double rating, double ambient, double printed) =>
        AmbientCorrection.Factor(rating, 30, rating, ambient).ShouldBe(printed, 0.0051);

    /// <summary>NEC Table 310.15(B)(1)(2), base 40 °C. Standing: published.</summary>
    [Theory]
    [InlineData(90, 50, 0.89)]
    [InlineData(90, 70, 0.63)]
    [InlineData(150, 60, 0.90)]
    [InlineData(150, 90, 0.74)]
    [InlineData(200, 100, 0.79)]
    [InlineData(250, 100, 0.85)]
    public void The_ambient_factor_holds_for_the_table_of_40_degrees(double rating, double ambient, double printed) =>
        AmbientCorrection.Factor(rating, 40, rating, ambient).ShouldBe(printed, 0.0051);

    /// <summary>AC 43.13-1B paragraph 11-66 d(4): run length by temperature, 254.5/(234.5 + T). Standing: published.</summary>
    [Theory]
    [InlineData(50)]
    [InlineData(105)]
    [InlineData(150)]
    public void Copper_lengthens_the_drop_as_the_aircraft_handbook_says(double celsius) =>
        Resistance.AtTemperature(1, 0.00393, celsius).ShouldBe((234.5 + celsius) / 254.5, 0.001);

    /// <summary>ABYC E-11 drop formula, K = 10.75, against the area of 10 AWG copper at about 20 °C. Standing: from memory.</summary>
    [Fact]
    public void The_drop_formula_agrees_with_the_resistance_of_the_wire_it_names()
    {
        double mils = Resistance.CircularMilsForDrop(20, 19.5, 0.5);
        double ohms = Resistance.OfBar(1e-6 / 58, 19.5 * 0.3048, mils * WireGauge.CircularMil);
        (ohms * 20).ShouldBe(0.5, 0.5 * 0.04);
    }

    /// <summary>Withstand constants of IEC 60364-5-54: copper PVC 70 °C 115, XLPE 143, butyl 134. Standing: published.</summary>
    [Theory]
    [InlineData(70, 160, 115)]
    [InlineData(90, 250, 143)]
    [InlineData(85, 220, 134)]
    public void The_withstand_constant_of_copper_is_that_of_the_standard(double from, double to, double printed) =>
        (ShortCircuitHeating.Constant(3.45e6, 234.5, 17.241e-9, from, to) * 1e-6).ShouldBe(printed, 0.6);

    /// <summary>The same for aluminium: PVC 76, XLPE 94, butyl 89. Standing: published.</summary>
    [Theory]
    [InlineData(70, 160, 76)]
    [InlineData(90, 250, 94)]
    [InlineData(85, 220, 89)]
    public void The_withstand_constant_of_aluminium_is_that_of_the_standard(double from, double to, double printed) =>
        (ShortCircuitHeating.Constant(2.5e6, 228, 28.264e-9, from, to) * 1e-6).ShouldBe(printed, 0.6);

    /// <summary>Copper Development Association Table 1: micro-ohm per foot of C110 bar at 20 °C. Standing: published.</summary>
    [Theory]
    [InlineData(0.0625, 0.5, 264)]
    [InlineData(0.0625, 1, 132)]
    [InlineData(0.125, 1, 65.8)]
    [InlineData(0.125, 2, 32.9)]
    [InlineData(0.125, 3, 21.9)]
    [InlineData(0.1875, 1, 43.8)]
    [InlineData(0.25, 4, 8.23)]
    public void A_copper_bar_has_the_resistance_of_the_handbook(double thickness, double width, double printed)
    {
        const double Inch = 0.0254;
        double ohms = Resistance.OfBar(1e-6 / 58, 12 * Inch, thickness * width * Inch * Inch);
        (ohms * 1e6).ShouldBe(printed, printed * 0.02);
    }

    /// <summary>ISO 7588 relay sheets: 52 to 75 K of rise at 12 V on 90 Ω, 1.6 W. Standing: published for the rise.</summary>
    [Fact]
    public void A_relay_of_40_kelvin_per_watt_settles_within_the_sheets_rise() =>
        (Coil.SettledTemperature(12, 90, 40, 20) - 20).ShouldBeInRange(45, 75);
}
