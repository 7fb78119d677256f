using WireCheck.Findings;

namespace WireCheck.Tests.Rules;

/// <summary>The example of a set of the user's own, as the README shows it.</summary>
public sealed class HouseRulesExampleTests
{
    private static readonly string Folder = Path.Combine(Golden.Root, "examples", "house-rules");

    [Fact]
    public void The_house_judges_beside_the_set_that_comes_with_the_tool()
    {
        Finding finding = Check(Text).ShouldHaveSingleItem();

        finding.Rule.ShouldBe("house-fuse-without-spare");
        finding.Part.ShouldBe("f-out");
        finding.Source.Work.ShouldBe("Rules of the workshop");
    }

    [Fact]
    public void A_setting_of_the_house_is_overridden_like_any_other() =>
        Check(Text.Replace("language: 1\n", "language: 1\nsettings: {house_fuse_share: 99 %}\n", StringComparison.Ordinal))
            .Where(f => f.Rule.StartsWith("house", StringComparison.Ordinal)).ShouldBeEmpty();

    [Fact]
    public void Sets_of_several_trades_judge_at_once()
    {
        string text = Text.Replace("./house.yaml", "small-craft-us, small-craft-iso, aircraft-handbook", StringComparison.Ordinal);

        // Single wires are thinner than the handbook's bundles ask for, and 18 AWG is less than 1 mm²; nothing else of the three is broken.
        Check(text).Select(f => f.Rule).Distinct().ShouldBeSubsetOf(["conductor-over-table-11-9", "conductor-under-1-mm2"]);
    }

    private static string Text => File.ReadAllText(Path.Combine(Folder, "workshop-box.yaml"));

    private static IReadOnlyList<Finding> Check(string text)
    {
        CheckOutcome outcome = PackCheck.Standard.Check("workshop-box.yaml", text, new CheckOptions(Folder, new DateOnly(2027, 1, 1)));
        outcome.Problems.Select(p => p.ToString()).ShouldBeEmpty();
        return outcome.Report!.Findings.Findings;
    }
}
