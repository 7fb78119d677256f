using WireCheck.Description;
using WireCheck.Text;

namespace WireCheck.Tests.Description;

public sealed class SchemaCheckTests
{
    [Fact]
    public void What_does_not_fit_is_told_with_its_place_its_meaning_and_an_example()
    {
        Check("pack: Box\nlanguage: 1\nsurroundings: {ambient: 0 .. 35 °C}\ncells: {}\nfuses:\n  main: {rating: 20}\n").ShouldBe(
            ["f:6:18: 'fuses.main.rating' does not fit the schema of descriptions; it is: Rated current, such as 80 A"]);
    }

    [Fact]
    public void A_key_that_is_missing_is_told_at_the_start()
    {
        Check("pack: Box\nlanguage: 1\nsurroundings: {ambient: 0 .. 35 °C}\n").Single().ShouldStartWith("f:1:1: 'cells' does not fit");
    }

    [Fact]
    public void What_is_already_told_is_not_told_again()
    {
        ProblemList problems = new();
        YamlMap root = YamlReader.ReadMap("f", "pack: Box\nlanguage: 1\nsurroundings: {ambient: 0 .. 35 °C}\ncells: {}\nfuses: {main: {rating: 20}}\n", YamlLimits.Default, problems)!;
        problems.Add(new Position("f", 5, 24), "told before");

        SchemaCheck.Check(root, problems);

        problems.InOrder().Select(p => p.Message).ShouldBe(["told before"]);
    }

    private static IEnumerable<string> Check(string text)
    {
        ProblemList problems = new();
        SchemaCheck.Check(YamlReader.ReadMap("f", text, YamlLimits.Default, problems)!, problems);
        return problems.InOrder().Select(p => p.ToString());
    }
}
