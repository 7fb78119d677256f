using WireCheck.Physics;

namespace WireCheck.Tests.Physics;

/// <summary>The open-circuit voltage of a panel by temperature.</summary>
public sealed class PanelTemperatureTests
{
    [Fact]
    public void Ten_degrees_of_frost_add_a_tenth_and_a_half_per_cent()
    {
        // 0.3 % for each of 35 K: 21.6 V × 1.105 = 23.868 V.
        PanelTemperature.OpenCircuitVolts(21.6, 0.003, -10).ShouldBe(23.868, 1e-12);
    }

    [Fact]
    public void At_twenty_five_degrees_it_is_what_is_printed() =>
        PanelTemperature.OpenCircuitVolts(43.2, 0.003, 25).ShouldBe(43.2);

    [Fact]
    public void Colder_never_lowers_it_and_it_scales_with_the_panel()
    {
        for (double celsius = -40; celsius < 70; celsius += 5)
        {
            double volts = PanelTemperature.OpenCircuitVolts(20, 0.0028, celsius);
            volts.ShouldBeGreaterThanOrEqualTo(PanelTemperature.OpenCircuitVolts(20, 0.0028, celsius + 5));
            PanelTemperature.OpenCircuitVolts(60, 0.0028, celsius).ShouldBe(3 * volts, 1e-9);
        }
    }

    [Fact]
    public void A_negative_voltage_or_rise_is_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => PanelTemperature.OpenCircuitVolts(-1, 0.003, 0));
        Should.Throw<ArgumentOutOfRangeException>(() => PanelTemperature.OpenCircuitVolts(20, -0.003, 0));
    }
}
