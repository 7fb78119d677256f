using WireCheck.Facts;

namespace WireCheck.Tests.Facts.Gather;

/// <summary>The order of cells and sense leads as it is gathered from small boxes.</summary>
public sealed class StackFactsTests
{
    /// <summary>Two banks that a pair of change-over relays joins side by side at rest and in a row when pulled in.</summary>
    private const string ChangeOver = """
        pack: Two voltages
        language: 1
        surroundings: {ambient: {from: 20 °C, to: 20 °C}}
        defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}}
        cells:
          low: {part: lfp-prismatic-100ah, series: 4, parallel: 1, link_resistance: 0.1 mΩ}
          high: {part: lfp-prismatic-100ah, series: 4, parallel: 1, link_resistance: 0.1 mΩ}
        switches:
          row: {part: panel-rocker}
        relays:
          k1: {part: relay-12v-40a, form: change-over}
          k2: {part: relay-12v-40a, form: change-over}
        conductors:
          w1: {from: low.+, to: k1.87, size: 6 AWG, length: 100 mm}
          w2: {from: low.-, to: k1.87a, size: 6 AWG, length: 100 mm}
          w3: {from: k1.30, to: high.-, size: 6 AWG, length: 100 mm}
          w4: {from: low.+, to: k2.30, size: 6 AWG, length: 100 mm}
          w5: {from: k2.87a, to: high.+, size: 6 AWG, length: 100 mm}
          w6: {from: low.+, to: row.1, size: 18 AWG, length: 100 mm}
          w7: {from: row.2, to: [k1.86, k2.86], size: 18 AWG, length: 100 mm}
          w8: {from: k1.85, to: low.-, size: 18 AWG, length: 100 mm}
          w9: {from: k2.85, to: low.-, size: 18 AWG, length: 100 mm}
        """;

    private const string Sensed = """
        pack: Sensed bank
        language: 1
        surroundings: {ambient: {from: 20 °C, to: 20 °C}}
        defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, link_resistance: 0.5 mΩ}
        bms:
          bms: {part: bms-4s-lfp-100a}
        loads:
          lamp: {current: 50 A}
        conductors:
          w1: {from: bank.+, to: lamp.+, size: 2 AWG, length: 500 mm}
          w2: {from: lamp.-, to: bms.P-, size: 2 AWG, length: 500 mm}
          w3: {from: bms.B-, to: bank.-, size: 2 AWG, length: 100 mm}
          s0: {from: bank.-, to: bms.s0, size: 24 AWG, length: 200 mm}
          s1: {from: bank.t1, to: bms.s1, size: 24 AWG, length: 200 mm}
          s2: {from: bank.t2, to: bms.s2, size: 24 AWG, length: 200 mm}
          s3: {from: bank.t3, to: bms.s3, size: 24 AWG, length: 200 mm}
          s4: {from: bank.+, to: bms.s4, size: 24 AWG, length: 200 mm}
        """;

    [Fact]
    public void Banks_that_change_over_between_row_and_side_by_side_are_not_shorted()
    {
        FactTable table = GatheredBox.Facts(ChangeOver);

        Names(table, "low", "shorted_terminals").ShouldBeEmpty();
        Names(table, "high", "joined_at_other_count").ShouldBeEmpty();
    }

    [Fact]
    public void The_same_relay_with_a_wire_across_its_throws_shorts_a_bank()
    {
        FactTable table = GatheredBox.Facts(ChangeOver + "\n  w10: {from: k1.87, to: k1.87a, size: 6 AWG, length: 100 mm}");

        Names(table, "low", "shorted_terminals").ShouldBe(["low.- with low.+"]);
    }

    [Fact]
    public void A_pair_of_leads_reads_its_cell_and_the_bar_below_it()
    {
        FactTable table = GatheredBox.Facts(Sensed);

        // 50 A through a bar of 0.5 mΩ is 25 mV; the lowest cell has no bar between s0 and s1.
        table.Number("bms", "sense_error").ShouldBe(0.025, 1e-5);
        Names(table, "bms", "wrong_taps").ShouldBeEmpty();
        table.Number("bms", "sense_step_low").ShouldBeInRange(3.1, 3.4);
    }

    [Fact]
    public void Twice_the_current_doubles_what_the_bars_add()
    {
        FactTable table = GatheredBox.Facts(Sensed.Replace("current: 50 A", "current: 100 A", StringComparison.Ordinal));

        table.Number("bms", "sense_error").ShouldBe(0.050, 1e-5);
    }

    [Theory]
    [InlineData("s1: {from: bank.t1", "s1: {from: bank.t2", "s1 on bank.t2")]
    [InlineData("s0: {from: bank.-", "s0: {from: bms.P-", "s0 on no cell")]
    [InlineData("s4: {from: bank.+", "s4: {from: bank.t3", "s4 on bank.t3")]
    public void A_lead_on_another_terminal_is_named_with_where_it_ends(string right, string wrong, string told)
    {
        FactTable table = GatheredBox.Facts(Sensed.Replace(right, wrong, StringComparison.Ordinal));

        Names(table, "bms", "wrong_taps").ShouldBe([told]);
        table.Value("bms", "sense_error").ShouldBeNull();
    }

    [Fact]
    public void Leads_told_in_short_say_nothing_of_their_order()
    {
        string inShort = string.Join('\n', Sensed.Split('\n').Where(l => !l.StartsWith("  s", StringComparison.Ordinal)))
            .Replace("bms-4s-lfp-100a}", "bms-4s-lfp-100a, sense: {size: 24 AWG, length: 250 mm, fuse: 2 A}}", StringComparison.Ordinal);

        FactTable table = GatheredBox.Facts(inShort);

        table.Value("bms", "wrong_taps").ShouldBeNull();
        table.Value("bms", "sense_error").ShouldBeNull();
    }

    [Fact]
    public void Banks_in_a_row_are_counted_from_either_end()
    {
        FactTable table = GatheredBox.Facts("""
            pack: A row
            language: 1
            surroundings: {ambient: {from: 20 °C, to: 20 °C}}
            defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}}
            cells:
              a: {part: lfp-prismatic-100ah, series: 4, packaged: yes, max_series: 4, link_resistance: 0.1 mΩ}
              b: {part: lfp-prismatic-100ah, series: 4, packaged: yes, link_resistance: 0.1 mΩ}
              c: {part: lfp-prismatic-100ah, series: 4, packaged: yes, link_resistance: 0.1 mΩ}
            conductors:
              w1: {from: a.+, to: b.-, size: 6 AWG, length: 100 mm}
              w2: {from: b.+, to: c.-, size: 6 AWG, length: 100 mm}
            """);

        foreach (string id in new[] { "a", "b", "c" })
        {
            table.Number(id, "batteries_in_series").ShouldBe(3);
        }

        table.Number("a", "max_series").ShouldBe(4);
        table.Value("b", "max_series").ShouldBeNull();
    }

    private static IReadOnlyList<string> Names(FactTable table, string id, string fact) =>
        (IReadOnlyList<string>)table.Value(id, fact).ShouldNotBeNull().Value;
}
