using WireCheck.Facts.Catalogue;
using WireCheck.Rules;
using WireCheck.Text;

namespace WireCheck.Tests.Rules;

/// <summary>Every rule of every set has a folder with a good and a bad box, and every folder has a rule.</summary>
public class CaseFolderTests
{
    /// <summary>Rules for which no box is known that reaches them; their tests make the facts by hand.</summary>
    internal static readonly string[] WithoutBox = ["state-not-solved"];

    private static readonly string[] Files = ["bad.yaml", "expect.txt", "good.yaml"];

    internal static string Folder { get; } = Path.Combine(Golden.Root, "tests", "WireCheck.Tests", "Rules", "Cases");

    internal static IReadOnlyList<string> Names { get; } =
        [.. Directory.EnumerateDirectories(Folder).Select(d => Path.GetFileName(d)!).Order(StringComparer.Ordinal)];

    [Fact]
    public void Every_rule_has_a_folder_and_every_folder_a_rule()
    {
        ProblemList problems = new();
        RuleSetLibrary library = new(new FactVocabulary(FactCatalogue.All));
        IEnumerable<string> rules = RuleSetLibrary.Names
            .SelectMany(name => library.Find(name, new Position("test", 1, 1), problems)!.Rules)
            .Select(rule => rule.Id).Distinct().Except(WithoutBox).Order(StringComparer.Ordinal);
        Names.ShouldBe(rules.ToArray());
    }

    [Fact]
    public void Every_folder_holds_a_good_box_a_bad_box_and_what_the_bad_one_must_say()
    {
        foreach (string name in Names)
        {
            Directory.EnumerateFiles(Path.Combine(Folder, name)).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)
                .ToArray().ShouldBe(Files, ignoreOrder: false, customMessage: name);
            File.ReadAllLines(Path.Combine(Folder, name, "expect.txt")).Length.ShouldBeGreaterThanOrEqualTo(2, name);
        }
    }
}
