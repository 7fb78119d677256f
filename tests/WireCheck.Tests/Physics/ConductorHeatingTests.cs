using WireCheck.Physics;

namespace WireCheck.Tests.Physics;

/// <summary>The heating equation: its closed forms at both ends, a step-by-step integration, and its properties.</summary>
public sealed class ConductorHeatingTests
{
    private const double Zero = 234.5;

    /// <summary>10 mm² of copper in air of 30 °C that carries 90 A at 105 °C.</summary>
    private static ConductorHeating Wire(double loss) => new(1.7241e-3, Zero, 34.5, loss, 30);

    private static double LossAt90 => ConductorHeating.LossAtAmpacity(90, 1.7241e-3 * (Zero + 105) / (Zero + 20), 105, 30);

    /// <summary>By hand: R(105 °C) = 1.7241 mΩ · 339.5/254.5 = 2.2999 mΩ/m; 90² · 2.2999 mΩ/75 K = 0.24839 W/(K m).</summary>
    [Fact]
    public void The_loss_at_the_ampacity_is_what_its_heat_needs() => LossAt90.ShouldBe(0.24839, 1e-5);

    [Fact]
    public void At_the_ampacity_it_settles_at_its_rating_and_stays_there()
    {
        Wire(LossAt90).SteadyCelsius(90).ShouldBe(105, 1e-9);
        Wire(LossAt90).Celsius(105, 90, 3600).ShouldBe(105, 1e-9);
        Wire(LossAt90).Seconds(105, 106, 90).ShouldBe(double.PositiveInfinity);
    }

    /// <summary>One end: without loss it is k² S² = I² t, here k = 225.67 √ln(394.5/339.5) = 87.44 for copper from 105 to 160 °C; 10 mm² at 1000 A: 0.7646 s.</summary>
    [Fact]
    public void Without_loss_it_is_the_adiabatic_equation()
    {
        double k = ShortCircuitHeating.Constant(3.45e6, Zero, 17.241e-9, 105, 160);
        double adiabatic = ShortCircuitHeating.Seconds(k, 10e-6, 1000);
        Wire(0).Seconds(105, 160, 1000).ShouldBe(adiabatic, 1e-9);
        adiabatic.ShouldBe(0.7646, 0.0001);
    }

    [Fact]
    public void At_short_times_the_loss_makes_no_difference()
    {
        double adiabatic = Wire(0).Seconds(105, 160, 20000);
        (Wire(LossAt90).Seconds(105, 160, 20000) / adiabatic).ShouldBe(1, 1e-4);
    }

    /// <summary>The other end: after many time constants the balance I² R(T) = G (T − Ta) holds.</summary>
    [Fact]
    public void At_long_times_heat_made_and_lost_are_in_balance()
    {
        ConductorHeating wire = Wire(LossAt90);
        double settled = wire.Celsius(30, 70, 1e5);
        settled.ShouldBe(wire.SteadyCelsius(70), 1e-6);
        (70 * 70 * wire.Ohms(settled)).ShouldBe(wire.Loss * (settled - 30), 1e-6);
    }

    [Fact]
    public void A_current_that_heats_faster_than_the_air_can_take_settles_nowhere() =>
        Wire(LossAt90).SteadyCelsius(300).ShouldBe(double.PositiveInfinity);

    /// <summary>Against small steps of the equation itself, which know nothing of the closed form.</summary>
    [Theory]
    [InlineData(95)]
    [InlineData(120)]
    [InlineData(191.5)]
    [InlineData(400)]
    public void The_closed_form_is_what_small_steps_give(double amps)
    {
        ConductorHeating wire = Wire(LossAt90);
        double celsius = 105;
        const double Step = 1e-3;
        for (int i = 0; i < 20000; i++)
        {
            double middle = celsius + (Step / 2 * Rate(wire, amps, celsius));
            celsius += Step * Rate(wire, amps, middle);
        }

        wire.Celsius(105, amps, 20).ShouldBe(celsius, 1e-6 * celsius);
        wire.Seconds(105, celsius, amps).ShouldBe(20, 1e-4);
    }

    /// <summary>Where loss and rising resistance cancel the rate is constant: 191.48 A, found from I² R20/(β + 20) = G.</summary>
    [Fact]
    public void Where_rise_of_resistance_and_loss_cancel_it_heats_evenly()
    {
        ConductorHeating wire = Wire(LossAt90);
        double amps = Math.Sqrt(wire.Loss * (Zero + 20) / wire.OhmsAt20);
        double half = wire.Seconds(105, 130, amps);
        wire.Seconds(105, 155, amps).ShouldBe(2 * half, 1e-6 * half);
        wire.Celsius(105, amps, half).ShouldBe(130, 1e-6);
    }

    [Fact]
    public void More_current_reaches_a_temperature_sooner_and_more_loss_later()
    {
        double last = double.PositiveInfinity;
        for (double amps = 80; amps < 20000; amps *= 1.05)
        {
            double seconds = Wire(LossAt90).Seconds(105, 160, amps);
            seconds.ShouldBeLessThanOrEqualTo(last);
            seconds.ShouldBeGreaterThanOrEqualTo(Wire(0).Seconds(105, 160, amps) * (1 - 1e-9));
            last = seconds;
        }
    }

    [Fact]
    public void What_is_hot_enough_already_takes_no_time() => Wire(0).Seconds(160, 160, 10).ShouldBe(0);

    private static double Rate(ConductorHeating wire, double amps, double celsius) =>
        ((amps * amps * wire.Ohms(celsius)) - (wire.Loss * (celsius - wire.Ambient))) / wire.Heat;
}
