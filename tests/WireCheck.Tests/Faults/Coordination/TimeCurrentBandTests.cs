using WireCheck.Description.Kinds;
using WireCheck.Faults.Coordination;
using WireCheck.Knowledge;
using static WireCheck.Tests.Faults.Coordination.CoordinationParts;

namespace WireCheck.Tests.Faults.Coordination;

public sealed class TimeCurrentBandTests
{
    public static TheoryData<string> Classes => [.. Tables.Fuses.Names];

    [Fact]
    public void At_a_gate_the_band_is_the_gate()
    {
        TimeCurrentBand band = Band("part: maxi-blade, rating: 40 A");
        band.Fastest(80).ShouldBe(2, 1e-9);
        band.Slowest(80).ShouldBe(50, 1e-9);
        band.Slowest(240).ShouldBe(1, 1e-9);
    }

    /// <summary>By hand: 20 A maxi at 53 A lies between 135 % (1800 s) and 200 % (50 s); ln(53/27)/ln(40/27) = 1.716, past the gate.</summary>
    [Fact]
    public void Between_two_gates_the_edge_is_straight_on_logarithmic_paper()
    {
        TimeCurrentBand band = Band("part: maxi-blade, rating: 20 A");

        // Halfway between 27 A and 40 A on the paper is √(27·40) = 32.863 A; halfway between 1800 s and 50 s is 300 s.
        band.Slowest(Math.Sqrt(27 * 40)).ShouldBe(300, 1e-6);
        band.Fastest(Math.Sqrt(27 * 40)).ShouldBe(Math.Sqrt(60 * 2), 1e-6);
    }

    [Fact]
    public void Below_the_lowest_gate_nothing_promises_that_it_opens()
    {
        TimeCurrentBand band = Band("part: blade, rating: 10 A");
        band.Slowest(13.4).ShouldBe(double.PositiveInfinity);
        band.Fastest(10.9).ShouldBe(double.PositiveInfinity);
        band.Slowest(13.5).ShouldBe(600, 1e-6);
    }

    /// <summary>600 % of 10 A in 0.1 s is 360 A² s; at 600 A that is 1 ms.</summary>
    [Fact]
    public void Beyond_the_last_gate_an_element_keeps_its_joule_integral()
    {
        TimeCurrentBand band = Band("part: blade, rating: 10 A");
        band.Slowest(600).ShouldBe(360.0 / (600 * 600), 1e-9);
        band.ClearingEnergy(1000).ShouldBe(360, 1e-6);
    }

    [Fact]
    public void Beyond_the_last_gate_a_latch_keeps_its_time()
    {
        TimeCurrentBand band = TimeCurrentBand.Of(Breaker("part: breaker-hydraulic-dc, rating: 100 A"), Tables, 20, 20);
        band.Slowest(1000).ShouldBe(0.05, 1e-9);
        band.Slowest(5000).ShouldBe(0.05, 1e-9);
    }

    /// <summary>A 10 A blade melts at 115 A² s: at 200 A not before 2.875 ms, and at its last gate not before 20 ms.</summary>
    [Fact]
    public void A_known_melting_energy_decides_the_fastest_edge_at_short_times()
    {
        TimeCurrentBand band = Band("part: blade, rating: 10 A");
        band.MeltingEnergy.ShouldBe(115);
        band.Fastest(60).ShouldBe(0.02, 1e-9);
        band.Fastest(61).ShouldBe(0.02, 1e-9);
        band.Fastest(200).ShouldBe(115.0 / 40000, 1e-9);
    }

    /// <summary>SF51: 0.1 s at 600 % of 100 A is 36,000 A² s.</summary>
    [Fact]
    public void Where_none_is_known_the_fastest_gate_gives_the_melting_energy() =>
        Band("part: strip-sf51, rating: 100 A", 20, 23).MeltingEnergy.ShouldBe(36000, 1e-6);

    [Fact]
    public void The_description_s_own_curve_and_energy_win()
    {
        TimeCurrentBand band = Band(
            "part: blade, rating: 10 A, melting_energy: 50 A²s, curve: [{at: 600 %, fastest: 40 ms, slowest: 60 ms}, {at: 200 %, fastest: 1 s, slowest: 2 s}]");
        band.Given.ShouldBeTrue();
        band.Slowest(20).ShouldBe(2, 1e-9);
        band.Slowest(60).ShouldBe(0.06, 1e-9);
        band.Slowest(19).ShouldBe(double.PositiveInfinity);
        band.MeltingEnergy.ShouldBe(50);
    }

