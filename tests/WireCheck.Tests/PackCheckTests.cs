using WireCheck.Description;
using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using WireCheck.Text;

namespace WireCheck.Tests;

public class PackCheckTests
{
    private static readonly Position At = new("box.yaml", 3, 9);
    private static readonly CheckOptions Options = new(null, new DateOnly(2027, 1, 1));

    [Fact]
    public void A_description_that_cannot_be_read_gives_its_problems_and_no_report()
    {
        PackCheck check = new(
            (_, _, problems) =>
            {
                problems.Add(At, "wrong");
                return null;
            },
            _ => throw new InvalidOperationException("must not be reached"));

        CheckOutcome outcome = check.Check("box.yaml", "", Options);

        outcome.Report.ShouldBeNull();
        outcome.Problems.Select(p => p.ToString()).ShouldBe(["box.yaml:3:9: wrong"]);
    }

    [Fact]
    public void Unknown_rule_sets_and_settings_are_told_together_before_anything_is_solved()
    {
        Pack pack = MakePack([Given("portable-bax")], new() { ["drop_limt"] = new YamlScalar(new Position("box.yaml", 4, 20), "3 %", false) });
        PackCheck check = new((_, _, _) => pack, _ => throw new InvalidOperationException("must not be reached"));

        CheckOutcome outcome = check.Check("box.yaml", "", Options);

        outcome.Report.ShouldBeNull();
        outcome.Problems.Count.ShouldBe(2);
        outcome.Problems[0].Message.ShouldStartWith("there is no rule set 'portable-bax'; did you mean 'portable-box'?");
        outcome.Problems[1].Message.ShouldBe("'drop_limt' is no setting of the rule sets in use");
    }

    [Fact]
    public void A_box_without_rule_sets_is_judged_by_the_default_one_and_reported()
    {
        PackCheck check = new((_, _, _) => MakePack([], []), _ => new FactTable(new FactSubject(FactCatalogue.PackKind, "pack", At), []));

        CheckOutcome outcome = check.Check("box.yaml", "", Options);

        outcome.Problems.ShouldBeEmpty();
        outcome.Report.ShouldNotBeNull().PackTitle.ShouldBe("Box");
        outcome.Report.Cautions.ShouldNotBeEmpty();
    }

    [Fact]
    public void A_path_is_not_followed_when_the_description_has_no_folder()
    {
        PackCheck check = new((_, _, _) => MakePack([Given("./mine")], []), _ => throw new InvalidOperationException("must not be reached"));

        check.Check("box.yaml", "", Options).Problems.ShouldHaveSingleItem().Message.ShouldStartWith("there is no rule set './mine'");
    }

    private static Given<string> Given(string value) => new(value, At, Origin.Written);

    private static Pack MakePack(IReadOnlyList<Given<string>> sets, Dictionary<string, YamlScalar> settings) => new()
    {
        File = "box.yaml",
        Title = Given("Box"),
        RuleSets = sets,
        Settings = settings,
        Surroundings = null!,
        Parts = [],
        Conductors = [],
    };
}
