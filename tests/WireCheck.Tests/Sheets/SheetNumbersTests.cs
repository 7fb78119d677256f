using System.Globalization;
using WireCheck.Sheets;

namespace WireCheck.Tests.Sheets;

public sealed class SheetNumbersTests
{
    private readonly SheetBook _book = SheetBooks.OfSmall;

    [Fact]
    public void The_millivolts_of_a_wire_are_its_copper_and_its_two_joints_at_the_test_current()
    {
        // 500 mm of 8 AWG (8.366 mm², ASTM B258) at 20 °C: 1.7241e-8 × 1.02 × 0.5 / 8.366e-6 = 1.051 mΩ; joints 0.2 mΩ; 10 A.
        Sheet sheet = _book.Named("millivolts");
        Number(sheet.Cell("whole wire, mV", "w4")).ShouldBe(12.51, 0.05);

        // Length ± 5 % moves the copper alone: 10.51 × 0.95 + 2 and 10.51 × 1.05 + 2.
        Number(sheet.Cell("accept from, mV", "w4")).ShouldBe(11.98, 0.05);
        Number(sheet.Cell("to, mV", "w4")).ShouldBe(13.04, 0.05);
        sheet.Cell("joint at from, mV", "w4").ShouldBe("1");
        sheet.Cell("anew above, mV", "w4").ShouldBe("2");
    }

    [Fact]
    public void The_voltage_at_a_load_is_what_the_divider_leaves_and_its_band_is_that_of_the_tolerances()
    {
        // At half charge 4 × 3.29 = 13.16 V. In series, new and at 20 °C: cells 4 × 0.5, links 3 × 0.1, wires 1 m of 2.102 mΩ/m,
        // eight joints of 0.1, fuse 0.5, contact 0.2 mΩ: 5.902 mΩ beside the heater's 200 mΩ.
        const double Volts = 13.16;
        static double AtHeater(double cells, double wires) => Volts * 200 / (200 + (2 * cells) + 0.3 + (2.102 * wires) + 0.8 + 0.5 + 0.2);
        Sheet sheet = _book.Named("voltages");
        double shown = Number(sheet.Cell("expect, V", "everything", "heater.+"));

        shown.ShouldBe(AtHeater(1, 1), 0.012);
        Number(sheet.Cell("accept from, V", "everything", "heater.+")).ShouldBe(AtHeater(1.1, 1.05), 0.015);
        Number(sheet.Cell("to, V", "everything", "heater.+")).ShouldBe(AtHeater(0.9, 0.95), 0.015);
    }

    [Fact]
    public void What_a_closed_switch_would_feed_is_dead_in_the_stored_box()
    {
        _book.Named("voltages").Rows.Single(r => r[0] == "stored" && r[3] == "dead")[1].ShouldBe("heater.+");
    }

    [Fact]
    public void The_current_at_rest_is_that_of_the_gauge_with_its_declared_tolerance()
    {
        Sheet sheet = _book.Named("standby");
        sheet.Cell("expect", "stored", "gauge").ShouldBe("12 mA");
        sheet.Cell("accept from", "stored", "gauge").ShouldBe("9 mA");
        sheet.Cell("to", "stored", "gauge").ShouldBe("15 mA");
        sheet.Notes.ShouldContain(n => n.Contains("25 %") && n.Contains("declared"));
    }

    [Fact]
    public void The_wire_needed_is_the_sum_of_the_cut_list_less_what_is_at_hand()
    {
        // 8 AWG red 100 + 100 + 300 mm, black 500 mm; the reel tells no colour.
        Sheet sheet = _book.Named("wire-needed");
        sheet.Rows.Single(r => r[0] == "8 AWG" && r[2] == "red").Skip(3).ShouldBe(["3", "0.5", "0.7", "0"]);
        sheet.Rows.Single(r => r[0] == "20 AWG" && r[2] == "black").Skip(3).ShouldBe(["1", "0.2", "0", "0.2"]);
    }

    [Fact]
    public void The_cost_is_the_price_of_the_id_or_the_class_or_the_metre_times_the_quantity()
    {
        // Four cells at 40, the fuse at 7.5, 1.0 m of wire at 3: 170.50.
        Sheet sheet = _book.Named("parts-list");
        sheet.Cell("cost", "bank").ShouldBe("160.00");
        sheet.Cell("cost", "main").ShouldBe("7.50");
        sheet.Cell("cost", "w1, w2, w3, w4").ShouldBe("3.00");
        sheet.Cell("cost", "master").ShouldBe("");
        sheet.Notes[0].ShouldStartWith("Total of what has a price: 170.50 EUR.");
        sheet.Notes[1].ShouldBe("4 rows have no price and are not in the total.");
    }

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
