using WireCheck.Faults.Coordination;
using static WireCheck.Tests.Faults.Coordination.CoordinationParts;

namespace WireCheck.Tests.Faults.Coordination;

public sealed class GuardMarginTests
{
    /// <summary>
    /// By hand: a blade of 30 A lets 180² · 0.1 = 3240 A² s through at most; 10 AWG in PVC of 105 °C, 5.26 mm² and k = 87.4,
    /// stands (87.4 · 5.26)² = 211,600 A² s: 65 times as much wherever heat has no time to leave.
    /// </summary>
    [Fact]
    public void In_a_hard_short_the_margin_is_the_ratio_of_the_joule_integrals()
    {
        TimeCurrentBand blade = Band("part: blade, rating: 30 A");
        ConductorDamage wire = Damage(Conductor("10 AWG"));
        (wire.Seconds(5000) / blade.Slowest(5000)).ShouldBe(65.3, 0.3);
    }

    [Fact]
    public void A_fuse_of_half_the_ampacity_guards_every_short_circuit()
    {
        GuardComparison compared = Compare("part: blade, rating: 30 A", "10 AWG");
        compared.ShortCircuit.ShouldNotBeNull().Ratio.ShouldBeGreaterThan(1);
    }

    /// <summary>A strip fuse of 300 A lets 10 AWG burn: at 600 % it may take 1 s, 3.24 MA² s against 0.21.</summary>
    [Fact]
    public void A_fuse_far_above_the_wire_does_not_guard_it()
    {
        GuardComparison compared = Compare("part: strip-sf51, rating: 300 A", "10 AWG");
        GuardMargin worst = compared.Worst.ShouldNotBeNull();
        worst.Ratio.ShouldBe(0);
        worst.Amps.ShouldBe(405, 1, "the current just below its first gate of 135 %");
        compared.ShortCircuit.ShouldNotBeNull().Ratio.ShouldBeLessThan(0.1);
    }

    [Fact]
    public void Where_no_current_of_the_range_hurts_the_wire_there_is_no_margin()
    {
        GuardComparison compared = GuardComparison.Of([Band("part: blade, rating: 10 A")], Damage(Conductor("10 AWG")), 60, 65);
        compared.Worst.ShouldBeNull();
        compared.ShortCircuit.ShouldBeNull();
    }

    [Fact]
    public void A_range_that_ends_below_the_ampacity_is_no_range()
    {
        GuardComparison compared = GuardComparison.Of([Band("part: blade, rating: 10 A")], Damage(Conductor("10 AWG")), 60, 20);
        compared.Worst.ShouldBeNull();
    }

    /// <summary>The device carries what both conductors carry: each takes half, so the fuse sees twice the current.</summary>
    [Fact]
    public void Of_two_conductors_side_by_side_each_has_half_the_current_of_the_fuse()
    {
        TimeCurrentBand band = Band("part: blade, rating: 30 A");
        ConductorDamage wire = Damage(Conductor("14 AWG"));
        GuardMargin half = GuardComparison.Of([band], wire, 35, 2000, 0.5).ShortCircuit.ShouldNotBeNull();
        GuardMargin whole = GuardComparison.Of([band], wire, 35, 2000).ShortCircuit.ShouldNotBeNull();
        half.Ratio.ShouldBeGreaterThanOrEqualTo(whole.Ratio);
        half.ClearingSeconds.ShouldBe(band.Slowest(half.Amps * 2), 1e-9);
    }

    /// <summary>No current between the corners that are looked at is worse by more than the curves bend.</summary>
    [Theory]
    [InlineData("part: blade, rating: 15 A", "16 AWG")]
    [InlineData("part: maxi-blade, rating: 60 A", "10 AWG")]
    [InlineData("part: strip-sf30, rating: 100 A", "6 AWG")]
    [InlineData("part: class-t, rating: 200 A", "2 AWG")]
    public void A_fine_search_finds_hardly_a_worse_current(string fuse, string size)
    {
        TimeCurrentBand band = Band(fuse);
        ConductorDamage wire = Damage(Conductor(size));
        double from = wire.ShortCircuitAmps();
        GuardMargin found = GuardComparison.Of([band], wire, from, 10000).ShortCircuit.ShouldNotBeNull();
        for (double amps = from; amps < 10000; amps *= 1.001)
        {
            (wire.Seconds(amps) / band.Slowest(amps)).ShouldBeGreaterThanOrEqualTo(found.Ratio * 0.97, $"{amps} A");
        }
    }

    [Fact]
    public void A_larger_fuse_never_has_the_larger_margin_and_a_thicker_wire_never_the_smaller()
    {
        double last = double.PositiveInfinity;
        foreach (int rating in new[] { 10, 15, 20, 25, 30 })
        {
            double ratio = Compare($"class: blade, rating: {rating} A, volts: 32 V", "14 AWG").ShortCircuit.ShouldNotBeNull().Ratio;
            ratio.ShouldBeLessThanOrEqualTo(last);
            last = ratio;
        }

        last = 0;
        foreach (string size in new[] { "20 AWG", "18 AWG", "16 AWG", "14 AWG", "12 AWG" })
        {
            double ratio = Compare("part: blade, rating: 15 A", size).ShortCircuit.ShouldNotBeNull().Ratio;
            ratio.ShouldBeGreaterThanOrEqualTo(last);
            last = ratio;
        }
    }

    /// <summary>A breaker needs 50 ms for any short; a class T before it clears a hard one sooner, and the wire is guarded by the two together.</summary>
    [Fact]
    public void Of_devices_in_series_the_one_that_clears_first_counts()
    {
        TimeCurrentBand breaker = TimeCurrentBand.Of(Breaker("part: breaker-hydraulic-dc, rating: 5 A"), Tables, 20, 20);
        TimeCurrentBand main = Band("part: class-t, rating: 60 A");
        ConductorDamage wire = Damage(Conductor("14 AWG"));
        GuardMargin alone = GuardComparison.Of([breaker], wire, 35, 6000).ShortCircuit.ShouldNotBeNull();
        GuardMargin both = GuardComparison.Of([breaker, main], wire, 35, 6000).ShortCircuit.ShouldNotBeNull();
        alone.Ratio.ShouldBeLessThan(1);
        alone.Amps.ShouldBe(6000, 1e-6);
        both.Ratio.ShouldBeGreaterThan(1);
        Math.Min(breaker.Slowest(both.Amps), main.Slowest(both.Amps)).ShouldBe(both.ClearingSeconds, 1e-9);
    }

    [Fact]
    public void The_lowest_current_of_a_short_circuit_hurts_in_five_seconds()
    {
        ConductorDamage wire = Damage(Conductor("6 AWG"));
        wire.Seconds(wire.ShortCircuitAmps()).ShouldBe(5, 1e-5);
    }

    private static GuardComparison Compare(string fuse, string size)
    {
        ConductorDamage wire = Damage(Conductor(size));
        double ampacity = Math.Sqrt(wire.Heating.Loss * 75 / wire.Heating.Ohms(105));
        return GuardComparison.Of([Band(fuse)], wire, ampacity, 5000);
    }
}
