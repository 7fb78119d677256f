using System.Text;
using NJsonSchema;
using WireCheck.Comparing;
using WireCheck.Reports.Comparisons;
using WireCheck.Reports.Templates;
using WireCheck.Reports.Text;
using WireCheck.Tests.Comparing;

namespace WireCheck.Tests.Reports.Comparisons;

public sealed class ComparisonReportTests
{
    [Theory]
    [InlineData(TemplateTarget.Text, "comparison.txt")]
    [InlineData(TemplateTarget.Markdown, "comparison.md")]
    public void A_swap_is_told_as_the_golden_file_says(TemplateTarget target, string golden) => Golden.ShouldMatch(
        ComparisonReport.Write(SwapBoxes.Compare(SwapBoxes.Small, SwapBoxes.Large), target, TextStyle.Piped), $"Reports/Golden/{golden}");

    [Fact]
    public async Task The_json_of_a_swap_meets_its_schema_and_is_the_same_bytes_twice()
    {
        JsonSchema schema = await JsonSchema.FromFileAsync(Path.Combine(Golden.Root, "schema", "comparison.schema.json"));
        string json = Json(SwapBoxes.Compare(SwapBoxes.Small, SwapBoxes.Large));

        schema.Validate(json).ShouldBeEmpty();
        schema.Validate(Json(SwapBoxes.Compare(SwapBoxes.Large, SwapBoxes.Small))).ShouldBeEmpty();
        schema.Validate(json.Replace("\"worse\"", "\"worst\"", StringComparison.Ordinal)).ShouldNotBeEmpty();
        Json(SwapBoxes.Compare(SwapBoxes.Small, SwapBoxes.Large)).ShouldBe(json);
    }

    [Fact]
    public void A_comparison_with_itself_says_so_in_two_lines()
    {
        string text = ComparisonReport.Write(SwapBoxes.Compare(SwapBoxes.Small, SwapBoxes.Small), TemplateTarget.Text, TextStyle.Piped);

        text.ShouldBe("Small box (old.yaml, dangerous) against Small box (new.yaml, dangerous)\nSAME: nothing that is told here differs.\n");
    }

    [Fact]
    public void Words_of_a_description_cannot_bring_markup_or_steer_a_terminal()
    {
        string nasty = SwapBoxes.Large.Replace("pack: Small box", "pack: \"<b>**x**</b> | \\e[31m\"", StringComparison.Ordinal);
        BoxDifference difference = SwapBoxes.Compare(SwapBoxes.Small, nasty);

        ComparisonReport.Write(difference, TemplateTarget.Text, TextStyle.Piped).ShouldNotContain("\e");
        string markdown = ComparisonReport.Write(difference, TemplateTarget.Markdown, TextStyle.Piped);
        markdown.ShouldNotContain("<b>");
        markdown.ShouldContain("\\*\\*x\\*\\*");
    }

    private static string Json(BoxDifference difference)
    {
        using MemoryStream output = new();
        ComparisonJson.Write(output, difference);
        return Encoding.UTF8.GetString(output.ToArray());
    }
}
