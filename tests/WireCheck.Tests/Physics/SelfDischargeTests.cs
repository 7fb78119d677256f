using WireCheck.Physics;

namespace WireCheck.Tests.Physics;

/// <summary>How long a charge lasts on the shelf.</summary>
public sealed class SelfDischargeTests
{
    private const double Day = 86400;

    /// <summary>Figures that builders pass on; plain arithmetic.</summary>
    [Theory]
    [InlineData(5, 833)]
    [InlineData(15, 278)]
    [InlineData(50, 83)]
    [InlineData(150, 28)]
    public void A_hundred_ampere_hours_last_as_long_as_the_trade_says(double milliamps, double days)
    {
        double seconds = SelfDischarge.Lasts(100 * 3600, milliamps / 1000, 0, 100 * 3600);

        Math.Round(seconds / Day).ShouldBe(days);
    }

    /// <summary>10 mA takes 7.2 Ah in 30 days: the figure given for a tracker on the cells; published.</summary>
    [Fact]
    public void A_tracker_of_ten_milliamperes_takes_seven_ampere_hours_a_month()
    {
        SelfDischarge.Lasts(7.2 * 3600, 0.010, 0, 100 * 3600).ShouldBe(30 * Day, 1);
    }

    [Fact]
    public void Three_per_cent_a_month_alone_empties_a_bank_in_33_months()
    {
        double share = 0.03 / (30 * Day);

        SelfDischarge.Lasts(360_000, 0, share, 360_000).ShouldBe(30 * Day / 0.03, 1);
    }

    /// <summary>Self-discharge doubles about every 10 °C; published in pack sheets.</summary>
    [Theory]
    [InlineData(25, 1)]
    [InlineData(35, 2)]
    [InlineData(45, 4)]
    [InlineData(15, 0.5)]
    public void Self_discharge_doubles_with_ten_degrees(double celsius, double factor)
    {
        SelfDischarge.Factor(celsius, 25, 10).ShouldBe(factor, 1e-12);
    }

    [Fact]
    public void Twice_the_losses_halve_the_time_and_no_loss_gives_no_end()
    {
        double once = SelfDischarge.Lasts(1000, 0.01, 1e-8, 500_000);

        SelfDischarge.Lasts(1000, 0.02, 2e-8, 500_000).ShouldBe(once / 2, 1e-9 * once);
        SelfDischarge.Lasts(1000, 0, 0, 500_000).ShouldBe(double.PositiveInfinity);
    }
}
