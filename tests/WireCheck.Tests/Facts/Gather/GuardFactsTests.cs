using WireCheck.Facts;

namespace WireCheck.Tests.Facts.Gather;

/// <summary>Facts of what guards a conductor, gathered from whole small boxes.</summary>
public sealed class GuardFactsTests
{
    /// <summary>18 AWG behind 60 A of class T: nothing promises that the fuse opens below 81 A, which hurts the wire long before.</summary>
    [Fact]
    public void A_thin_wire_behind_a_large_fuse_has_no_margin()
    {
        FactTable facts = GatheredBox.Facts(GatheredBox.Plain);
        facts.Number("w5", "worst_margin").ShouldBe(0);
        facts.Number("w5", "worst_margin_current").ShouldBe(81, 0.1);
        facts.Value("w5", "worst_margin_clearing_time").ShouldBeNull();
        facts.Number("w5", "short_margin").ShouldBeLessThan(1);
    }

    [Fact]
    public void A_wire_that_fits_its_fuse_is_guarded_in_every_short_circuit()
    {
        FactTable facts = GatheredBox.Facts(GatheredBox.Plain);
        facts.Number("w2", "short_margin").ShouldBeGreaterThan(1);
        facts.Number("w2", "short_margin_damage_time").ShouldBeLessThanOrEqualTo(5 * (1 + 1e-6));
    }

    /// <summary>A breaker of 5 A behind the main fuse of 60 A: in a hard short of the thin wire behind it the main fuse clears first.</summary>
    [Fact]
    public void A_device_before_the_guard_counts_where_it_clears_first()
    {
        FactTable facts = GatheredBox.Facts(GatheredBox.Plain
            .Replace("switches:", "breakers:\n  b1: {part: breaker-hydraulic-dc, rating: 5 A}\nswitches:", StringComparison.Ordinal)
            .Replace("w5: {from: main.2, to: master.1, size: 18 AWG, length: 200 mm}", "w5: {from: main.2, to: b1.1, size: 6 AWG, length: 50 mm}\n  w10: {from: b1.2, to: master.1, size: 20 AWG, length: 200 mm}", StringComparison.Ordinal));
        facts.Value("w10", "protection_id").ShouldNotBeNull().Value.ShouldBe("b1");
        facts.Value("w10", "short_margin_device").ShouldNotBeNull().Value.ShouldBe("b1");
        facts.Number("w10", "short_margin_clearing_time").ShouldBe(0.05, 1e-6);
        facts.Number("w10", "short_margin_current").ShouldBeLessThan(700, "beyond that the main fuse clears sooner than 50 ms");
    }

    [Fact]
    public void What_no_fuse_guards_has_no_margin_to_tell() =>
        GatheredBox.Facts(GatheredBox.Plain).Value("w1", "worst_margin").ShouldBeNull();

    /// <summary>w5, w6, w8 are all of 18 AWG behind the main fuse; one is the weakest, the others are named beside it.</summary>
    [Fact]
    public void Every_conductor_that_its_fuse_is_too_large_for_is_named()
    {
        FactTable facts = GatheredBox.Facts(GatheredBox.Plain);
        facts.Value("main", "weakest_conductor").ShouldNotBeNull().Value.ShouldBe("w5");
        IReadOnlyList<string> also = (IReadOnlyList<string>)facts.Value("main", "also_over").ShouldNotBeNull().Value;
        also.Select(w => w.Split(' ')[0]).ShouldBe(["w6", "w8"]);
        also[0].ShouldStartWith("w6 (18 AWG, ");
    }

    [Fact]
    public void A_fuse_in_the_negative_leaves_the_positive_unfused()
    {
        FactTable facts = GatheredBox.Facts(GatheredBox.Plain
            .Replace("w1: {from: bank.+, to: main.1", "w1: {from: bank.+, to: k1.30", StringComparison.Ordinal)
            .Replace("{from: main.2, to: k1.30, size: 6 AWG, length: 200 mm}", "{from: main.2, to: bank.-, size: 6 AWG, length: 200 mm}", StringComparison.Ordinal)
            .Replace("w4: {from: lamp.-, to: bank.-", "w4: {from: lamp.-, to: main.1", StringComparison.Ordinal)
            .Replace("from: main.2, to: master.1", "from: bank.+, to: master.1", StringComparison.Ordinal)
            .Replace("from: main.2, to: gauge.+", "from: bank.+, to: gauge.+", StringComparison.Ordinal));
        facts.Value("main", "in_return").ShouldNotBeNull().Value.ShouldBe(true);
        facts.Value("main", "unfused_feed").ShouldNotBeNull().Value.ShouldBe("lamp");
    }

    [Fact]
    public void Two_fuses_between_the_same_ends_stand_beside_each_other()
    {
        FactTable facts = GatheredBox.Facts(GatheredBox.Plain
            .Replace("main: {part: class-t, rating: 60 A}", "main: {part: class-t, rating: 60 A}\n  twin: {part: class-t, rating: 60 A}", StringComparison.Ordinal)
            + "\n  w10: {from: bank.+, to: twin.1, size: 6 AWG, length: 100 mm}\n  w11: {from: twin.2, to: k1.30, size: 6 AWG, length: 200 mm}");
        ((IReadOnlyList<string>)facts.Value("main", "beside").ShouldNotBeNull().Value).ShouldBe(["twin"]);
        ((IReadOnlyList<string>)facts.Value("twin", "beside").ShouldNotBeNull().Value).ShouldBe(["main"]);
    }

    [Fact]
    public void A_fuse_alone_stands_beside_none() =>
        ((IReadOnlyList<string>)GatheredBox.Facts(GatheredBox.Plain).Value("main", "beside").ShouldNotBeNull().Value).ShouldBeEmpty();

    [Theory]
    [InlineData("w1: {from: bank.t1, to: bms.s1, size: 24 AWG, length: 200 mm}", true)]
    [InlineData("w1: {from: tap.2, to: bms.s1, size: 24 AWG, length: 200 mm}\n  w2: {from: bank.t1, to: tap.1, size: 24 AWG, length: 50 mm}", false)]
    public void A_drawn_sense_lead_is_fused_when_a_fuse_stands_between_it_and_the_cells(string leads, bool unfused)
    {
        string fuse = unfused ? "" : "fuses: {tap: {part: glass-cartridge, rating: 2 A}}\n";
        FactTable facts = GatheredBox.Facts($$"""
            pack: Small box
            language: 1
            surroundings: {ambient: {from: 20 °C, to: 20 °C} }
            defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring} }
            cells: {bank: {part: lfp-prismatic-100ah, series: 4, links: {section: 20 x 2 mm, length: 70 mm} } }
            bms: {bms: {part: bms-4s-lfp-60a} }
            {{fuse}}loads: {lamp: {current: 1 A, window: 10 .. 15 V} }
            conductors:
              {{leads}}
              w3: {from: bank.+, to: lamp.+, size: 10 AWG, length: 500 mm}
              w4: {from: lamp.-, to: bms.P-, size: 10 AWG, length: 500 mm}
              w5: {from: bms.B-, to: bank.-, size: 10 AWG, length: 100 mm}
            """);
        facts.Value("w1", "sense_unfused").ShouldNotBeNull().Value.ShouldBe(unfused);
        facts.Value("w3", "sense_unfused").ShouldBeNull();
    }
}
