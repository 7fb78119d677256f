namespace WireCheck.Tests.House;

/// <summary>What lies where, and how long it is.</summary>
public sealed class FilesTests
{
    /// <summary>One idea to a file: a file of more lines than this holds two.</summary>
    private const int MostLines = 350;

    private static readonly string[] TopLevel =
        ["DEVELOPERS.md", "LICENSE", "README.md", "WireCheck.sln", "examples", "rules", "schema", "src", "tests"];

    [Fact]
    public void No_source_file_is_longer_than_one_idea()
    {
        SourceTree.Files("src").Concat(SourceTree.Files("tests"))
            .Where(file => File.ReadLines(Path.Combine(Golden.Root, file)).Count() > MostLines)
            .ShouldBeEmpty();
    }

    [Fact]
    public void The_top_level_holds_what_a_stranger_needs_and_no_more()
    {
        // TestResults is what the test runner leaves when it is asked for a log.
        Directory.EnumerateFileSystemEntries(Golden.Root).Select(e => Path.GetFileName(e))
            .Where(name => !name.StartsWith('.') && name != "TestResults")
            .Order(StringComparer.Ordinal).ShouldBe(TopLevel);
    }

    [Fact]
    public void No_warning_is_switched_off_and_nothing_is_left_for_later()
    {
        // Put together here, so that this file does not find itself.
        string[] unwanted = ["#" + "pragma warning", "TO" + "DO", "FIX" + "ME", "Skip" + " = "];

        SourceTree.Files("src").Concat(SourceTree.Files("tests"))
            .Where(file => unwanted.Any(word => SourceTree.Read(file).Contains(word, StringComparison.Ordinal)))
            .ShouldBeEmpty();
    }

    [Fact]
    public void Each_example_tells_its_purpose_in_the_first_line()
    {
        foreach (string file in Directory.EnumerateFiles(Path.Combine(Golden.Root, "examples"), "*.yaml"))
        {
            File.ReadLines(file).First().ShouldStartWith("# ", Case.Sensitive, file);
        }
    }
}
