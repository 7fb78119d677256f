using System.Globalization;
using WireCheck.Reports.Text;
using WireCheck.Rules;

namespace WireCheck.Tests.Rules;

public sealed class SettingOverrideTests
{
    private const string Box = """
        pack: Small box
        language: 1
        settings: {SETTINGS}
        surroundings: {ambient: {from: 0 °C, to: 35 °C}}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, link_resistance: 0.1 mohm}

        """;

    [Fact]
    public void The_reason_of_an_overridden_threshold_is_shown_in_the_report()
    {
        CheckOutcome outcome = Check("drop_limit: {value: 5 %, because: the runs are long}");

        SettingOverride changed = outcome.Report!.Overrides.ShouldHaveSingleItem();
        changed.Written.ShouldBe("5 %");
        changed.Usual.ShouldBe("10 %");
        using StringWriter output = new(CultureInfo.InvariantCulture);
        TextReport.Write(output, [outcome.Report], TextStyle.Piped);
        output.ToString().ShouldContain("- drop_limit: 5 % instead of 10 %; the runs are long.");
    }

    [Fact]
    public void A_threshold_without_a_reason_is_shown_as_such() =>
        Check("drop_limit: 5 %").Report!.Overrides.ShouldHaveSingleItem().Because.ShouldBeNull();

    [Fact]
    public void A_mapping_without_its_reason_or_with_another_key_is_told() =>
        Check("drop_limit: {value: 5 %, note: x}").Problems.Select(p => p.Message).ShouldBe(
        [
            "settings.drop_limit is written with a reason but gives none; add because: and why the threshold is another here",
            "settings.drop_limit has a value and a reason (because); 'note' is neither",
        ]);

    private static CheckOutcome Check(string settings) => PackCheck.Standard.Check(
        "box.yaml", Box.Replace("SETTINGS", settings, StringComparison.Ordinal), new CheckOptions(null, new DateOnly(2027, 1, 1)));
}
