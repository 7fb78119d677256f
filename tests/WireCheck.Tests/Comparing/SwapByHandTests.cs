using WireCheck.Comparing;
using WireCheck.Rules;

namespace WireCheck.Tests.Comparing;

/// <summary>
/// A swap from 500 W to 1000 W worked by hand. At the worst corner (empty, aged): four cells of 3.15 V give 12.6 V behind
/// 4 × 0.5 mΩ × 1.5 = 3.0 mΩ; three links 0.3 mΩ; the fuse, hot, 0.5 mΩ × 1.4 = 0.7 mΩ; 1.0 m of 8 AWG (8.366 mm², ASTM B258;
/// 1.7241e-8 Ωm × 1.02 for stranding) at 75 °C: 2.102 mΩ × (1 + 0.00393 × 55) = 2.556 mΩ; six joints 0.6 mΩ. Together R = 7.156 mΩ.
/// </summary>
public sealed class SwapByHandTests
{
    private const double Volts = 12.6;
    private const double Ohms = 7.156e-3;
    private const double Efficiency = 0.9;

    /// <summary>8 AWG with insulation of 105 °C: 33 CFR 183.425, Table 5.</summary>
    private const double Ampacity = 80;

    private readonly BoxDifference _difference = SwapBoxes.Compare(SwapBoxes.Small, SwapBoxes.Large);

    [Theory]
    [InlineData("old", 500, 45.25)]
    [InlineData("new", 1000, 93.1)]
    public void The_current_is_that_of_a_constant_power_behind_a_resistance(string box, double watts, double byHand)
    {
        // P / η = V I and V = E - R I: I = (E - √(E² - 4 R P / η)) / 2 R.
        double amps = (Volts - Math.Sqrt((Volts * Volts) - (4 * Ohms * watts / Efficiency))) / (2 * Ohms);
        amps.ShouldBe(byHand, 0.3);

        MovedNumber current = _difference.Numbers.Single(n => n.Id == "w2" && n.Fact.Name == "current");
        (box == "old" ? current.Old : current.New).ShouldBe(amps, 0.002 * amps);
    }

    [Fact]
    public void The_wires_give_way_at_the_power_that_draws_their_ampacity()
    {
        // 80 A leave 12.6 - 80 × 0.007156 = 12.03 V at the inverter: 962 W in, 866 W out, 73 % of the way from 500 to 1000 W.
        double share = ((Ampacity * (Volts - (Ampacity * Ohms)) * Efficiency) - 500) / 500;
        share.ShouldBe(0.732, 0.002);

        Break wire = _difference.Breaks.Single(b => b.Finding is { Rule: "conductor-over-ampacity", Part: "w2" });

        // It is told at the step of a sixteenth at which it is first found.
        wire.At.ShouldNotBeNull().ShouldBeInRange(share, share + (1.0 / 16));
        wire.Used.ShouldNotBeNull().ShouldBe(93.1 / Ampacity, 0.005);
        wire.Finding.Severity.ShouldBe(Severity.Danger);
    }

    [Fact]
    public void What_breaks_first_is_the_limit_that_is_passed_at_the_least_power()
    {
        // The rule asks what the inverter takes at its cut-off of 10.2 V: 80 A are 80 × 10.2 × 0.9 = 734 W, 46.9 % of the way.
        double share = ((Ampacity * 10.2 * Efficiency) - 500) / 500;

        Break first = _difference.Breaks[0];

        first.Finding.Rule.ShouldBe("inverter-outgrows-the-box");
        first.At.ShouldNotBeNull().ShouldBeInRange(share, share + (1.0 / 256));
        _difference.Breaks.Select(b => b.At).ShouldBeInOrder();
    }

    [Fact]
    public void The_one_power_that_grew_is_named()
    {
        _difference.Growth.Power.ShouldBe(new GrowingNumber("inverter", "inverter", "power", 500, 1000, "W"));
        _difference.IsWorse(Severity.Danger).ShouldBeTrue();
    }
}
