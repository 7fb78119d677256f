using System.Text;
using System.Text.Json;
using WireCheck.Reports;
using WireCheck.Reports.Sarif;

namespace WireCheck.Tests.Reports;

public sealed class SarifReportTests
{
    [Fact]
    public void The_findings_are_written_as_the_golden_file_says()
    {
        Golden.ShouldMatch(Write(SampleReport.Make()), Path.Combine("Reports", "Golden", "report.sarif"));
    }

    [Fact]
    public void A_fingerprint_stays_the_same_when_lines_move_and_numbers_change()
    {
        string[] prints = Fingerprints(Check("examples/first-draft-12v.yaml", text => text));
        string[] moved = Fingerprints(Check("examples/first-draft-12v.yaml", text => "# one more line\n\n" + text.Replace("18 °C", "19 °C", StringComparison.Ordinal)));
        moved.ShouldBe(prints);
        prints.ShouldBeUnique();
    }

    [Fact]
    public void A_waived_finding_is_suppressed_with_its_reason()
    {
        using JsonDocument sarif = JsonDocument.Parse(Write(SampleReport.Make()));
        JsonElement[] suppressed = [.. Results(sarif).Where(r => r.TryGetProperty("suppressions", out JsonElement s) && s.GetArrayLength() > 0)];
        suppressed.Length.ShouldBe(1);
        suppressed[0].GetProperty("suppressions")[0].GetProperty("justification").GetString().ShouldBe(
            "sleeved and clamped on the bench (until 2027-06-01)");
    }

    [Theory]
    [InlineData("box.yaml", "box.yaml")]
    [InlineData("my boxes/stall #2.yaml", "my%20boxes/stall%20%232.yaml")]
    [InlineData("/home/me/box.yaml", "file:///home/me/box.yaml")]
    [InlineData("C:\\boxes\\box.yaml", "file:///C:/boxes/box.yaml")]
    public void A_file_is_named_by_a_sound_reference(string file, string expected)
    {
        SarifLocation.UriOf(file).ShouldBe(expected);
    }

    private static Report Check(string example, Func<string, string> change) =>
        PackCheck.Standard.Check("box.yaml", change(File.ReadAllText(Path.Combine(Golden.Root, example))), new CheckOptions(null, new DateOnly(2026, 11, 1))).Report!;

    private static string Write(Report report)
    {
        using MemoryStream output = new();
        SarifReport.Write(output, [report]);
        return Encoding.UTF8.GetString(output.ToArray());
    }

    private static string[] Fingerprints(Report report)
    {
        using JsonDocument sarif = JsonDocument.Parse(Write(report));
        return [.. Results(sarif)
            .Where(r => r.TryGetProperty("partialFingerprints", out _))
            .Select(r => r.GetProperty("partialFingerprints").GetProperty("ruleAndPart/v1").GetString()!)];
    }

    private static IEnumerable<JsonElement> Results(JsonDocument sarif) =>
        sarif.RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray();
}
