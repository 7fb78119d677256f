using WireCheck.Physics;

namespace WireCheck.Tests.Physics;

/// <summary>Hand-worked cases and properties of the formulas that need no part.</summary>
public sealed class FormulaTests
{
    [Fact]
    public void Gauge_36_is_five_thousandths_of_an_inch() => WireGauge.Diameter(36).ShouldBe(0.127e-3, 1e-12);

    [Fact]
    public void Gauge_4_0_is_46_hundredths_of_an_inch() => WireGauge.Diameter(-3).ShouldBe(11.684e-3, 1e-9);

    [Fact]
    public void Three_gauges_halve_the_area_to_one_per_cent()
    {
        for (int gauge = 0; gauge <= 33; gauge++)
        {
            (WireGauge.Area(gauge) / WireGauge.Area(gauge + 3)).ShouldBe(2.005, 0.001);
        }
    }

    [Fact]
    public void A_circle_of_one_thousandth_is_one_circular_mil() =>
        WireGauge.CircularMils(Math.PI / 4 * 25.4e-6 * 25.4e-6).ShouldBe(1, 1e-12);

    [Fact]
    public void Copper_at_75_degrees_has_1_216_times_its_resistance_at_20() =>
        Resistance.AtTemperature(1, 0.00393, 75).ShouldBe(1.21615, 1e-9);

    [Fact]
    public void Resistance_is_never_negative() => Resistance.AtTemperature(1, 0.00393, -270).ShouldBe(0);

    [Fact]
    public void A_link_of_20_by_2_mm_and_70_mm_is_the_bar_and_two_joints() =>
        Resistance.OfBoltedLink(1e-6 / 58, 0.07, 40e-6, 15e-6).ShouldBe(60.172e-6, 1e-9);

    [Fact]
    public void A_bar_without_section_is_refused() =>
        Should.Throw<ArgumentOutOfRangeException>(() => Resistance.OfBar(1, 1, 0));

    [Fact]
    public void A_coil_at_145_degrees_has_gained_49_per_cent() => Coil.ResistanceFactor(145).ShouldBe(379.5 / 254.5, 1e-12);

    [Fact]
    public void A_hot_coil_needs_more_volts() => Coil.OperateVoltage(7.8, 145).ShouldBe(11.631, 0.001);

    [Theory]
    [InlineData(12, 90, 40, 25)]
    [InlineData(14.6, 90, 40, 60)]
    [InlineData(58.4, 2600, 50, 35)]
    public void A_settled_coil_sheds_what_it_makes(double volts, double ohms, double kelvinPerWatt, double ambient)
    {
        double settled = Coil.SettledTemperature(volts, ohms, kelvinPerWatt, ambient);
        double heat = volts * volts / (ohms * Coil.ResistanceFactor(settled));
        (ambient + (kelvinPerWatt * heat)).ShouldBe(settled, 1e-9);
    }

    [Fact]
    public void A_coil_without_voltage_is_as_warm_as_its_air() => Coil.SettledTemperature(0, 90, 40, 35).ShouldBe(35, 1e-9);

    [Fact]
    public void Air_as_hot_as_the_insulation_leaves_nothing() => AmbientCorrection.Factor(75, 30, 75, 75).ShouldBe(0);

    [Fact]
    public void The_ambient_of_the_table_changes_nothing() => AmbientCorrection.Factor(105, 30, 105, 30).ShouldBe(1);

    [Fact]
    public void Hotter_air_never_raises_an_ampacity()
    {
        double last = double.PositiveInfinity;
        for (int ambient = -20; ambient <= 110; ambient++)
        {
            double factor = AmbientCorrection.Factor(90, 30, 90, ambient);
            factor.ShouldBeLessThanOrEqualTo(last);
            last = factor;
        }
    }

    [Fact]
    public void The_circular_s_temperature_at_full_current_is_the_rating() =>
        AmbientCorrection.CircularTemperature(50, 105, 7, 7).ShouldBe(105, 1e-12);

    [Fact]
    public void Withstand_time_falls_with_the_square_of_the_current()
    {
        double k = ShortCircuitHeating.Constant(3.45e6, 234.5, 17.241e-9, 70, 160);
        double once = ShortCircuitHeating.Seconds(k, 1.5e-6, 100);
        ShortCircuitHeating.Seconds(k, 1.5e-6, 200).ShouldBe(once / 4, 1e-9);
    }

    [Fact]
    public void A_conductor_at_its_limit_already_withstands_nothing() =>
        ShortCircuitHeating.Constant(3.45e6, 234.5, 17.241e-9, 160, 160).ShouldBe(0);

    [Fact]
    public void Twenty_millifarad_on_ten_milliohm_takes_1330_amperes_and_177_ampere_squared_seconds()
    {
        CapacitorCharge.Peak(13.3, 0.010).ShouldBe(1330, 1e-9);
        CapacitorCharge.TimeConstant(0.010, 0.020).ShouldBe(200e-6, 1e-12);
        CapacitorCharge.Energy(13.3, 0.020).ShouldBe(1.7689, 1e-9);
        CapacitorCharge.JouleIntegral(13.3, 0.020, 0.010).ShouldBe(176.89, 1e-9);
    }

    [Fact]
    public void The_joule_integral_is_the_sum_of_the_decaying_current_squared()
    {
        double tau = CapacitorCharge.TimeConstant(0.02, 0.01);
        double sum = 0;
        double step = tau / 2000;
        for (double t = step / 2; t < 20 * tau; t += step)
        {
            double current = CapacitorCharge.Peak(53.2, 0.02) * Math.Exp(-t / tau);
            sum += current * current * step;
        }

        sum.ShouldBe(CapacitorCharge.JouleIntegral(53.2, 0.01, 0.02), 0.01);
    }
}
