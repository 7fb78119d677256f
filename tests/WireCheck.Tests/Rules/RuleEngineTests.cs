using WireCheck.Rules;
using WireCheck.Text;

namespace WireCheck.Tests.Rules;

public class RuleEngineTests
{
    [Fact]
    public void A_part_that_meets_the_requirement_gives_no_judgement_and_a_margin()
    {
        Judgements all = Bench.Judge(Bench.RuleText(), Bench.Conductor("w1", 40, 50));

        all.Found.ShouldBeEmpty();
        Margin margin = all.Margins.ShouldHaveSingleItem();
        margin.Share.ShouldBe(0.8);
        margin.Unit.ShouldBe("A");
    }

    [Fact]
    public void A_part_that_fails_is_found_with_words_numbers_and_mode()
    {
        Judgement found = Bench.Judge(Bench.RuleText(), Bench.Conductor("w1", 60.04, 50)).Found.ShouldHaveSingleItem();

        found.Severity.ShouldBe(Severity.Danger);
        found.Message.ShouldBe("w1 carries 60 A in boiling");
        found.Mend.ShouldBe("Use a larger one.");
        found.Place!.Mode.ShouldBe("boiling");
        found.Values.Select(v => $"{v.Name}={v.Value} {v.Unit}").ShouldBe(["current=60.04 A", "ampacity=50 A"]);
    }

    [Fact]
    public void A_value_a_hair_over_its_limit_is_not_told_as_the_limit_itself() =>
        Bench.Judge(
            Bench.RuleText("says: \"{{ it.id }} carries {{ it.current | amps }}; {{ it.ampacity | amps }} is the most\""),
            Bench.Conductor("w1", 50.02, 50)).Found.ShouldHaveSingleItem().Message.ShouldBe("w1 carries 50.02 A; 50 A is the most");

    [Fact]
    public void Equal_passes_at_a_limit_that_allows_it_and_fails_at_a_strict_one()
    {
        Bench.Judge(Bench.RuleText(), Bench.Conductor("w1", 50, 50)).Found.ShouldBeEmpty();
        Bench.Judge(Bench.RuleText("require: it.current < it.ampacity"), Bench.Conductor("w1", 50, 50)).Found.Count.ShouldBe(1);
    }

    [Fact]
    public void A_comparison_written_the_other_way_round_gives_the_same_margin()
    {
        Margin margin = Bench.Judge(Bench.RuleText("require: it.ampacity >= it.current * 1.25"), Bench.Conductor("w1", 20, 50)).Margins[0];

        margin.Used.ShouldBe(25);
        margin.Limit.ShouldBe(50);
    }

    [Fact]
    public void A_fact_without_a_value_leaves_the_rule_undecided_and_is_named()
    {
        Judgements all = Bench.Judge(Bench.RuleText(), Bench.Conductor("w1", 40));

        all.Found.ShouldBeEmpty();
        all.Margins.ShouldBeEmpty();
        all.Undecided.ShouldHaveSingleItem().Missing.ShouldBe(["ampacity"]);
    }

    [Theory]
    [InlineData("1 / it.drop > 3")]
    [InlineData("!it.covered")]
    [InlineData("it.size == '6 AWG'")]
    [InlineData("it.share * 2 < settings.limit")]
    public void Anything_computed_from_a_fact_without_a_value_is_undecided(string require)
    {
        string text = "settings:\n  limit:\n    value: 3 %\n    means: A limit.\n    source: {work: A book, standing: from memory}\n"
            + "title: Bench\nrules:\n" + Bench.RuleText($"require: \"{require}\"");

        Judgements all = Bench.Judge(text, Bench.Conductor("w1", 40, 50));

        all.Found.ShouldBeEmpty();
        all.Undecided.Count.ShouldBe(1);
    }

    [Fact]
    public void A_rule_may_ask_itself_whether_a_fact_has_a_value()
    {
        string text = Bench.RuleText("require: it.drop == null || it.drop < 1");

        Judgements all = Bench.Judge(text, Bench.Conductor("w1", 40, 50));

        all.Undecided.ShouldBeEmpty();
        all.Found.ShouldBeEmpty();
    }

    [Fact]
    public void A_rule_whose_condition_does_not_hold_or_has_no_value_does_not_apply()
    {
        Judgements all = Bench.Judge(
            Bench.RuleText("when: it.current > 10"), Bench.Conductor("w1", 5, 1), Bench.Conductor("w2", null, 1));

        all.Found.ShouldBeEmpty();
        all.Undecided.ShouldBeEmpty();
    }

