using WireCheck.Knowledge;
using WireCheck.Text;

namespace WireCheck.Tests.House;

/// <summary>No number without its source: in the tables and part classes, and in the rules and their settings.</summary>
public sealed class SourcedValuesTests
{
    /// <summary>What makes a mapping one that holds a value or a judgement.</summary>
    private static readonly string[] Holding = ["value", "values", "rows", "factors", "require"];

    private static readonly KnowledgeFiles Files = KnowledgeFiles.Embedded();

    public static TheoryData<string> TableFiles => [.. Files.In("rules/tables/"), .. Files.In("rules/parts/")];

    public static TheoryData<string> RuleFiles => [.. Files.In("rules/")];

    [Theory]
    [MemberData(nameof(RuleFiles))]
    public void Every_value_and_every_rule_has_a_source_with_a_standing(string file)
    {
        ProblemList problems = new();
        YamlNode? tree = YamlReader.Read(file, SourceTree.Read(file), YamlLimits.Default, problems);

        problems.IsEmpty.ShouldBeTrue();
        Unsourced(tree.ShouldNotBeNull(), sourced: false).ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(TableFiles))]
    public void Every_number_of_a_table_stands_below_a_source(string file)
    {
        ProblemList problems = new();
        YamlNode? tree = YamlReader.Read(file, SourceTree.Read(file), YamlLimits.Default, problems);

        UnsourcedNumbers(tree.ShouldNotBeNull()).ShouldBeEmpty();
    }

    private static IEnumerable<string> UnsourcedNumbers(YamlNode node) => node switch
    {
        YamlScalar { Text: [>= '0' and <= '9', ..] } number => [$"{number.Position}: {number.Text}"],
        YamlList list => list.Items.SelectMany(UnsourcedNumbers),
        YamlMap map when !map.Entries.Any(IsSource) => map.Entries.SelectMany(e => UnsourcedNumbers(e.Value)),
        _ => [],
    };

    private static IEnumerable<string> Unsourced(YamlNode node, bool sourced)
    {
        if (node is YamlList list)
        {
            return list.Items.SelectMany(item => Unsourced(item, sourced));
        }

        if (node is not YamlMap map)
        {
            return [];
        }

        bool here = sourced || map.Entries.Any(IsSource);
        string[] bare = here ? [] : [.. map.Entries.Where(e => Holding.Contains(e.Key.Text) && e.Value is not YamlList { Items: [YamlMap, ..] })
            .Select(e => $"{e.Key.Position}: {e.Key.Text}")];
        return bare.Concat(map.Entries.SelectMany(e => Unsourced(e.Value, here)));
    }

    private static bool IsSource(YamlEntry entry) =>
        (entry.Key.Text == "source" || entry.Key.Text.EndsWith("_source", StringComparison.Ordinal))
        && entry.Value is YamlMap source
        && source.Find("work") is not null
        && source.Find("standing") is YamlScalar standing
        && StandingWords.Find(standing.Text) is not null;
}
