using WireCheck.Description;
using WireCheck.Facts;
using WireCheck.Findings;
using WireCheck.Rules;
using WireCheck.Tests.Rules;
using WireCheck.Text;

namespace WireCheck.Tests.Findings;

public class FindingListTests
{
    private static readonly DateOnly Today = new(2027, 3, 1);

    private const string WaiverRules = """
        - id: waiver-expired
          for: waiver
          severity: advice
          title: Expired
          require: "!it.expired"
          says: "{{ it.id }} ended {{ it.until }}"
          mend: Renew it.
          why: It ended.
          source: {work: A book, standing: from memory}
        - id: waiver-matches-nothing
          for: waiver
          severity: advice
          title: Nothing
          require: it.matches > 0
          says: "{{ it.id }} matches nothing{{ if !it.known_rule }}; nearest {{ it.nearest_rule }}{{ end }}"
          mend: Take it out.
          why: It misleads.
          source: {work: A book, standing: from memory}

        """;

    [Fact]
    public void Worst_comes_first_then_the_order_of_rules_and_parts_and_waived_last()
    {
        string text = Bench.RuleText("id: first", "severity: advice") + Bench.RuleText("id: second", "severity: danger")
            + Bench.RuleText("id: third", "severity: fault");

        FindingList list = Make(text, [Waive("second", "w2")], Bench.Conductor("w2", 60, 50), Bench.Conductor("w1", 60, 50));

        list.Findings.Select(f => $"{f.Rule} {f.Part}")
            .ShouldBe(["second w1", "third w2", "third w1", "first w2", "first w1", "second w2"]);
        list.Counts.ShouldBe(new FindingCounts(1, 2, 2, 1, 0));
    }

    [Fact]
    public void A_waiver_that_holds_takes_a_finding_out_of_the_verdict_and_keeps_its_reason()
    {
        FindingList list = Make(Bench.RuleText(), [Waive("over-ampacity", "w1", Today)], Bench.Conductor("w1", 60, 50));

        list.Findings.ShouldHaveSingleItem().Waived.ShouldBe(new Waived("because", Today));
        list.Counts.Verdict.ShouldBe(Verdict.Passes);
    }

    [Fact]
    public void A_waiver_without_a_part_holds_for_every_part()
    {
        FindingList list = Make(Bench.RuleText(), [Waive("over-ampacity", null)], Bench.Conductor("w1", 60, 50), Bench.Conductor("w2", 60, 50));

        list.Counts.Waived.ShouldBe(2);
    }

    [Fact]
    public void A_waiver_whose_last_day_has_passed_lets_the_finding_stand_and_is_told()
    {
        FindingList list = Make(Bench.RuleText(), [Waive("over-ampacity", "w1", Today.AddDays(-1))], Bench.Conductor("w1", 60, 50));

        list.Findings.Select(f => f.Rule).ShouldBe(["over-ampacity", "waiver-expired"]);
        list.Findings[0].Waived.ShouldBeNull();
        list.Findings[1].Message.ShouldBe("over-ampacity on w1 ended 2027-02-28");
        list.Findings[1].At.Line.ShouldBe(7);
        list.Counts.Verdict.ShouldBe(Verdict.Dangerous);
    }

    [Fact]
    public void A_waiver_that_accepts_nothing_is_told_with_the_nearest_rule()
    {
        FindingList list = Make(Bench.RuleText(), [Waive("over-ampacity", "w9"), Waive("over-ampacty", "w1")], Bench.Conductor("w1", 40, 50));

        list.Findings.Select(f => f.Message)
            .ShouldBe(["over-ampacity on w9 matches nothing", "over-ampacty on w1 matches nothing; nearest over-ampacity"]);
        list.Counts.Verdict.ShouldBe(Verdict.PassesWithAdvice);
    }

    [Fact]
    public void A_waiver_of_a_daisy_chain_holds_for_each_of_its_legs_and_for_nothing_else()
    {
        FindingList list = Make(
            Bench.RuleText(), [Waive("over-ampacity", "w9")], Bench.Conductor("w9/1", 60, 50), Bench.Conductor("w9/2", 60, 50), Bench.Conductor("w99", 60, 50));

        list.Findings.Where(f => f.Waived is not null).Select(f => f.Part).ShouldBe(["w9/1", "w9/2"]);
        list.Findings.Where(f => f.Waived is null).Select(f => $"{f.Rule} {f.Part}").ShouldBe(["over-ampacity w99"]);
    }

    [Fact]
    public void The_nearest_margins_are_the_five_highest_shares_one_for_each_rule()
    {
        string text = string.Concat(Enumerable.Range(1, 7).Select(i => Bench.RuleText($"id: r{i}", $"require: it.current * {i} <= it.ampacity * 10")));

        FindingList list = Make(text, [], Bench.Conductor("w1", 30, 50), Bench.Conductor("w2", 40, 50));

        list.NearestMargins.Select(m => m.Rule.Id).ShouldBe(["r7", "r6", "r5", "r4", "r3"]);
        list.NearestMargins[0].Subject.Id.ShouldBe("w2");
        list.NearestMargins[0].Share.ShouldBe(0.56, 1e-12);
    }

    [Theory]
    [InlineData(1, 1, 1, Verdict.Dangerous)]
    [InlineData(0, 1, 1, Verdict.Faulty)]
    [InlineData(0, 0, 1, Verdict.PassesWithAdvice)]
    [InlineData(0, 0, 0, Verdict.Passes)]
    public void The_verdict_is_the_worst_that_stands(int danger, int fault, int advice, Verdict verdict) =>
        new FindingCounts(danger, fault, advice, 3, 2).Verdict.ShouldBe(verdict);

    [Fact]
    public void A_threshold_counts_its_own_severity_and_worse()
    {
        FindingCounts counts = new(1, 2, 4, 8, 16);

        counts.AtLeast(Severity.Danger).ShouldBe(1);
        counts.AtLeast(Severity.Fault).ShouldBe(3);
        counts.AtLeast(Severity.Advice).ShouldBe(7);
    }

    private static FindingList Make(string rules, IReadOnlyList<Waiver> waivers, params FactSubject[] subjects)
    {
        ProblemList problems = new();
        FactVocabulary vocabulary = new([Bench.Current, Bench.Ampacity, .. WaiverFacts.All]);
        RuleSet set = new RuleSetReader(vocabulary, _ => null, problems).Read("bench", [new RuleFile("bench.yaml", rules + WaiverRules)])!;
        RuleSetReader.CheckAll(set, problems);
        Judgements judgements = RuleEngine.Judge(new FactTable(Bench.Pack, subjects), [set], new Dictionary<string, double>(), problems);
        FindingList list = FindingList.Make(judgements, waivers, Bench.Pack, [set], new Dictionary<string, double>(), Today, problems);
        problems.InOrder().ShouldBeEmpty();
        return list;
    }

    private static Waiver Waive(string rule, string? part, DateOnly? until = null)
    {
        Position at = new("box.yaml", 7, 5);
        return new Waiver
        {
            Position = at,
            Rule = new Given<string>(rule, at, Origin.Written),
            Part = part is null ? null : new Given<string>(part, at, Origin.Written),
            Because = new Given<string>("because", at, Origin.Written),
            Until = until is { } day ? new Given<DateOnly>(day, at, Origin.Written) : null,
        };
    }
}
