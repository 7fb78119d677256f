using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using WireCheck.Findings;
using WireCheck.Rules;
using WireCheck.Sizing;
using WireCheck.Text;

namespace WireCheck.Tests.Sizing;

/// <summary>A fault at a load that only a fuse too large for its wire would take away.</summary>
public sealed class SetAsideTests
{
    private static readonly int[] Ratings = [10, 20, 40, 80];
    private static readonly int[] Good = [15, 25, 30, 35];

    [Fact]
    public void A_fuse_is_not_raised_past_its_wire_for_a_voltage_at_a_load()
    {
        Sized sized = new Sizer([Fuse(), FakeJudge.Wire(1, 1, [1, 2, 3, 4])], new FuseJudge(arrives: 80, steady: 10)).Choose();

        sized.Choice.ShouldBe([0, 0]);
        sized.Whole.Standing.Select(f => f.Rule).ShouldBe(["drop-causes-cut-out"]);
    }

    [Fact]
    public void A_fuse_and_its_wire_are_raised_together_for_a_voltage_that_arrives_then()
    {
        Sized sized = new Sizer([Fuse(), FakeJudge.Wire(1, 1, [1, 2, 3, 4])], new FuseJudge(arrives: 20, steady: 10)).Choose();

        sized.Choice.ShouldBe([1, 1]);
        sized.Whole.Standing.ShouldBeEmpty();
    }

    [Fact]
    public void A_fuse_that_would_blow_in_use_is_not_chosen_to_spare_a_wire()
    {
        Sized sized = new Sizer([Fuse(), FakeJudge.Wire(1, 1, [1, 2, 3, 4])], new FuseJudge(arrives: 10, steady: 40)).Choose();

        sized.Choice[0].ShouldBe(2);
        sized.Whole.Standing.Select(f => f.Rule).ShouldBe(["fuse-over-conductor"]);
    }

    private static SizedValue Fuse() => new()
    {
        Section = "fuses",
        Id = "f",
        Kind = "fuse",
        Keys = ["rating"],
        PartIds = ["f"],
        Written = "",
        Options = [.. Ratings.Select((r, i) => new SizeOption(FormattableString.Invariant($"{r} A"), i))],
    };

    /// <summary>
    /// A load that keeps running behind a fuse of so many amperes or more, a fuse that bears its current from so many on, and a wire
    /// that is good for its fuse or not.
    /// </summary>
    private sealed class FuseJudge(int arrives, int steady) : IBoxJudge
    {
        private static readonly IReadOnlyList<Rule> Rules = new RuleSetLibrary(new FactVocabulary(FactCatalogue.All))
            .Find("portable-box", default, new ProblemList())!.Rules;

        public Trial Judge(IReadOnlyList<SizedValue> values, IReadOnlyList<string> texts, bool whole)
        {
            int[] choice = [.. values.Select((v, i) => v.Options.ToList().FindIndex(o => o.Text == texts[i]))];
            int rating = Ratings[choice[0]];
            List<Finding> findings = [];
            if (rating < arrives)
            {
                findings.Add(Of("drop-causes-cut-out", "load", "heater", ("drop_part", "f")));
            }

            if (rating < steady)
            {
                findings.Add(Of("fuse-below-steady-load", "fuse", "f"));
            }

            if (rating > Good[choice[1]])
            {
                findings.Add(Of("fuse-over-conductor", "fuse", "f", ("weakest", "w1")));
            }

            return new Trial(new FindingList(findings, [], [], new FindingCounts(0, 0, 0, 0, 0)), new Judgements([], [], []));
        }

        private static Finding Of(string id, string kind, string part, params (string Name, string Word)[] named)
        {
            Rule rule = Rules.First(r => r.Id == id);
            Severity severity = id == "fuse-over-conductor" ? Severity.Danger : Severity.Fault;
            return new Finding(
                id, rule.Title, severity, part, kind, "", "", [.. named.Select(n => new JudgedValue(n.Name, n.Word, "", null))], null, default,
                rule.Why, rule.Source, [], null);
        }
    }
}
