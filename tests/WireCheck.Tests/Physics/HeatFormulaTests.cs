using WireCheck.Physics;

namespace WireCheck.Tests.Physics;

/// <summary>Formulas of heat: by hand, and their order.</summary>
public sealed class HeatFormulaTests
{
    [Fact]
    public void A_layer_of_insulation_by_hand()
    {
        // 5 K m/W over 2π times ln(1 + 1.6/4) = 0.796 × 0.3365.
        Conduction.CylindricalLayer(5, 0.8e-3, 4e-3).ShouldBe(0.2678, 1e-4);
        Conduction.CylindricalLayer(5, 0, 4e-3).ShouldBe(0);
        Conduction.HeatedCore(0.25).ShouldBe(0.3183, 1e-4);
    }

    [Fact]
    public void A_long_fin_does_not_ask_for_its_length_and_a_short_one_loses_by_it()
    {
        Conduction.Fin(0.25, 5e-3, 100).ShouldBe(Math.Sqrt(0.25 * 5e-3), 1e-12);
        Conduction.Fin(0.25, 5e-3, 0.01).ShouldBe(0.25 * 0.01, 1e-5);
    }

    [Fact]
    public void Radiation_is_even_both_ways_and_near_six_watts_per_kelvin_at_room_temperature()
    {
        // 4 σ T³ = 4 × 5.67e-8 × 298.15³ = 6.01.
        Radiation.Flux(1, 25.5, 24.5).ShouldBe(6.011, 1e-3);
        Radiation.Flux(0.9, 60, 20).ShouldBe(-Radiation.Flux(0.9, 20, 60), 1e-12);
        Radiation.Flux(0.9, 20, 20).ShouldBe(0);
    }

    [Fact]
    public void Convection_grows_with_the_difference_and_does_not_ask_for_its_sign()
    {
        double little = NaturalConvection.HorizontalCylinder(5e-3, 40, 30);
        double much = NaturalConvection.HorizontalCylinder(5e-3, 80, 30);
        much.ShouldBeGreaterThan(little);
        NaturalConvection.VerticalPlate(0.2, 30, 40).ShouldBe(NaturalConvection.VerticalPlate(0.2, 40, 30), 1e-12);
        NaturalConvection.HotPlateFacingUp(0.1, 30, 30).ShouldBe(0);

        // The same plate the other way up: 0.27 in place of 0.54.
        (NaturalConvection.HotPlateFacingDown(0.1, 40, 30) / NaturalConvection.HotPlateFacingUp(0.1, 40, 30)).ShouldBe(0.5, 1e-12);
    }

    [Fact]
    public void Air_through_openings_by_hand()
    {
        // 0.6 × 20 cm² × √(9.807 × 0.1 m × 10 K / 313.15 K) = 0.6 × 0.002 × 0.1770.
        StackFlow.CubicMetresPerSecond(20e-4, 0.1, 40, 30).ShouldBe(2.124e-4, 1e-7);
        StackFlow.CubicMetresPerSecond(20e-4, 0.1, 30, 30).ShouldBe(0);
    }

    [Fact]
    public void The_balance_point_is_the_root_and_the_bounds_where_there_is_none_between()
    {
        BalancePoint.Find(t => 9 - (t * t), 0, 1000).ShouldBe(3, 1e-12);
        BalancePoint.Find(t => Math.Exp(-t) - 1e-6, 0, 1e4).ShouldBe(-Math.Log(1e-6), 1e-9);
        BalancePoint.Find(_ => 1, 0, 5).ShouldBe(5);
        BalancePoint.Find(_ => -1, 2, 5).ShouldBe(2);
    }
}