    [Fact]
    public void The_first_graded_severity_that_holds_wins()
    {
        string text = Bench.RuleText(
            "severity: advice",
            "severity_when: [{when: it.current > 100, severity: danger}, {when: it.current > 60, severity: fault}]");

        Judgements all = Bench.Judge(text, Bench.Conductor("w1", 55, 50), Bench.Conductor("w2", 70, 50), Bench.Conductor("w3", 120, 50));

        all.Found.Select(f => f.Severity).ShouldBe([Severity.Advice, Severity.Fault, Severity.Danger]);
    }

    [Fact]
    public void Yes_no_facts_names_and_pack_facts_can_be_used()
    {
        var subject = Bench.Conductor("w1", 40, 50);
        subject.Set(Bench.Covered, false);
        subject.Set(Bench.Chain, (List<string>)["main", "k-inv", "inverter"]);
        string text = Bench.RuleText(
            "when: (it.chain | size) == 3 && (it.chain | contains 'k-inv')",
            "require: it.covered || pack.highest_voltage < 10",
            "says: \"{{ it.chain | list }}: {{ it.chain | size | plural 'part' 'parts' }}{{ if !it.covered }}, bare{{ end }}\"");

        Bench.Judge(text, subject).Found.ShouldHaveSingleItem().Message.ShouldBe("main, k-inv and inverter: 3 parts, bare");
    }

    [Fact]
    public void Rules_come_in_the_order_of_the_file_and_parts_in_the_order_of_the_table()
    {
        string text = Bench.RuleText() + Bench.RuleText("id: another");

        Judgements all = Bench.Judge(text, Bench.Conductor("w2", 60, 50), Bench.Conductor("w1", 60, 50));

        all.Found.Select(f => $"{f.Rule.Id} {f.Subject.Id}")
            .ShouldBe(["over-ampacity w2", "over-ampacity w1", "another w2", "another w1"]);
    }

    [Fact]
    public void A_setting_of_the_description_replaces_that_of_the_set()
    {
        string text = "title: Bench\nsettings:\n  limit: {value: 20 A, unit: A, means: A limit., source: {work: A book, standing: from memory}}\nrules:\n"
            + Bench.RuleText("require: it.current <= settings.limit");
        RuleSet set = Bench.Read(text).Set!;
        ProblemList problems = new();
        YamlScalar written = new(new Position("box.yaml", 4, 20), "50 A", false);

        SettingValues.Resolve([set], new Dictionary<string, YamlScalar>(), problems)["limit"].ShouldBe(20);
        SettingValues.Resolve([set], new Dictionary<string, YamlScalar> { ["limit"] = written }, problems)["limit"].ShouldBe(50);
        problems.IsEmpty.ShouldBeTrue();
    }

    [Theory]
    [InlineData("limt", "50 A", "box.yaml:4:20: 'limt' is no setting of the rule sets in use; did you mean 'limit'?")]
    [InlineData("limit", "50 V", "box.yaml:4:20: '50 V' is no value for the setting 'limit': it wants a value in A, such as 20 A")]
    [InlineData("limit", "50", "box.yaml:4:20: '50' is no value for the setting 'limit': it wants a value in A, such as 20 A")]
    public void A_wrong_setting_is_told_with_its_place(string name, string value, string expected)
    {
        string text = "title: Bench\nsettings:\n  limit: {value: 20 A, unit: A, means: A limit., source: {work: A book, standing: from memory}}\nrules:\n" + Bench.RuleText();
        ProblemList problems = new();
        YamlScalar written = new(new Position("box.yaml", 4, 20), value, false);

        SettingValues.Resolve([Bench.Read(text).Set!], new Dictionary<string, YamlScalar> { [name] = written }, problems);

        problems.InOrder().Select(p => p.ToString()).ShouldBe([expected]);
    }

    [Theory]
    [InlineData("", "3 %", 0.03)]
    [InlineData("", "1.5", 1.5)]
    [InlineData("A", "250 mA", 0.25)]
    [InlineData("V", "1.2 kV", 1200)]
    [InlineData("Ω", "5 mΩ", 0.005)]
    [InlineData("Ω", "5 mohm", 0.005)]
    [InlineData("W", "2 W", 2)]
    [InlineData("J", "3 Wh", 10800)]
    [InlineData("m", "300 mm", 0.3)]
    [InlineData("m", "1 in", 0.0254)]
    [InlineData("m²", "10 mm2", 1e-5)]
    [InlineData("°C", "-5 °C", -5)]
    [InlineData("°C", "60 degC", 60)]
    [InlineData("K", "30 K", 30)]
    [InlineData("s", "20 min", 1200)]
    [InlineData("s", "30 days", 2592000)]
    [InlineData("kg", "250 g", 0.25)]
    [InlineData("C", "2 Ah", 7200)]
    public void Setting_values_are_read_in_their_unit(string unit, string text, double expected) =>
        SettingValues.Read(text, unit)!.Value.ShouldBe(expected, Math.Abs(expected) * 1e-9);
}
