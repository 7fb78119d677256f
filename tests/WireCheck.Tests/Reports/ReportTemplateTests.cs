using WireCheck.Reports;
using WireCheck.Reports.Templates;
using WireCheck.Reports.Text;
using WireCheck.Text;

namespace WireCheck.Tests.Reports;

public sealed class ReportTemplateTests
{
    private const string Nasty = "<script>alert(1)</script> **bold** [link](javascript:x) | \u001b[31mred \u202eright to left \u0007 & \"quoted\" 'single'";

    [Theory]
    [InlineData(TemplateTarget.Html, "report.html")]
    [InlineData(TemplateTarget.Markdown, "report.md")]
    public void The_findings_are_written_as_the_golden_file_says(TemplateTarget target, string golden)
    {
        Golden.ShouldMatch(Write(target, SampleReport.Make()), Path.Combine("Reports", "Golden", golden));
    }

    [Fact]
    public void A_title_cannot_bring_tags_into_a_page()
    {
        string page = Write(TemplateTarget.Html, SampleReport.Make(Nasty));
        page.ShouldNotContain("<script");
        page.ShouldContain("&lt;script&gt;");
        page.ShouldNotContain("\u202e");
        page.ShouldNotContain("\u001b");
    }

    [Fact]
    public void A_line_of_the_description_cannot_bring_tags_and_is_where_its_findings_point()
    {
        Report report = SampleReport.Make() with { Source = "pack: Box\r\n# " + Nasty + "\nlanguage: 1\n" };
        string page = Write(TemplateTarget.Html, report);

        page.ShouldNotContain("<script");
        page.ShouldNotContain("\u202e");
        page.ShouldNotContain("\u001b");
        page.ShouldContain("<span class=\"number\">2</span># &lt;script&gt;");
        page.ShouldContain("id=\"line-3\"");
        page.ShouldNotContain("id=\"line-4\"");
        page.ShouldContain($"href=\"#line-{report.Findings.Findings[0].At.Line}\"");
    }

    [Theory]
    [InlineData("61.3 A at 57.1 °C", "61.3\u00a0A at 57.1\u00a0°C")]
    [InlineData("10.6 .. 14.6 V", "10.6\u00a0..\u00a014.6\u00a0V")]
    [InlineData("3 Amps, 4 hats", "3 Amps, 4 hats")]
    [InlineData("4 in series", "4 in series")]
    public void A_number_in_a_table_keeps_its_unit_on_its_line(string words, string tied)
    {
        HtmlCell.Tied(words).ShouldBe(tied);
    }

    [Fact]
    public void A_title_cannot_bring_links_emphasis_or_html_into_markdown()
    {
        string text = Write(TemplateTarget.Markdown, SampleReport.Make(Nasty));
        text.ShouldNotContain("<script");
        text.ShouldContain("\\*\\*bold\\*\\*");
        text.ShouldContain("\\[link\\]");
        text.ShouldContain("\\|");
        text.ShouldNotContain("\u001b");
    }

    [Fact]
    public void A_page_asks_for_nothing_from_elsewhere()
    {
        string page = Write(TemplateTarget.Html, SampleReport.Make());
        page.ShouldNotContain("http:");
        page.ShouldNotContain("https:");
        page.ShouldNotContain("<script");
        page.ShouldNotContain("@import");
        page.ShouldNotContain("url(");
    }

    [Fact]
    public void A_template_of_the_users_own_sees_the_model()
    {
        ProblemList problems = new();
        ReportTemplate template = ReportTemplate.Read(
            "mine.txt", "{{ for r in reports }}{{ r.title }}: {{ r.findings.size }} of {{ r.counts.danger }}{{ end }}", TemplateTarget.Text, problems)!;
        template.Write([SampleReport.Make()], TextStyle.Piped, problems).ShouldBe("Market-stall power box: 5 of 1");
    }

    [Fact]
    public void A_mistake_in_a_template_is_told_with_its_place()
    {
        ProblemList problems = new();
        ReportTemplate.Read("mine.txt", "line one\n{{ for r in }}", TemplateTarget.Text, problems).ShouldBeNull();
        problems.InOrder()[0].ToString().ShouldStartWith("mine.txt:2:");
    }

    [Fact]
    public void An_unknown_name_in_a_template_is_told_with_its_place()
    {
        ProblemList problems = new();
        ReportTemplate.Read("mine.txt", "\n{{ report_of_mine }}", TemplateTarget.Text, problems)!
            .Write([SampleReport.Make()], TextStyle.Piped, problems).ShouldBeNull();
        problems.InOrder()[0].ToString().ShouldStartWith("mine.txt:2:");
    }

    [Theory]
    [InlineData("{{ include 'other.txt' }}")]
    [InlineData("{{ i = 0; while true; i = i + 1; end }}")]
    [InlineData("{{ func again(x); again(x); end; again(1) }}")]
    [InlineData("{{ date.now }}")]
    public void A_template_can_neither_read_files_nor_run_without_end_nor_ask_the_clock(string text)
    {
        ProblemList problems = new();
        ReportTemplate? template = ReportTemplate.Read("mine.txt", text, TemplateTarget.Text, problems);
        template?.Write([SampleReport.Make()], TextStyle.Piped, problems).ShouldBeNull();
        problems.IsEmpty.ShouldBeFalse();
    }

    private static string Write(TemplateTarget target, Report report)
    {
        ProblemList problems = new();
        string? text = ReportTemplate.Own(target).Write([report], TextStyle.Piped, problems);
        problems.InOrder().ShouldBeEmpty();
        return text.ShouldNotBeNull();
    }
}
