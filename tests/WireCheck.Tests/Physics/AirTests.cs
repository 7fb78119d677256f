using WireCheck.Physics;

namespace WireCheck.Tests.Physics;

/// <summary>The air that takes the heat away, and the convection that it makes.</summary>
public sealed class AirTests
{
    /// <summary>US Standard Atmosphere 1976, Table at sea level, 15 °C: the values printed there, from memory.</summary>
    [Fact]
    public void Air_at_sea_level_is_that_of_the_standard_atmosphere()
    {
        Air air = new(15);

        air.Absolute.ShouldBe(288.15);
        air.Density.ShouldBe(1.2250, 5e-5);
        air.Conductivity.ShouldBe(2.5326e-2, 5e-7);
        air.KinematicViscosity.ShouldBe(1.4607e-5, 5e-10);
        (air.KinematicViscosity * air.Density).ShouldBe(1.7894e-5, 5e-10);
    }

    /// <summary>The formulas of the standard written out at 400 K.</summary>
    [Fact]
    public void Hot_air_by_hand()
    {
        // 400^1.5 = 8000; 1.458e-6 × 8000/510.4; 2.64638e-3 × 8000/(400 + 245.4 × 10^(−0.03) = 229.02).
        Air air = new(126.85);

        (air.KinematicViscosity * air.Density).ShouldBe(2.2853e-5, 1e-9);
        air.Conductivity.ShouldBe(3.3657e-2, 1e-6);
        air.Density.ShouldBe(0.88246, 1e-5);
        air.Diffusivity.ShouldBe(3.3657e-2 / (0.88246 * 1006), 1e-8);
        air.Prandtl.ShouldBe(0.6831, 1e-4);
        air.HeatPerVolume.ShouldBe(887.75, 0.01);
    }

    [Fact]
    public void Colder_than_any_place_on_earth_air_stays_what_it_is()
    {
        new Air(-100).Absolute.ShouldBe(173.15, 1e-9);
        new Air(-250).Density.ShouldBe(new Air(-100).Density);
    }

    [Fact]
    public void A_wall_forty_kelvins_warmer_than_the_room_by_hand()
    {
        // 0.4 m, film at 40 °C: ν 1.7023e-5, α 2.4188e-5, so Ra = 9.80665 × 40 × 0.064/(313.15 × ν α) = 1.970e8 and Pr = 0.7038;
        // [1 + (0.492/Pr)^(9/16)]^(8/27) = 1.1942 and Nu = (0.825 + 0.387 × 24.12/1.1942)² = 74.75, times 0.02727/0.4.
        NaturalConvection.VerticalPlate(0.4, 60, 20).ShouldBe(5.0952, 1e-4);
    }

    [Fact]
    public void A_thin_wire_by_hand()
    {
        // 6 mm, 80 °C in 30 °C, film at 55 °C: Ra = 669.2, Pr = 0.6998, Nu = 2.400, times 0.02841/0.006.
        NaturalConvection.HorizontalCylinder(6e-3, 80, 30).ShouldBe(11.3624, 1e-4);
    }

    [Fact]
    public void A_lid_by_hand_on_both_sides_of_where_the_air_begins_to_tumble()
    {
        // Ra = 3.078e6: Nu = 0.54 × 41.89; Ra = 3.848e8: Nu = 0.15 × 727.4.
        NaturalConvection.HotPlateFacingUp(0.1, 60, 20).ShouldBe(6.1675, 1e-4);
        NaturalConvection.HotPlateFacingUp(0.5, 60, 20).ShouldBe(5.9498, 1e-4);
    }
}
