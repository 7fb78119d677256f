using WireCheck.Reports.Sheets;
using WireCheck.Reports.Templates;
using WireCheck.Sheets;
using WireCheck.Tests.Sheets;

namespace WireCheck.Tests.Reports.Sheets;

public sealed class SheetReportTests
{
    private static readonly SheetBook Nasty = SheetBooks.Of("small.yaml", SheetBooks.Small
        .Replace("pack: Small box", "pack: \"<script>x</script> **b**\"", StringComparison.Ordinal)
        .Replace("colour: red}", "colour: \"=1+1|<b>\\e[31m\"}", StringComparison.Ordinal));

    [Theory]
    [InlineData(TemplateTarget.Markdown, "sheets.md")]
    [InlineData(TemplateTarget.Html, "sheets.html")]
    public void The_sheets_are_written_as_the_golden_file_says(TemplateTarget target, string golden) =>
        Golden.ShouldMatch(SheetsReport.Write(SheetBooks.OfSmall, target), $"Reports/Golden/{golden}");

    [Fact]
    public void Words_of_a_description_bring_no_markup_into_a_page()
    {
        string page = SheetsReport.Write(Nasty, TemplateTarget.Html);
        page.ShouldNotContain("<script");
        page.ShouldNotContain("<b>");
        page.ShouldNotContain("\e");

        string markdown = SheetsReport.Write(Nasty, TemplateTarget.Markdown);
        markdown.ShouldNotContain("<script");
        markdown.ShouldContain("\\*\\*b\\*\\*");
        markdown.ShouldContain("=1+1\\|&lt;b&gt;");
    }

    [Fact]
    public void A_page_asks_for_nothing_from_elsewhere()
    {
        string page = SheetsReport.Write(SheetBooks.OfSmall, TemplateTarget.Html);
        page.ShouldNotContain("http:");
        page.ShouldNotContain("https:");
        page.ShouldNotContain("url(");
    }

    [Theory]
    [InlineData("red", "red")]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+SUM(A1)", "'+SUM(A1)")]
    [InlineData("-2+3", "'-2+3")]
    [InlineData("@cmd", "'@cmd")]
    [InlineData("-12.5", "-12.5")]
    [InlineData("  =1", "'  =1")]
    [InlineData("a, \"b\"", "\"a, \"\"b\"\"\"")]
    [InlineData("a\nb", "a\\u{a}b")]
    public void A_cell_is_shown_by_a_spreadsheet_and_never_run(string words, string cell) => SheetCsv.Cell(words).ShouldBe(cell);

    [Fact]
    public void A_colour_that_looks_like_a_formula_is_made_harmless_in_the_cut_list()
    {
        string csv = SheetCsv.Write(Nasty.Named("cut-list"));

        csv.ShouldStartWith("wire,\"length, mm\",size,");
        csv.ShouldContain(",'=1+1|<b>");
        csv.ShouldEndWith("\r\n");
    }
}