    [Fact]
    public void An_edge_that_the_own_curve_leaves_out_is_the_class_s() =>
        Band("part: blade, rating: 10 A, curve: [{at: 200 %, slowest: 2 s}]").Fastest(20).ShouldBe(0.15, 1e-9);

    [Fact]
    public void A_curve_whose_gates_contradict_each_other_is_read_on_the_careful_side()
    {
        TimeCurrentBand band = Band(
            "part: blade, rating: 10 A, curve: [{at: 200 %, fastest: 1 s, slowest: 2 s}, {at: 400 %, fastest: 1.5 s, slowest: 3 s}]");
        band.Slowest(20).ShouldBe(3);
        band.Fastest(40).ShouldBe(1);
    }

    /// <summary>A maxi blade carries 85 % at 65 °C: the slow edge stays at its cold rating, the fast one moves to 0.85 of the current.</summary>
    [Fact]
    public void Hot_air_moves_only_the_fastest_edge_and_cold_air_only_the_slowest()
    {
        TimeCurrentBand band = Band("part: maxi-blade, rating: 40 A", coldest: 0, hottest: 65);
        band.Slowest(80).ShouldBe(50, 1e-9);
        band.Fastest(68).ShouldBe(2, 1e-9);
    }

    [Fact]
    public void It_breaks_what_its_class_does_at_that_voltage_and_nothing_above_its_own()
    {
        TimeCurrentBand cube = Band("part: terminal-cube, rating: 100 A");
        cube.BreakingAt(14).ShouldBe(10000);
        cube.BreakingAt(29.2).ShouldBe(5000);
        cube.BreakingAt(58.4).ShouldBeNull();
        Band("part: terminal-cube, rating: 100 A, breaking: 3 kA, volts: 32 V").BreakingAt(29.2).ShouldBe(3000);
        Band("part: terminal-cube, rating: 100 A, breaking: 3 kA, volts: 32 V").BreakingAt(40).ShouldBeNull();
    }

    /// <summary>A holder of 32 V limits a fuse of 58 V.</summary>
    [Fact]
    public void A_holder_of_lower_voltage_limits_it() =>
        Band("part: blade-58v, rating: 10 A, holder: {rating: 30 A, volts: 32 V}").BreakingAt(48).ShouldBeNull();

    [Theory]
    [MemberData(nameof(Classes))]
    public void A_larger_current_never_takes_longer_and_melting_never_comes_after_clearing(string name)
    {
        FuseClass known = Tables.Fuses[name];
        foreach (double rating in known.Ratings)
        {
            TimeCurrentBand band = OfClass(known, rating);
            double lastFast = double.PositiveInfinity;
            double lastSlow = double.PositiveInfinity;
            for (double multiple = 0.5; multiple < 300; multiple *= 1.03)
            {
                double fast = band.Fastest(rating * multiple);
                double slow = band.Slowest(rating * multiple);
                fast.ShouldBeLessThanOrEqualTo(lastFast);
                slow.ShouldBeLessThanOrEqualTo(lastSlow);
                fast.ShouldBeLessThanOrEqualTo(slow, $"{name} {rating} A at {multiple}");
                (lastFast, lastSlow) = (fast, slow);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Classes))]
    public void A_larger_fuse_of_a_class_never_clears_sooner(string name)
    {
        FuseClass known = Tables.Fuses[name];
        for (int i = 1; i < known.Ratings.Count; i++)
        {
            TimeCurrentBand small = OfClass(known, known.Ratings[i - 1]);
            TimeCurrentBand large = OfClass(known, known.Ratings[i]);
            for (double amps = 1; amps < 20000; amps *= 1.1)
            {
                small.Slowest(amps).ShouldBeLessThanOrEqualTo(large.Slowest(amps) * (1 + 1e-9), $"{name} {known.Ratings[i]} A at {amps}");
            }
        }
    }

    private static TimeCurrentBand OfClass(FuseClass known, double rating)
    {
        string values = FormattableString.Invariant($"class: {known.Name}, rating: {rating} A, volts: {known.Volts} V");
        return TimeCurrentBand.Of(known.Trips ? Breaker(values + ", reset: manual") : Fuse(values), Tables, 20, 60);
    }
}
