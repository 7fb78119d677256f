using System.Text.Json.Nodes;
using System.Xml.Linq;
using WireCheck.Description;
using WireCheck.Knowledge;
using WireCheck.Tests.House;

namespace WireCheck.Tests.Documentation;

/// <summary>The guides are current, and what they show works.</summary>
public sealed class GuideTests
{
    private const string Descriptions = "schema/README.md";
    private const string Rules = "rules/README.md";
    private const string Physics = "src/WireCheck/Physics/README.md";

    private static readonly DateOnly Today = new(2027, 1, 1);

    [Fact]
    public void The_guide_to_descriptions_has_every_key_of_the_schema() =>
        Guide.ShouldEndWith(Descriptions, TerminalReference.Of() + SchemaReference.Of(JsonNode.Parse(SourceTree.Read("schema/pack.schema.json"))!.AsObject()));

    [Fact]
    public void The_guide_to_rules_has_every_function_setting_rule_and_fact() => Guide.ShouldEndWith(Rules, RuleReference.Of());

    [Fact]
    public void The_guide_to_the_physics_has_every_formula_that_the_code_tells() =>
        Guide.ShouldEndWith(Physics, PhysicsReference.Of(XDocument.Load(Path.Combine(AppContext.BaseDirectory, "WireCheck.Core.xml"))));

    [Fact]
    public void The_box_of_the_guide_passes_the_check()
    {
        string text = Guide.YamlBlocks(Descriptions)[0];

        CheckOutcome outcome = PackCheck.Standard.Check("box.yaml", text, new CheckOptions(null, Today));

        outcome.Problems.ShouldBeEmpty();
        outcome.Report!.Findings.Findings.Select(f => $"{f.Rule} {f.Part}: {f.Message}").ShouldBeEmpty();
    }

    [Fact]
    public void What_the_guide_adds_to_its_box_can_be_read()
    {
        IReadOnlyList<string> blocks = Guide.YamlBlocks(Descriptions);
        blocks.Count.ShouldBeGreaterThan(1);

        foreach (string addition in blocks.Skip(1))
        {
            ReadResult result = PackReader.Read("box.yaml", blocks[0] + addition, LibraryClasses.Embedded);

            result.Problems.Select(p => p.ToString()).ShouldBeEmpty(addition);
        }
    }

    [Fact]
    public void The_rule_of_the_guide_judges_the_box_of_the_guide()
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("guide-");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "mine.yaml"), Guide.YamlBlocks(Rules)[0]);
            string text = Guide.YamlBlocks(Descriptions)[0] + "rules: [./mine.yaml]\n";

            CheckOutcome outcome = PackCheck.Standard.Check("box.yaml", text, new CheckOptions(folder.FullName, Today));

            outcome.Problems.ShouldBeEmpty();
            outcome.Report!.Findings.Findings.ShouldHaveSingleItem().Message.ShouldBe(
                Guide.YamlBlocks(Rules)[1].TrimEnd().TrimStart('#', ' '));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
