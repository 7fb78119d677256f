using WireCheck.Reports.Sheets;
using WireCheck.Reports.Templates;
using WireCheck.Sheets;

namespace WireCheck.Tests.Sheets;

public sealed class SheetBookTests
{
    public static TheoryData<string> Examples => ["market-stall-12v.yaml", "pump-house-24v.yaml", "bicycle-workshop-48v.yaml", "first-draft-12v.yaml"];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_row_has_a_cell_for_each_heading_and_every_sheet_its_own_name(string example)
    {
        SheetBook book = SheetBooks.OfExample(example);

        book.All.ShouldAllBe(s => s.Rows.All(r => r.Count == s.Headings.Count));
        book.All.Select(s => s.Name).ShouldBeUnique();
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Each_wire_is_cut_once_labelled_twice_and_stands_twice_in_the_wiring_list(string example)
    {
        SheetBook book = SheetBooks.OfExample(example);
        Sheet cut = book.Named("cut-list");

        cut.Rows.Select(r => r[0]).ShouldBeUnique();
        foreach (string wire in cut.Rows.Select(r => r[0]))
        {
            book.Named("labels").Rows.Count(r => r[1] == "wire" && r[0].StartsWith($"{wire} ", StringComparison.Ordinal)).ShouldBe(2);
            book.Named("wiring-list").Rows.Count(r => r[1] == wire).ShouldBe(2);
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void What_is_expected_lies_within_its_band(string example)
    {
        foreach (IReadOnlyList<string> row in SheetBooks.OfExample(example).Named("voltages").Rows.Where(r => !r[3].StartsWith("dead", StringComparison.Ordinal)))
        {
            double[] volts = [.. row.Skip(3).Take(3).Select(c => double.Parse(c, System.Globalization.CultureInfo.InvariantCulture))];
            volts[0].ShouldBeInRange(volts[1], volts[2], string.Join(" ", row));
        }
    }

    [Fact]
    public void Without_tolerances_the_band_is_the_expected_value()
    {
        string exact = SheetBooks.Small.Replace("cell_resistance: 10 %, length: 5 %", "cell_resistance: 0 %, length: 0 %", StringComparison.Ordinal);

        Sheet sheet = SheetBooks.Of("exact.yaml", exact).Named("millivolts");

        sheet.Rows.ShouldAllBe(r => r[4] == r[5] && r[5] == r[6]);
    }

    [Fact]
    public void The_fuse_comes_last_and_everything_is_off_first()
    {
        List<string> steps = [.. SheetBooks.OfExample("market-stall-12v.yaml").Named("first-connection").Rows.Select(r => r[1])];

        int Step(string words) => steps.FindIndex(s => s.Contains(words, StringComparison.Ordinal));
        steps[0].ShouldStartWith("Open every switch and breaker: isolator, master. Leave precharge alone");
        Step("Take every fuse out").ShouldBeLessThan(Step("Bolt bank.- to bms.B-"));
        Step("Bolt bank.- to bms.B-").ShouldBeLessThan(Step("what is left at bank.+"));
        Step("what is left at bank.+").ShouldBeLessThan(Step("In place of main"));
        Step("In place of main").ShouldBeLessThan(Step("fit main itself as the last connection"));
    }

    [Fact]
    public void A_metal_case_is_asked_for_its_insulation_and_a_plastic_one_is_not()
    {
        SheetBooks.OfExample("pump-house-24v.yaml").Named("checks-before-power").Rows.ShouldContain(r => r[1] == "Insulation of the metal case");
        SheetBooks.OfExample("market-stall-12v.yaml").Named("checks-before-power").Rows.ShouldNotContain(r => r[1] == "Insulation of the metal case");
    }

    [Fact]
    public void What_is_fed_by_a_converter_or_a_panel_has_its_voltage_against_its_own_negative()
    {
        Sheet pumpHouse = SheetBooks.OfExample("pump-house-24v.yaml").Named("voltages");
        Volts(pumpHouse, "sunshine", "roof.+").ShouldBeGreaterThan(30);
        Volts(pumpHouse, "sunshine", "controller.pv+").ShouldBeGreaterThan(30);

        Sheet workshop = SheetBooks.OfExample("bicycle-workshop-48v.yaml").Named("voltages");
        Volts(workshop, "truing", "conv.out+").ShouldBe(12.5, 0.1);
        Volts(workshop, "truing", "lamp-out.+").ShouldBe(12.4, 0.2);
        Volts(workshop, "truing", "usb.out+").ShouldBe(5, 0.05);

        static double Volts(Sheet sheet, string mode, string red) =>
            double.Parse(sheet.Cell("expect, V", mode, red), System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public void Behind_a_converter_no_millivolts_below_the_bank_are_told()
    {
        Sheet sheet = SheetBooks.OfExample("bicycle-workshop-48v.yaml").Named("voltages");

        sheet.Cell("below the bank, mV", "truing", "lamp-out.+").ShouldBe("");
        sheet.Cell("below the bank, mV", "truing", "usb.in+").ShouldNotBe("");
    }

    [Theory]
    [InlineData("market-stall-12v.yaml", "inlet")]
    [InlineData("bicycle-workshop-48v.yaml", "inlet")]
    public void An_open_inlet_behind_a_diode_is_dead_as_in_the_table_of_states_and_the_meter_alone_shows_its_leakage(string example, string inlet)
    {
        // The leakage of the diode, at most some ten microamperes, makes less than 1 V of 10 kΩ; a meter of 10 MΩ takes almost nothing.
        Sheet sheet = SheetBooks.OfExample(example).Named("voltages");

        sheet.Cell("expect, V", "idle", $"{inlet}.+").ShouldMatch("^dead; [0-9.]+ on a meter alone$");
        sheet.Cell("to, V", "idle", $"{inlet}.+").ShouldBe("1.00");
    }

    [Fact]
    public void The_sheets_of_a_dangerous_box_open_with_its_verdict_and_name_every_finding()
    {
        SheetBook book = SheetBooks.OfExample("first-draft-12v.yaml");
        Sheet verdict = book.All.First();

        book.NotToBeBuilt.ShouldBeTrue();
        book.Banner[0].ShouldMatch("^DANGEROUS: [0-9]+ dangers, [0-9]+ faults?\\.$");
        book.Banner[1].ShouldStartWith("Do not build from these sheets and do not connect the box until every danger and fault is mended");
        verdict.Name.ShouldBe("verdict");
        verdict.Rows.Count(r => r[0] == "danger").ShouldBe(int.Parse(book.Banner[0].Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture));
        SheetsReport.Write(book, TemplateTarget.Markdown).ShouldStartWith($"# Market-stall power box, first draft: sheets\n\n**{book.Banner[0]}**\n");
        SheetsReport.Write(book, TemplateTarget.Html).ShouldContain("role=\"alert\"");
        SheetsReport.Write(book with { Building = [], Commissioning = [book.Named("fuse-schedule")] }, TemplateTarget.Markdown).ShouldContain(book.Banner[1]);
    }

    [Fact]
    public void The_sheets_of_a_box_that_passes_say_so_without_alarm()
    {
        SheetBook book = SheetBooks.OfExample("market-stall-12v.yaml");

        book.NotToBeBuilt.ShouldBeFalse();
        book.Banner.ShouldHaveSingleItem().ShouldStartWith("The check passes: nothing found.");
        SheetsReport.Write(book, TemplateTarget.Html).ShouldNotContain("role=\"alert\"");
    }

    [Fact]
    public void Cell_links_sense_leads_their_fuses_holders_and_the_charger_are_on_the_lists()
    {
        SheetBook book = SheetBooks.OfExample("market-stall-12v.yaml");
        Sheet parts = book.Named("parts-list");

        parts.Cell("quantity", "links of bank").ShouldBe("3");
        parts.Cell("figures", "links of bank").ShouldBe("20 x 2 mm, 70 mm from stud to stud");
        parts.Cell("quantity", "sense leads").ShouldBe("1.25 m");
        parts.Cell("quantity", "fuses of the sense leads").ShouldBe("5");
        parts.Cell("quantity", "holders of main, f-dc, f-in").ShouldBe("3");
        parts.Cell("figures", "mains").ShouldBe("14.60 V, 10 A; outside, plugged in at inlet");
        book.Named("cut-list").Rows.Count(r => r[0].StartsWith("bms.s", StringComparison.Ordinal)).ShouldBe(5);
        book.Named("wiring-list").Rows.ShouldContain(r => r[0] == "bank.t2" && r[5] == "bms.s2");
    }
}
