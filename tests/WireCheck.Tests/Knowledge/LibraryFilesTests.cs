using WireCheck.Knowledge;
using WireCheck.Text;

namespace WireCheck.Tests.Knowledge;

/// <summary>Every table and part file of the tool loads, and all its values are sourced.</summary>
public sealed class LibraryFilesTests
{
    private static readonly KnowledgeFiles Files = KnowledgeFiles.Embedded();

    public static TheoryData<string> AllFiles() => [.. Files.In("rules/tables/"), .. Files.In("rules/parts/")];

    [Fact]
    public void There_are_tables_and_parts()
    {
        Files.In("rules/tables/").Count.ShouldBeGreaterThan(20);
        Files.In("rules/parts/").Count.ShouldBeGreaterThan(15);
    }

    [Theory]
    [MemberData(nameof(AllFiles))]
    public void Every_file_names_a_source_with_a_standing_and_none_is_malformed(string file)
    {
        int sources = CountSources(Files.Read(file).Map);
        sources.ShouldBeGreaterThan(0, file);
    }

    [Theory]
    [MemberData(nameof(AllFiles))]
    public void Every_set_of_values_stands_beside_a_source(string file) => RequireSources(Files.Read(file).Map);

    [Theory]
    [MemberData(nameof(AllFiles))]
    public void What_is_recalled_is_not_called_published(string file)
    {
        foreach (YamlMap source in SourcesOf(Files.Read(file).Map))
        {
            TableNode node = new(source);
            string text = node.Word("work") + node.Word("clause");
            if (node.Word("standing") == "published")
            {
                text.ShouldNotContain("recall");
                text.ShouldNotContain("assumed");
                text.ShouldNotContain("computed");
            }
        }
    }

    [Fact]
    public void Every_table_loads_as_typed_values()
    {
        Library library = Library.Embedded;
        library.Materials.Names.ShouldContain("copper-clad-aluminium");
        library.Insulation.Names.ShouldContain("pvc-105");
        library.Joints.Names.ShouldContain("crimped-ring");
        library.Fuses.Names.ShouldContain("strip-sf30");
        library.Chemistries.Names.ShouldBe(["lfp"]);
        library.PortContacts.Names.ShouldContain("vehicle-socket");
        library.Assumptions.Names.ShouldContain("charge_empty");
        library.VoltageDrops["feeder"].Value.ShouldBe(0.03, 1e-12);
        library.StudRules["most_on_a_stud"].Value.ShouldBe(4);
        library.StandardRatings.Amps.Count.ShouldBeGreaterThan(20);
        library.Switches.HoursFactor.ShouldBe(0.75);
        library.Busbars.BoxedIn.ShouldBe(2e6);
        library.Ampacity.Ids.Count.ShouldBeGreaterThanOrEqualTo(10);
        foreach (string id in library.Ampacity.Ids)
        {
            library.Ampacity.Find(id)!.Id.ShouldBe(id);
        }
    }

    [Fact]
    public void A_malformed_table_is_named_with_file_line_and_column()
    {
        Library library = Library.With(new Dictionary<string, string>
        {
            ["rules/tables/materials.yaml"] = "table: materials\nmaterials:\n  - material: copper\n    title: Copper\n",
        });
        Should.Throw<KnowledgeException>(() => library.Materials).Message.ShouldBe("rules/tables/materials.yaml:3:5: 'values' is missing");
    }

    [Fact]
    public void A_standing_that_is_none_is_refused()
    {
        Library library = Library.With(new Dictionary<string, string>
        {
            ["rules/tables/stud-rules.yaml"] =
                "values:\n  - {name: a, value: '4', means: b, source: {work: c, clause: d, standing: certain}}\n",
        });
        Should.Throw<KnowledgeException>(() => library.StudRules).Message
            .ShouldBe("rules/tables/stud-rules.yaml:2:45: 'certain' is no standing; use one of published, common practice, from memory");
    }

    [Fact]
    public void Text_that_is_no_yaml_is_named()
    {
        Library library = Library.With(new Dictionary<string, string> { ["rules/tables/materials.yaml"] = "a: [1" });
        Should.Throw<KnowledgeException>(() => library.Materials).Message.ShouldStartWith("rules/tables/materials.yaml:");
    }

    private static int CountSources(YamlNode node) => SourcesOf(node).Select(s => ReadSource(s).ToString()).Count(text => text.Length > 0);

    private static Source ReadSource(YamlMap source) =>
        new TableNode(new YamlMap(source.Position, [new YamlEntry(new YamlScalar(source.Position, "source", false), source)])).Source("source");

    private static IEnumerable<YamlMap> SourcesOf(YamlNode node) => node switch
    {
        YamlMap map => map.Entries.SelectMany(e => IsSource(e) ? [(YamlMap)e.Value] : SourcesOf(e.Value)),
        YamlList list => list.Items.SelectMany(SourcesOf),
        _ => [],
    };

    private static bool IsSource(YamlEntry entry) =>
        (entry.Key.Text == "source" || entry.Key.Text.EndsWith("_source", StringComparison.Ordinal)) && entry.Value is YamlMap;

    private static void RequireSources(YamlNode node)
    {
        if (node is YamlList list)
        {
            foreach (YamlNode item in list.Items)
            {
                RequireSources(item);
            }
        }

        if (node is not YamlMap map)
        {
            return;
        }

        foreach (YamlEntry entry in map.Entries)
        {
            if (entry.Key.Text is "values" or "value" or "rows" && entry.Value is not YamlList)
            {
                map.Find("source").ShouldNotBeNull($"{entry.Key.Position}: no source beside it");
            }

            RequireSources(entry.Value);
        }
    }
}
