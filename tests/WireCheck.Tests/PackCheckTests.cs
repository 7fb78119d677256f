using WireCheck.Text;

namespace WireCheck.Tests;

public class PackCheckTests
{
    private const string Cells = "surroundings: {ambient: {from: 0 °C, to: 35 °C}}\ncells:\n  bank: {part: lfp-prismatic-100ah, series: 4, link_resistance: 0.1 mohm}\n";

    private static readonly CheckOptions Options = new(null, new DateOnly(2027, 1, 1));

    private static readonly PackCheck Unsolved = new(_ => throw new InvalidOperationException("must not be reached"));

    [Fact]
    public void A_description_that_cannot_be_read_gives_its_problems_and_no_report()
    {
        CheckOutcome outcome = Unsolved.Check("box.yaml", "pack: [", Options);

        outcome.Report.ShouldBeNull();
        outcome.Problems.ShouldNotBeEmpty();
        outcome.Problems.ShouldAllBe(p => p.Position.File == "box.yaml");
    }

    [Fact]
    public void Unknown_rule_sets_and_settings_are_told_together_before_anything_is_solved()
    {
        string text = "pack: Box\nlanguage: 1\nrules: [portable-bax]\nsettings: {drop_limt: 3 %}\n" + Cells;

        CheckOutcome outcome = Unsolved.Check("box.yaml", text, Options);

        outcome.Report.ShouldBeNull();
        outcome.Problems.Count.ShouldBe(2, string.Join("\n", outcome.Problems));
        outcome.Problems[0].ToString().ShouldStartWith("box.yaml:3:9: there is no rule set 'portable-bax'; did you mean 'portable-box'?");
        outcome.Problems[1].ToString().ShouldBe("box.yaml:4:23: 'drop_limt' is no setting of the rule sets in use");
    }

    [Fact]
    public void A_box_without_rule_sets_is_judged_by_the_default_one_and_reported()
    {
        CheckOutcome outcome = PackCheck.Standard.Check("box.yaml", "pack: Box\nlanguage: 1\n" + Cells, Options);

        outcome.Problems.ShouldBeEmpty();
        outcome.Report.ShouldNotBeNull().PackTitle.ShouldBe("Box");
        outcome.Report.Cautions.ShouldNotBeEmpty();
    }

    [Fact]
    public void A_path_is_not_followed_when_the_description_has_no_folder()
    {
        CheckOutcome outcome = Unsolved.Check("box.yaml", "pack: Box\nlanguage: 1\nrules: [./mine]\n" + Cells, Options);

        outcome.Problems.ShouldHaveSingleItem().Message.ShouldStartWith("there is no rule set './mine'");
    }
}
