using WireCheck.Physics;

namespace WireCheck.Tests.Physics;

/// <summary>Where a formula meets the end of its range, and the small terms that a rounder case would not show.</summary>
public sealed class FormulaEdgesTests
{
    [Fact]
    public void Air_as_hot_as_the_insulation_or_hotter_leaves_no_ampacity()
    {
        AmbientCorrection.Factor(90, 30, 90, 90).ShouldBe(0);
        AmbientCorrection.Factor(90, 30, 90, 120).ShouldBe(0);
    }

    [Fact]
    public void The_circular_s_temperature_at_a_quarter_of_the_current_is_halfway() =>
        AmbientCorrection.CircularTemperature(30, 105, 2.5, 10).ShouldBe(67.5, 1e-12);

    [Fact]
    public void A_conductor_that_may_carry_nothing_has_no_loss_of_its_own()
    {
        ConductorHeating.LossAtAmpacity(0, 1e-3, 90, 30).ShouldBe(0);
        ConductorHeating.LossAtAmpacity(-1, 1e-3, 90, 30).ShouldBe(0);
        ConductorHeating.LossAtAmpacity(10, 1e-3, 90, 90).ShouldBe(0);
        ConductorHeating.LossAtAmpacity(10, 1e-3, 90, 95).ShouldBe(0);
    }

    [Fact]
    public void A_wire_without_current_and_without_loss_stays_at_the_air() =>
        new ConductorHeating(1e-3, 234.5, 20, loss: 0, ambient: 31).SteadyCelsius(0).ShouldBe(31);

    [Fact]
    public void A_wire_that_is_hotter_already_takes_no_time() =>
        new ConductorHeating(1e-3, 234.5, 20, loss: 0.2, ambient: 31).Seconds(170, 160, 200).ShouldBe(0);

    [Fact]
    public void Next_to_even_heating_the_time_keeps_its_second_term()
    {
        // The rise of resistance and the loss all but cancel: growth × (to − from)/rate = x is near 5e-7, and t = (to − from)/rate × (1 − x/2).
        const double amps = 100;
        double rise = amps * amps * 1e-3 / 254.5;
        ConductorHeating heating = new(1e-3, 234.5, heat: 20, loss: rise * (1 - 1.27e-6), ambient: 30);
        double growth = rise * 1.27e-6 / 20;
        double rate = ((rise * 234.5) + (heating.Loss * 30)) / 20 + (growth * 30);
        double x = growth * 100 / rate;
        x.ShouldBeInRange(4e-7, 6e-7);

        heating.Seconds(30, 130, amps).ShouldBe(100 / rate * (1 - (x / 2)), 1e-9);
    }

    [Fact]
    public void Next_to_critical_damping_the_peak_comes_a_third_of_the_distance_sooner()
    {
        // ω₀ t = arcosh(ζ)/√(ζ² − 1) = 1 − (ζ − 1)/3 + …, with ω₀ = 1: L = 1, C = 1, R = 2 ζ.
        SeriesCharge.SecondsToPeak(2 * (1 + 9e-7), 1, 1).ShouldBe(1 - 3e-7, 1e-10);
        SeriesCharge.SecondsToPeak(2 * (1 - 9e-7), 1, 1).ShouldBe(1 + 3e-7, 1e-10);
    }

    [Fact]
    public void Without_inductance_the_peak_comes_at_once()
    {
        SeriesCharge.DampingRatio(0.02, 0, 1e-3).ShouldBe(double.PositiveInfinity);
        SeriesCharge.SecondsToPeak(0.02, 0, 1e-3).ShouldBe(0);
        SeriesCharge.LoopTimeConstant(0.02, 1e-6).ShouldBe(5e-5, 1e-15);
    }

    [Fact]
    public void A_start_above_the_limit_withstands_nothing() =>
        ShortCircuitHeating.Constant(3.45e6, 234.5, 17.241e-9, 200, 160).ShouldBe(0);

    /// <summary>10.75 × 20 A × 19.5 ft / 0.5 V.</summary>
    [Fact]
    public void Circular_mils_for_a_drop_by_hand() => Resistance.CircularMilsForDrop(20, 19.5, 0.5).ShouldBe(8385, 1e-9);

    /// <summary>ASTM B258: 0.46 inch, 107.2 mm² for 4/0, which is gauge −3.</summary>
    [Fact]
    public void The_section_of_the_thickest_gauge_is_that_of_the_standard() => WireGauge.Area(-3).ShouldBe(107.22e-6, 0.01e-6);

    /// <summary>a R20 × layer of 1 or more has no balance: the layer holds back more than its warmth adds.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void However_many_wires_of_a_bundle_run_away_they_are_told_as_molten(int wires)
    {
        // 500² × 8 mΩ/m/254.5 = 7.86 W/(m K), times 0.19 K m/W = 1.49.
        WiresInAir bundle = new([.. Enumerable.Repeat(new WireCore(8e-3, 234.5, 0.19), wires), new WireCore(8e-3, 234.5, 0.19)], 9e-3, 0.92, 0.32);
        double[] celsius = new double[wires + 1];
        double[] amps = [.. Enumerable.Repeat(500.0, wires), 0];

        bundle.Settle(amps, 30, celsius).ShouldBe(WiresInAir.MeltingCelsius);

        celsius.Take(wires).ShouldAllBe(c => c == WiresInAir.MeltingCelsius);
    }

    /// <summary>A thick layer alone does not make a wire run away.</summary>
    [Fact]
    public void A_wire_in_thick_insulation_settles_where_heat_made_and_lost_are_even()
    {
        WiresInAir wire = new([new WireCore(1e-3, 234.5, 2)], 30e-3, 0.92);
        double[] celsius = new double[1];

        double surface = wire.Settle([60], 30, celsius);

        celsius[0].ShouldBeLessThan(100);
        (celsius[0] - surface).ShouldBe(2 * wire.WattsMade(0, 60, celsius[0]), 1e-9);
    }
}
