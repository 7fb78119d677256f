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
        foreach (IReadOnlyList<string> row in SheetBooks.OfExample(example).Named("voltages").Rows.Where(r => r[3] != "dead"))
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
        steps[0].ShouldStartWith("Open every switch and breaker: isolator, master, precharge");
        Step("Take every fuse out").ShouldBeLessThan(Step("Bolt bank.- to bms.B-"));
        Step("Bolt bank.- to bms.B-").ShouldBeLessThan(Step("what is left at bank.+"));
        Step("In place of main").ShouldBeLessThan(Step("fit main as the last connection"));
        Step("fit main as the last connection").ShouldBeLessThan(Step("precharge inverter through r-pre"));
        Step("precharge inverter through r-pre").ShouldBeLessThan(Step("Close master"));
    }

    [Fact]
    public void A_metal_case_is_asked_for_its_insulation_and_a_plastic_one_is_not()
    {
        SheetBooks.OfExample("pump-house-24v.yaml").Named("checks-before-power").Rows.ShouldContain(r => r[1] == "Insulation of the metal case");
        SheetBooks.OfExample("market-stall-12v.yaml").Named("checks-before-power").Rows.ShouldNotContain(r => r[1] == "Insulation of the metal case");
    }
}
