using WireCheck.Reports.Text;

namespace WireCheck.Tests.Reports;

public class TextReportTests
{
    [Fact]
    public void The_text_report_is_as_the_golden_file() =>
        Golden.ShouldMatch(Write(TextStyle.Piped), "Reports/Golden/report.txt");

    [Fact]
    public void A_clean_report_is_as_the_golden_file() =>
        Golden.ShouldMatch(Write(TextStyle.Piped, clean: true), "Reports/Golden/clean.txt");

    [Fact]
    public void No_line_is_longer_than_the_width()
    {
        foreach (int width in (int[])[60, 80, 100])
        {
            Write(new TextStyle(width, false)).Split('\n').ShouldAllBe(line => line.Length <= width);
        }
    }

    [Fact]
    public void Colour_adds_only_codes_and_the_severity_stays_a_word()
    {
        string coloured = Write(new TextStyle(100, true));

        coloured.ShouldContain("\e[1;31mDANGER\e[0m");
        System.Text.RegularExpressions.Regex.Replace(coloured, "\e\\[[0-9;]*m", "").ShouldBe(Write(TextStyle.Piped));
        Write(TextStyle.Piped).ShouldNotContain("\e");
    }

    [Theory]
    [InlineData("box\e[2Jx", "box\\u{1b}[2Jx")]
    [InlineData("line\nbreak", "line\\u{a}break")]
    [InlineData("a\u202Eb", "a\\u{202e}b")]
    [InlineData("a\u2066b", "a\\u{2066}b")]
    [InlineData("zero\u200Bwidth", "zero\\u{200b}width")]
    [InlineData("c1\u009Bm", "c1\\u{9b}m")]
    [InlineData("Büro-Kiste 2 µ", "Büro-Kiste 2 µ")]
    public void A_title_cannot_steer_the_terminal(string title, string shown) =>
        Write(TextStyle.Piped, title: title).ShouldStartWith($"{shown} (box.yaml)\n");

    [Fact]
    public void The_same_findings_give_the_same_text_twice() => Write(TextStyle.Piped).ShouldBe(Write(TextStyle.Piped));

    private static string Write(TextStyle style, string title = "Market-stall power box", bool clean = false)
    {
        using StringWriter output = new();
        TextReport.Write(output, [SampleReport.Make(title, clean)], style);
        return output.ToString();
    }
}
