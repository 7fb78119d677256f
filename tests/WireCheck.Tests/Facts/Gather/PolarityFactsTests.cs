using WireCheck.Facts;

namespace WireCheck.Tests.Facts.Gather;

/// <summary>Which way round diodes, shunts, contactors and consumers are wired, and what takes the kick of a coil.</summary>
public sealed class PolarityFactsTests
{
    private static string Box(string parts, string wires) => $$"""
        pack: Directed box
        language: 1
        surroundings: {ambient: {from: 20 °C, to: 20 °C} }
        defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring} }
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, link_resistance: 0.1 mΩ}
        switches:
          master: {part: panel-rocker}
        loads:
          lamp: {current: 5 A}
        {{parts}}
        conductors:
          w1: {from: bank.+, to: master.1, size: 10 AWG, length: 200 mm}
        {{wires}}
        """;

    [Theory]
    [InlineData("A", "K", 0)]
    [InlineData("K", "A", 1)]
    public void A_diode_in_the_feed_blocks_the_load_when_it_is_turned(string first, string second, int blocked)
    {
        FactTable table = GatheredBox.Facts(Box(
            "diodes:\n  d: {part: schottky-10a}",
            $"  w2: {{from: master.2, to: d.{first}, size: 10 AWG, length: 200 mm}}\n"
            + $"  w3: {{from: d.{second}, to: lamp.+, size: 10 AWG, length: 200 mm}}\n"
            + "  w4: {from: lamp.-, to: bank.-, size: 10 AWG, length: 200 mm}"));

        ((IReadOnlyList<string>)table.Value("d", "keeps_apart")!.Value).Count.ShouldBe(blocked);
        table.Value("d", "shorts_poles")!.Value.ShouldBe(false);
    }

    [Theory]
    [InlineData("K", "A", false, "diode")]
    [InlineData("A", "K", true, "none")]
    public void A_diode_across_a_coil_takes_its_kick_one_way_and_shorts_the_feed_the_other(string plus, string minus, bool shorts, string clamp)
    {
        FactTable table = GatheredBox.Facts(Box(
            "relays:\n  k: {part: relay-12v-40a}\ndiodes:\n  d: {part: silicon-1a}",
            "  w2: {from: master.2, to: k.86, size: 18 AWG, length: 200 mm}\n"
            + "  w3: {from: k.85, to: bank.-, size: 18 AWG, length: 200 mm}\n"
            + $"  w4: {{from: k.86, to: d.{plus}, size: 18 AWG, length: 50 mm}}\n"
            + $"  w5: {{from: d.{minus}, to: k.85, size: 18 AWG, length: 50 mm}}\n"
            + "  w6: {from: bank.+, to: k.30, size: 10 AWG, length: 200 mm}\n"
            + "  w7: {from: k.87, to: lamp.+, size: 10 AWG, length: 200 mm}\n"
            + "  w8: {from: lamp.-, to: bank.-, size: 10 AWG, length: 200 mm}"));

        table.Value("d", "shorts_poles")!.Value.ShouldBe(shorts);
        table.Value("k", "suppression")!.Value.ShouldBe(clamp);
        ((IReadOnlyList<string>)table.Value("d", "keeps_apart")!.Value).ShouldBeEmpty();
    }

    [Theory]
    [InlineData("", true)]
    [InlineData(", polarised: yes", true)]
    [InlineData(", polarised: no", false)]
    public void A_load_fed_backwards_is_told_unless_it_may_run_either_way(string said, bool told)
    {
        FactTable table = GatheredBox.Facts(Box(
            "",
            "  w2: {from: master.2, to: lamp.-, size: 10 AWG, length: 200 mm}\n"
            + "  w3: {from: lamp.+, to: bank.-, size: 10 AWG, length: 200 mm}").Replace("{current: 5 A}", $"{{current: 5 A{said}}}", StringComparison.Ordinal));

        (table.Value("lamp", "reversed_voltage")?.Value is double and > 10).ShouldBe(told);
    }

    [Theory]
    [InlineData("battery", "load", false)]
    [InlineData("load", "battery", true)]
    public void A_shunt_faces_away_when_its_load_terminal_is_at_the_bank(string atBank, string atLoad, bool away)
    {
        FactTable table = GatheredBox.Facts(Box(
            "shunts:\n  shunt: {rated: 100 A, drop: 75 mV}",
            "  w2: {from: master.2, to: lamp.+, size: 10 AWG, length: 200 mm}\n"
            + $"  w3: {{from: lamp.-, to: shunt.{atLoad}, size: 10 AWG, length: 200 mm}}\n"
            + $"  w4: {{from: shunt.{atBank}, to: bank.-, size: 10 AWG, length: 200 mm}}"));

        table.Value("shunt", "faces_away")!.Value.ShouldBe(away);
    }

    [Fact]
    public void A_load_on_the_wrong_wires_sees_the_bank_reversed()
    {
        FactTable table = GatheredBox.Facts(Box(
            "",
            "  w2: {from: master.2, to: lamp.-, size: 10 AWG, length: 200 mm}\n"
            + "  w3: {from: lamp.+, to: bank.-, size: 10 AWG, length: 200 mm}"));

        table.Number("lamp", "reversed_voltage").ShouldBe(13.6, 0.05);
    }

    [Theory]
    [InlineData("30", "87", 0)]
    [InlineData("87", "30", 5)]
    public void A_one_way_contactor_tells_the_current_that_flows_against_it(string first, string second, double amps)
    {
        FactTable table = GatheredBox.Facts(Box(
            "relays:\n  k: {part: relay-12v-40a, polarised: yes}",
            $"  w2: {{from: bank.+, to: k.{first}, size: 10 AWG, length: 200 mm}}\n"
            + $"  w3: {{from: k.{second}, to: lamp.+, size: 10 AWG, length: 200 mm}}\n"
            + "  w4: {from: lamp.-, to: bank.-, size: 10 AWG, length: 200 mm}\n"
            + "  w5: {from: master.2, to: k.86, size: 18 AWG, length: 200 mm}\n"
            + "  w6: {from: k.85, to: bank.-, size: 18 AWG, length: 200 mm}"));

        table.Number("k", "reverse_current").ShouldBe(amps, 1e-6);
    }
}
