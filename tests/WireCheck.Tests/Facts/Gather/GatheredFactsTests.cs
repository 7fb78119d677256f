using WireCheck.Description;
using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using WireCheck.Facts.Gather;

namespace WireCheck.Tests.Facts.Gather;

public class GatheredFactsTests
{
    private static readonly FactTable Box = GatheredBox.Facts(GatheredBox.Plain);

    [Fact]
    public void Every_kind_of_part_has_a_gatherer()
    {
        Type[] kinds = [.. typeof(Part).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Part)))];

        Gatherers.All.Select(g => g.PartType.Name).Order().ShouldBe(kinds.Select(k => k.Name).Order());
    }

    [Fact]
    public void What_a_meter_draws_when_stored_is_told_with_its_chain()
    {
        Box.Number("gauge", "stored_current").ShouldBe(0.012, 1e-9);
        Box.Number("gauge", "box_stored_current").ShouldBe(0.012, 1e-6);
        Box.Value("gauge", "stored_chain")!.Value.ShouldBe(new List<string> { "w1", "main", "w8", "w9" });
        Box.Value("pack", "stored_consumers")!.Value.ShouldBe(new List<string> { "gauge 12 mA" });
    }

    [Fact]
    public void Shelf_time_is_charge_over_standby_and_self_discharge()
    {
        // Cells to 2.5 V: all of the 90 Ah that are counted on. 3 % of 100 Ah in 30 days is 4.1667 mA at 25 °C and over the root
        // of 2 at 20 °C: 2.9463 mA. With 12 mA: 90 Ah / 14.9463 mA = 6021.6 h.
        Box.Number("pack", "time_to_cut_off").ShouldBe(90 / 0.0149463 * 3600, 1500);
    }

    [Fact]
    public void A_contact_carries_the_load_and_a_switch_only_the_coil()
    {
        Box.Number("k1", "current").ShouldBe(10, 1e-6);
        double coil = Box.Number("master", "current");
        coil.ShouldBeInRange(0.10, 0.16);
        Box.Value("master", "load_type")!.Value.ShouldBe("inductive");

        // AC 43.13-1B Table 11-4: 2 for an inductive load in a 12 V system.
        Box.Number("master", "derating").ShouldBe(2);
    }

    [Fact]
    public void An_open_contact_stands_against_the_top_of_the_cells_window()
    {
        Box.Number("k1", "open_voltage").ShouldBe(4 * 3.65, 1e-9);
        Box.Number("pack", "highest_voltage").ShouldBe(14.6, 1e-9);
    }

    [Fact]
    public void A_hot_coil_needs_more_volts_than_a_cold_one()
    {
        double pullIn = Box.Number("k1", "pull_in_voltage");
        pullIn.ShouldBeInRange(12.0, 12.7);

        // 90 Ω, 60 K at 12 V: k = 60 · 90 · (234.5 + 80)/254.5 / 144 = 46.34 K/W; at V the balance of heat is solved by hand.
        double x0 = 254.5;
        double heat = 46.34 * pullIn * pullIn / 90 * 254.5;
        double hot = (x0 + Math.Sqrt((x0 * x0) + (4 * heat))) / 2;
        Box.Number("k1", "hot_operate").ShouldBe(7.8 * hot / 254.5, 0.01);
    }

    [Fact]
    public void The_feed_drop_is_the_sum_of_what_lies_between_bank_and_load()
    {
        double drop = Box.Number("lamp", "feed_drop");
        double wires = Box.Number("w1", "drop") + Box.Number("w2", "drop") + Box.Number("w3", "drop") + Box.Number("w4", "drop");
        drop.ShouldBeInRange(wires, wires + 0.1);
        Box.Number("lamp", "drop_share").ShouldBe(drop / 12.8, 1e-9);
        Box.Value("lamp", "greatest_drop_part")!.Value.ShouldBeOneOf("k1", "w3", "w4");
    }

    [Fact]
    public void A_held_coil_takes_its_share_of_the_bank_each_day()
    {
        double amps = Box.Number("k1", "holding_current");

        Box.Number("k1", "holding_share_per_day").ShouldBe(amps * 24 / 100, 1e-9);
        Box.Value("k1", "holding_current")!.Place!.Mode.ShouldBe("idle");
    }

    [Fact]
    public void A_loose_terminal_is_told_and_an_unplugged_part_is_not_connected()
    {
        FactTable loose = GatheredBox.Facts(GatheredBox.Plain.Replace("  w9: {from: gauge.-, to: bank.-, size: 18 AWG, length: 200 mm}", "", StringComparison.Ordinal));

        loose.Value("gauge", "unconnected_terminals")!.Value.ShouldBe(new List<string> { "-" });
        loose.Value("gauge", "connected")!.Value.ShouldBe(true);
        Box.Value("gauge", "unconnected_terminals")!.Value.ShouldBe(new List<string>());
    }

    [Fact]
    public void No_fact_is_set_for_another_kind_and_every_worst_value_names_its_state()
    {
        foreach (FactSubject subject in Box.Subjects)
        {
            foreach (FactValue value in subject.Values.Values)
            {
                value.Definition.Kind.ShouldBe(subject.Kind);
                (value.Place is not null).ShouldBe(value.Definition.HasPlace, $"{subject.Id}.{value.Definition.Name}");
            }
        }

        FactCatalogue.All.ShouldNotBeEmpty();
    }
}
