using WireCheck.Physics;

namespace WireCheck.Tests.Physics;

/// <summary>Heating in spells: the closed form by hand, its two ends, its order.</summary>
public sealed class CyclicHeatingTests
{
    [Fact]
    public void Three_minutes_of_ten_by_hand()
    {
        // A wire of τ = 5 min, on for 3 min of 10: 1 − e^−0.6 = 0.4512, 1 − e^−2 = 0.8647: 0.5218 of its steady rise at the end of each spell.
        CyclicHeating.Share(180, 0.3, 300).ShouldBe(0.5218, 1e-4);

        // One spell after another from cold air comes to the same: up by e^−0.6 to what the spell would reach, down by e^−1.4 in the pause.
        double rise = 0;
        for (int cycle = 0; cycle < 30; cycle++)
        {
            rise = 1 - ((1 - (rise * Math.Exp(-1.4))) * Math.Exp(-0.6));
        }

        CyclicHeating.Share(180, 0.3, 300).ShouldBe(rise, 1e-12);
    }

    [Fact]
    public void It_is_the_transient_of_the_heating_equation_laid_end_to_end()
    {
        // A conductor whose resistance does not rise (β far away) has the time constant C/G.
        ConductorHeating heating = new(1e-3, 1e9, heat: 20, loss: 0.2, ambient: 30);
        double steady = heating.SteadyCelsius(60) - 30;
        double celsius = 30;
        for (int cycle = 0; cycle < 100; cycle++)
        {
            celsius = heating.Celsius(heating.Celsius(celsius, 0, 45), 60, 15);
        }

        ((celsius - 30) / steady).ShouldBe(CyclicHeating.Share(15, 0.25, 20 / 0.2), 1e-6);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public void Short_spells_count_by_their_duty_and_long_ones_in_full(double duty)
    {
        CyclicHeating.Share(1e-9, duty, 300).ShouldBe(duty, 1e-12);
        CyclicHeating.Share(1, duty, 300).ShouldBe(duty, 0.002);
        CyclicHeating.Share(3600 * 24, duty, 300).ShouldBe(1, 1e-12);
        double before = duty;
        foreach (double seconds in new[] { 10.0, 60, 300, 1000, 3000 })
        {
            double share = CyclicHeating.Share(seconds, duty, 300);
            share.ShouldBeGreaterThan(before);
            share.ShouldBeLessThan(CyclicHeating.Share(seconds, duty, 200));
            before = share;
        }
    }

    [Fact]
    public void Never_on_heats_nothing_and_always_on_pauses_never()
    {
        CyclicHeating.Share(60, 0, 300).ShouldBe(0);
        CyclicHeating.Share(60, 1, 300).ShouldBe(1);
    }
}
