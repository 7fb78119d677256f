using WireCheck.Physics;

namespace WireCheck.Tests.Physics;

/// <summary>A capacitor charged through resistance and inductance: cases worked by hand and what must hold for any.</summary>
public sealed class SeriesChargeTests
{
    // Steps in the integration of the swinging current below.
    private const int Steps = 200_000;

    [Fact]
    public void Without_inductance_12_8_V_into_20_milliohms_begin_with_640_A() =>
        SeriesCharge.Peak(12.8, 0.020, 0, 4e-3).ShouldBe(640, 1e-9);

    [Fact]
    public void Critically_damped_the_peak_is_2_over_e_of_V_over_R()
    {
        // R = 2 √(L/C) = 2 √(1 µH/4 mF): i = (V/L) t e^(−t/τ), largest at τ = 2 L/R.
        double ohms = 2 * Math.Sqrt(1e-6 / 4e-3);
        SeriesCharge.DampingRatio(ohms, 1e-6, 4e-3).ShouldBe(1, 1e-12);
        SeriesCharge.Peak(12.8, ohms, 1e-6, 4e-3).ShouldBe(12.8 / ohms * 2 / Math.E, 1e-6);
        SeriesCharge.SecondsToPeak(ohms, 1e-6, 4e-3).ShouldBe(2 * 1e-6 / ohms, 1e-12);
    }

    [Fact]
    public void At_half_of_critical_damping_the_peak_comes_a_third_of_half_a_turn_in()
    {
        // ζ = 1/2: arccos(1/2) = π/3, √(1 − ζ²) = √3/2, so the peak is V √(C/L) e^(−π/(3√3)).
        double ohms = Math.Sqrt(1e-6 / 4e-3);
        double expected = 12.8 * Math.Sqrt(4e-3 / 1e-6) * Math.Exp(-Math.PI / (3 * Math.Sqrt(3)));
        SeriesCharge.Peak(12.8, ohms, 1e-6, 4e-3).ShouldBe(expected, 1e-9 * expected);
    }

    [Fact]
    public void At_twice_critical_damping_the_peak_follows_from_two_exponentials()
    {
        // ζ = 2: the decays are ω₀ (2 ∓ √3); ω₀ t_peak = ln((2 + √3)/(2 − √3))/(2 √3).
        double ohms = 4 * Math.Sqrt(1e-6 / 4e-3);
        double slow = 2 - Math.Sqrt(3);
        double fast = 2 + Math.Sqrt(3);
        double angle = Math.Log(fast / slow) / (2 * Math.Sqrt(3));
        double expected = 12.8 * Math.Sqrt(4e-3 / 1e-6) * (Math.Exp(-slow * angle) - Math.Exp(-fast * angle)) / (2 * Math.Sqrt(3));
        SeriesCharge.Peak(12.8, ohms, 1e-6, 4e-3).ShouldBe(expected, 1e-9 * expected);
    }

    [Fact]
    public void The_peak_passes_smoothly_through_critical_damping()
    {
        double critical = 2 * Math.Sqrt(1e-6 / 4e-3);
        double before = SeriesCharge.Peak(12.8, critical * (1 - 1e-5), 1e-6, 4e-3);
        double at = SeriesCharge.Peak(12.8, critical, 1e-6, 4e-3);
        double after = SeriesCharge.Peak(12.8, critical * (1 + 1e-5), 1e-6, 4e-3);
        (before - at).ShouldBe(at - after, 1e-4 * (before - after));
    }

    [Fact]
    public void More_resistance_and_more_inductance_never_raise_the_peak_and_more_volts_raise_it_in_proportion()
    {
        Random random = new(7);
        for (int i = 0; i < 500; i++)
        {
            double ohms = Spread(random, 1e-3, 1);
            double henries = Spread(random, 1e-8, 1e-5);
            double farads = Spread(random, 1e-4, 5e-2);
            double peak = SeriesCharge.Peak(13.3, ohms, henries, farads);
            SeriesCharge.Peak(13.3, ohms * 1.01, henries, farads).ShouldBeLessThan(peak);
            SeriesCharge.Peak(13.3, ohms, henries * 1.01, farads).ShouldBeLessThan(peak);
            SeriesCharge.Peak(26.6, ohms, henries, farads).ShouldBe(2 * peak, 1e-9 * peak);
            peak.ShouldBeLessThanOrEqualTo(Math.Min(13.3 / ohms, 13.3 * Math.Sqrt(farads / henries)) * (1 + 1e-12));
        }
    }

    [Theory]
    [InlineData(0.005)]
    [InlineData(0.0316)]
    [InlineData(0.2)]
    public void The_resistance_burns_as_much_as_the_capacitor_takes(double ohms)
    {
        // L i' = V − R i − q/C, q' = i, stepped with the fourth-order rule of Runge and Kutta until the current has died away.
        (double volts, double henries, double farads) = (13.3, 1e-6, 4e-3);
        double end = 40 * Math.Max(2 * henries / ohms, ohms * farads);
        double step = end / Steps;
        (double amps, double charge, double burnt) = (0, 0, 0);
        for (int i = 0; i < Steps; i++)
        {
            double Slope(double a, double q) => (volts - (ohms * a) - (q / farads)) / henries;
            double k1 = Slope(amps, charge);
            double k2 = Slope(amps + (step / 2 * k1), charge + (step / 2 * amps));
            double k3 = Slope(amps + (step / 2 * k2), charge + (step / 2 * (amps + (step / 2 * k1))));
            double k4 = Slope(amps + (step * k3), charge + (step * (amps + (step / 2 * k2))));
            double next = amps + (step / 6 * (k1 + (2 * k2) + (2 * k3) + k4));
            charge += step * (amps + (step / 6 * (k1 + k2 + k3)));
            burnt += step / 2 * ohms * ((amps * amps) + (next * next));
            amps = next;
        }

        double taken = CapacitorCharge.Energy(volts, farads);
        burnt.ShouldBe(taken, 1e-4 * taken);
        (ohms * SeriesCharge.JouleIntegral(volts, ohms, farads)).ShouldBe(taken, 1e-12);
    }

    [Fact]
    public void A_precharge_takes_three_time_constants_to_95_per_cent_and_never_gets_past_what_is_drawn_behind_it()
    {
        CapacitorCharge.SecondsTo(47, 4e-3, 13.3, 0.95 * 13.3).ShouldBe(47 * 4e-3 * Math.Log(20), 1e-9);

        // 25 Ω with 0.5 A drawn behind leave 13.3 − 12.5 = 0.8 V.
        CapacitorCharge.SecondsTo(25, 4e-3, 13.3 - (25 * 0.5), 0.95 * 13.3).ShouldBe(double.PositiveInfinity);
    }

    [Theory]
    [InlineData(0, 1e-6, 1e-3)]
    [InlineData(1, -1e-6, 1e-3)]
    [InlineData(1, 1e-6, 0)]
    public void A_loop_that_cannot_be_is_refused(double ohms, double henries, double farads) =>
        Should.Throw<ArgumentOutOfRangeException>(() => SeriesCharge.Peak(12, ohms, henries, farads));

    private static double Spread(Random random, double low, double high) => low * Math.Pow(high / low, random.NextDouble());
}
