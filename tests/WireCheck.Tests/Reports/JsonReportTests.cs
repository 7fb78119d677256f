using System.Text;
using System.Text.Json;
using NJsonSchema;
using WireCheck.Reports.Json;

namespace WireCheck.Tests.Reports;

public class JsonReportTests
{
    [Fact]
    public void The_json_report_is_as_the_golden_file() => Golden.ShouldMatch(Write(), "Reports/Golden/report.json");

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task The_json_report_meets_its_schema(bool clean)
    {
        JsonSchema schema = await JsonSchema.FromFileAsync(Path.Combine(Golden.Root, "schema", "result.schema.json"));

        schema.Validate(Write(clean: clean)).ShouldBeEmpty();
        schema.Validate("{}").ShouldNotBeEmpty();
        schema.Validate(Write(clean: clean).Replace("\"verdict\"", "\"verdikt\"", StringComparison.Ordinal)).ShouldNotBeEmpty();
    }

    [Theory]
    [InlineData("a \"quote\" and a \\")]
    [InlineData("</script><script>alert(1)</script>")]
    [InlineData("a\u202Eb\e[2J\n")]
    [InlineData("µΩ² 日本")]
    public void A_title_comes_back_as_it_was_and_carries_nothing_dangerous(string title)
    {
        string json = Write(title);

        JsonDocument.Parse(json).RootElement.GetProperty("pack").GetString().ShouldBe(title);
        json.ShouldNotContain('<');
        json.ShouldNotContain('\u202E');
        json.ShouldNotContain('\e');
    }

    [Fact]
    public void Letters_of_every_script_and_unit_signs_stay_readable() => Write("µΩ² 日本").ShouldContain("µΩ² 日本");

    [Fact]
    public async Task Several_reports_are_a_list_that_meets_the_schema()
    {
        using MemoryStream output = new();
        JsonReport.Write(output, [SampleReport.Make(), SampleReport.Make(clean: true)]);
        string json = Encoding.UTF8.GetString(output.ToArray());
        JsonSchema schema = await JsonSchema.FromFileAsync(Path.Combine(Golden.Root, "schema", "result.schema.json"));

        schema.Validate(json).ShouldBeEmpty();
        JsonDocument.Parse(json).RootElement.GetArrayLength().ShouldBe(2);
    }

    [Fact]
    public void The_same_findings_give_the_same_bytes_twice() => Write().ShouldBe(Write());

    private static string Write(string title = "Market-stall power box", bool clean = false)
    {
        using MemoryStream output = new();
        JsonReport.Write(output, [SampleReport.Make(title, clean)]);
        return Encoding.UTF8.GetString(output.ToArray());
    }
}
