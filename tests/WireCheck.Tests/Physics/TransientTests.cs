using WireCheck.Physics;

namespace WireCheck.Tests.Physics;

/// <summary>How a warm body follows its heat.</summary>
public sealed class TransientTests
{
    [Fact]
    public void Capacity_over_loss_is_the_time_constant()
    {
        // 2.5 mm² of copper, 3.45 J/(cm³ K), with its PVC: about 22 J/(K m) over 0.16 W/(K m) is two to three minutes.
        Transient.Constant(22, 0.16).ShouldBeInRange(120, 180);
    }

    [Fact]
    public void With_a_linear_loss_the_integrator_meets_the_closed_form()
    {
        double constant = Transient.Constant(20, 0.2);

        foreach (double seconds in new[] { 0, 1, 50, 100, 1000 })
        {
            // C dT/dt = 4 W − 0.2 W/K (T − 25): T = 25 + 20 (1 − e^(−t/τ)).
            double closed = 25 + (20 * (1 - Math.Exp(-seconds / constant)));
            Transient.Integrate(t => 4 - (0.2 * (t - 25)), 20, 25, seconds, constant).ShouldBe(closed, 1e-5);
        }
    }

    [Fact]
    public void A_duty_in_short_periods_counts_by_its_share_and_in_long_ones_in_full()
    {
        Transient.DutyPeak(0.3, 1, 1e6).ShouldBe(0.3, 1e-6);
        Transient.DutyPeak(300, 1000, 1).ShouldBe(1, 1e-9);
        Transient.DutyPeak(5, 10, 20).ShouldBe((1 - Math.Exp(-0.25)) / (1 - Math.Exp(-0.5)), 1e-12);
        Transient.DutyPeak(7, 7, 20).ShouldBe(1, 1e-12);
    }
}
