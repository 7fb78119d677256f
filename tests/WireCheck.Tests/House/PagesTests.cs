using System.Text.RegularExpressions;
using System.Xml.Linq;
using WireCheck.Reports.Templates;
using WireCheck.Reports.Text;
using WireCheck.Text;

namespace WireCheck.Tests.House;

/// <summary>The pages for people name things that exist.</summary>
public sealed partial class PagesTests
{
    private static readonly string Readme = SourceTree.Read("README.md");
    private static readonly string Developers = SourceTree.Read("DEVELOPERS.md");

    [Fact]
    public void The_two_commands_of_the_readme_name_files_that_exist()
    {
        string[] commands = [.. Readme.Split('\n').Where(line => line.StartsWith("    ", StringComparison.Ordinal)).Select(line => line.Trim())];

        commands.ShouldContain("tests/run");
        string check = commands.Single(line => line.StartsWith("dotnet run", StringComparison.Ordinal));
        string[] paths = [.. check.Split(' ').Where(word => word.Contains('/'))];
        paths.Length.ShouldBe(2);
        paths.Append("tests/run").ShouldAllBe(path => SourceTree.Has(path));
    }

    [Fact]
    public void The_finding_that_the_readme_quotes_is_in_the_report_word_for_word()
    {
        const string example = "examples/first-draft-12v.yaml";
        CheckOutcome outcome = PackCheck.Standard.Check(example, SourceTree.Read(example), new CheckOptions(null, new DateOnly(2027, 1, 1)));
        string report = ReportTemplate.Own(TemplateTarget.Text).Write([outcome.Report!], TextStyle.Piped, new ProblemList())!;
        string[] quoted = [.. Readme.Split('\n').SkipWhile(l => !l.StartsWith("    DANGER ", StringComparison.Ordinal)).TakeWhile(l => l.StartsWith("    ", StringComparison.Ordinal))];

        quoted.Length.ShouldBeGreaterThan(3);
        Words(report).ShouldContain(Words(string.Join('\n', quoted)));
    }

    /// <summary>Without line breaks, which depend on the width.</summary>
    private static string Words(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    [Fact]
    public void Every_path_that_a_page_names_exists()
    {
        IEnumerable<string> paths = NamedPath().Matches(Readme + Developers).Select(m => m.Groups[1].Value);

        paths.Where(path => !SourceTree.Has(path)).ShouldBeEmpty();
    }

    [Fact]
    public void Every_folder_of_the_library_is_on_the_map()
    {
        string library = Path.Combine(Golden.Root, "src", "WireCheck");
        IEnumerable<string> folders = Directory.EnumerateDirectories(library).Select(f => Path.GetFileName(f)).Where(f => f is not ("bin" or "obj"));

        folders.Where(folder => !Developers.Contains($"{folder}/", StringComparison.Ordinal)).ShouldBeEmpty();
    }

    [Fact]
    public void Every_package_is_told_with_its_reason()
    {
        IEnumerable<string> packages = XDocument.Parse(SourceTree.Read("src/Directory.Packages.props"))
            .Descendants("PackageVersion").Select(e => e.Attribute("Include")!.Value);

        packages.Where(package => !Developers.Contains($"| {package} |", StringComparison.Ordinal)).ShouldBeEmpty();
    }

    [GeneratedRegex("`((?:src|tests|rules|schema|examples)/[A-Za-z0-9_./-]+)`")]
    private static partial Regex NamedPath();
}
