using NJsonSchema;
using WireCheck.Facts.Catalogue;
using WireCheck.Rules;
using WireCheck.Text;
using YamlDotNet.Serialization;

namespace WireCheck.Tests.Rules;

public sealed class RuleSetLibraryTests : IDisposable
{
    private static readonly Position At = new("box.yaml", 3, 9);

    private readonly string _folder = Directory.CreateTempSubdirectory("rules-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    public static TheoryData<string> SetNames => [.. RuleSetLibrary.Names];

    [Theory]
    [MemberData(nameof(SetNames))]
    public void Every_set_that_comes_with_the_tool_is_without_a_problem(string name)
    {
        ProblemList problems = new();

        RuleSet? set = new RuleSetLibrary(new FactVocabulary(FactCatalogue.All)).Find(name, At, problems);
        if (set is not null)
        {
            RuleSetReader.CheckAll(set, problems);
        }

        problems.InOrder().Select(p => p.ToString()).ShouldBeEmpty();
        set.ShouldNotBeNull().Rules.ShouldNotBeEmpty();
    }

    [Fact]
    public async Task Every_rule_file_meets_its_schema()
    {
        JsonSchema schema = await JsonSchema.FromFileAsync(Path.Combine(Golden.Root, "schema", "rules.schema.json"));
        ISerializer json = new SerializerBuilder().JsonCompatible().Build();
        foreach (string file in Directory.EnumerateFiles(Path.Combine(Golden.Root, "rules", "sets"), "*.yaml", SearchOption.AllDirectories))
        {
            object? tree = new DeserializerBuilder().Build().Deserialize(await File.ReadAllTextAsync(file));

            schema.Validate(json.Serialize(tree)).ShouldBeEmpty(file);
        }

        schema.Validate("[{\"id\": \"x\"}]").ShouldNotBeEmpty();
    }

    [Fact]
    public void An_unknown_set_is_told_with_the_nearest_name()
    {
        ProblemList problems = new();

        Library().Find("portable-bx", At, problems).ShouldBeNull();

        problems.InOrder()[0].ToString().ShouldBe(
            "box.yaml:3:9: there is no rule set 'portable-bx'; did you mean 'portable-box'? A set of your own is written as a path beside the description, such as ./my-rules");
    }

    [Fact]
    public void A_set_of_the_users_own_is_a_file_or_a_folder_beside_the_description()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "mine"));
        Write("mine/b.yaml", Bench.RuleText("id: second"));
        Write("mine/a.yaml", Bench.RuleText("id: first"));
        Write("mine/notes.txt", "not a rule");
        Write("one.yaml", Bench.RuleText());
        ProblemList problems = new();

        Library().FindBeside("./mine", _folder, At, problems)!.Rules.Select(r => r.Id).ShouldBe(["first", "second"]);
        Library().FindBeside("one.yaml", _folder, At, problems)!.Rules.Select(r => r.Id).ShouldBe(["over-ampacity"]);
        problems.InOrder().ShouldBeEmpty();
    }

    [Theory]
    [InlineData("../elsewhere", "box.yaml:3:9: the rule set '../elsewhere' lies outside the description's folder; it is not read")]
    [InlineData("./mine/../../elsewhere.yaml", "box.yaml:3:9: the rule set './mine/../../elsewhere.yaml' lies outside the description's folder; it is not read")]
    [InlineData("/etc", "box.yaml:3:9: the rule set '/etc' lies outside the description's folder; it is not read")]
    [InlineData("./none", "box.yaml:3:9: there is no file or folder './none' beside the description")]
    [InlineData(".", "box.yaml:3:9: the rule set '.' lies outside the description's folder; it is not read")]
    public void A_path_that_leads_elsewhere_is_not_read(string path, string expected)
    {
        ProblemList problems = new();

        Library().FindBeside(path, _folder, At, problems).ShouldBeNull();

        problems.InOrder().Select(p => p.ToString()).ShouldBe([expected]);
    }

    [Fact]
    public void A_link_that_leads_outside_is_not_read()
    {
        string outside = Directory.CreateTempSubdirectory("outside-").FullName;
        File.WriteAllText(Path.Combine(outside, "a.yaml"), Bench.RuleText());
        Directory.CreateSymbolicLink(Path.Combine(_folder, "mine"), outside);
        File.CreateSymbolicLink(Path.Combine(_folder, "one.yaml"), Path.Combine(outside, "a.yaml"));
        ProblemList problems = new();

        Library().FindBeside("mine", _folder, At, problems).ShouldBeNull();
        Library().FindBeside("one.yaml", _folder, At, problems).ShouldBeNull();

        Directory.Delete(outside, recursive: true);
        problems.InOrder().Select(p => p.Message).ShouldBe(
        [
            "the rule set 'mine/a.yaml' lies outside the description's folder; it is not read",
            "the rule set 'one.yaml' lies outside the description's folder; it is not read",
        ]);
    }

    [Fact]
    public void A_wrong_expression_of_the_users_own_set_is_told_when_it_is_read()
    {
        Write("one.yaml", Bench.RuleText("mend: \"{{ it.nothing }}\""));
        ProblemList problems = new();

        Library().FindBeside("one.yaml", _folder, At, problems).ShouldBeNull();

        problems.InOrder().ShouldHaveSingleItem().ToString().ShouldBe("one.yaml:7:13: 'it.nothing' is no fact of a conductor");
    }

    [Theory]
    [InlineData("portable-box", false)]
    [InlineData("./mine", true)]
    [InlineData("mine.yaml", true)]
    [InlineData("..", true)]
    public void A_path_is_told_from_a_name(string written, bool isPath) => RuleSetLibrary.IsPath(written).ShouldBe(isPath);

    private static RuleSetLibrary Library() => new(Bench.Vocabulary);

    private void Write(string name, string text) => File.WriteAllText(Path.Combine(_folder, name), text);
}
