using WireCheck.Findings;

namespace WireCheck.Cli.Tests;

/// <summary>The sample of the library's page, compiled as a stranger's program would be: this project sees public names only.</summary>
public class LibrarySampleTests
{
    private static readonly DateOnly Day = new(2027, 3, 1);

    [Fact]
    public void The_sample_judges_a_box_that_passes()
    {
        Sample(Repository.File("examples", "market-stall-12v.yaml"), Day)[0].ShouldBe("Market-stall power box: Passes");
    }

    [Fact]
    public void The_sample_tells_findings_with_their_line()
    {
        string[] told = Sample(Repository.File("examples", "first-draft-12v.yaml"), Day);

        told[0].ShouldEndWith(": Dangerous");
        told.ShouldContain(line => line.StartsWith("Danger ", StringComparison.Ordinal) && line.Contains(", line "));
    }

    [Fact]
    public void The_page_shows_the_sample_as_it_is_compiled_here()
    {
        string[] lines = File.ReadAllLines(Repository.File("tests", "WireCheck.Cli.Tests", "LibrarySampleTests.cs"));
        int from = Array.FindIndex(lines, line => line.StartsWith("    private static string[] Sample(", StringComparison.Ordinal)) + 2;
        int to = Array.FindIndex(lines, from, line => line == "    }");
        IEnumerable<string> compiled = lines[from..to].Select(line => line.Length > 8 ? line[8..] : "");

        string page = File.ReadAllText(Repository.File("src", "WireCheck", "README.md"));
        page.ShouldContain("```csharp\n" + string.Join('\n', compiled) + "\n```\n");
    }

    private static string[] Sample(string file, DateOnly day)
    {
        string text = File.ReadAllText(file);
        CheckOutcome outcome = PackCheck.Standard.Check(file, text, new CheckOptions(Folder: null, Today: day));
        if (outcome.Report is not { } report)
        {
            return [.. outcome.Problems.Select(problem => problem.ToString())];
        }

        FindingCounts counts = report.Findings.Counts;
        IEnumerable<string> findings = report.Findings.Findings
            .Where(finding => finding.Waived is null)
            .Select(finding => $"{finding.Severity} {finding.Part}, line {finding.At.Line}: {finding.Message}");
        return [$"{report.PackTitle}: {counts.Verdict}", .. findings];
    }
}
