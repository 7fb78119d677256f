using WireCheck.Text;

namespace WireCheck.Tests.Text;

public sealed class YamlBoundsTests
{
    [Fact]
    public void A_scalar_knows_whether_it_was_quoted_and_whether_it_is_there()
    {
        YamlMap map = Read("a: \"\"\nb:\nc: 'x'\nd: x\n").ShouldNotBeNull();

        Scalar(map, "a").IsEmpty.ShouldBeFalse();
        Scalar(map, "b").IsEmpty.ShouldBeTrue();
        Scalar(map, "c").Quoted.ShouldBeTrue();
        Scalar(map, "d").Quoted.ShouldBeFalse();
    }

    [Fact]
    public void An_alias_stands_for_its_anchor()
    {
        YamlMap map = Read("a: &x {v: 1}\nb: *x\n").ShouldNotBeNull();

        map.Find("b").ShouldBeSameAs(map.Find("a"));
    }

    [Fact]
    public void Every_duplicate_key_is_told_with_the_line_of_the_first()
    {
        Problems("a: 1\na: 2\nb: {c: 1, c: 2}\n").ShouldBe(
        [
            "t.yaml:2:1: 'a' stands twice in this mapping; it stood first in line 1",
            "t.yaml:3:11: 'c' stands twice in this mapping; it stood first in line 3",
        ]);
    }

    [Fact]
    public void Aliases_of_aliases_cannot_grow_without_bound()
    {
        string bomb = "a: &a [x, x, x, x, x, x, x, x, x, x]\n";
        for (char c = 'b'; c <= 'j'; c++)
        {
            string one = $"*{(char)(c - 1)}";
            bomb += $"{c}: &{c} [{string.Join(", ", Enumerable.Repeat(one, 10))}]\n";
        }

        string problem = Problems(bomb).ShouldHaveSingleItem();
        problem.ShouldContain("more than 1000000 values, aliases followed");
    }

    [Fact]
    public void An_anchor_cannot_hold_itself() =>
        Problems("a: &a [*a]\n").ShouldHaveSingleItem().ShouldContain("names no anchor before it");

    [Fact]
    public void Nesting_is_bounded()
    {
        Problems($"a: {new string('[', 31)}{new string(']', 31)}\n").ShouldBeEmpty();
        Problems($"a: {new string('[', 32)}{new string(']', 32)}\n").ShouldHaveSingleItem().ShouldContain("deeper than 32 levels");
        Problems(new string('[', 100_000)).ShouldHaveSingleItem().ShouldContain("deeper than 32 levels");
    }

    [Fact]
    public void A_file_is_bounded_in_characters()
    {
        ProblemList problems = new();
        YamlReader.ReadMap("t.yaml", "a: 12345", new YamlLimits(5, 32, 100), problems).ShouldBeNull();

        problems.InOrder().ShouldHaveSingleItem().Message.ShouldBe("the file is too large: 8 characters, at most 5 are read");
    }

    [Theory]
    [InlineData("", "the file is empty")]
    [InlineData("# nothing\n", "the file is empty")]
    [InlineData("- a\n", "the file must be a mapping of keys to values; it is a list")]
    [InlineData("a\n", "the file must be a mapping of keys to values; it is the value 'a'")]
    [InlineData("a:\n\tb: 1\n", "this line is indented with a tab; YAML takes only spaces")]
    [InlineData("\0\u0001\u0002", "this is not a text file: it holds binary data")]
    [InlineData("a: 1\n---\nb: 1\n", "only one document may stand in a file")]
    [InlineData("? [a]\n: 1\n", "a key must be a single word; here stands a list")]
    public void A_file_that_is_no_mapping_gets_one_plain_line(string text, string message) =>
        Problems(text).ShouldHaveSingleItem().ShouldEndWith($": {message}");

    private static YamlMap? Read(string text) => YamlReader.ReadMap("t.yaml", text, YamlLimits.Default, new ProblemList());

    private static YamlScalar Scalar(YamlMap map, string key) => map.Find(key).ShouldBeOfType<YamlScalar>();

    private static IReadOnlyList<string> Problems(string text)
    {
        ProblemList problems = new();
        YamlReader.ReadMap("t.yaml", text, YamlLimits.Default, problems);
        return [.. problems.InOrder().Select(p => p.ToString())];
    }
}
