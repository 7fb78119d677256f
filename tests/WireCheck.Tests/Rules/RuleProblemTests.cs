using WireCheck.Rules;

namespace WireCheck.Tests.Rules;

public class RuleProblemTests
{
    [Theory]
    [InlineData("require: it.curent > 1", "bench.yaml:5:12: 'it.curent' is no fact of a conductor; did you mean 'it.current'?")]
    [InlineData("require: pack.highest_volts > 1", "bench.yaml:5:12: 'pack.highest_volts' is no fact of a pack; did you mean 'pack.highest_voltage'?")]
    [InlineData("require: settings.limit > 1", "bench.yaml:5:12: 'limit' is no setting of the rule sets in use")]
    [InlineData("require: current > 1", "bench.yaml:5:12: 'current' is nothing a rule knows; facts are written it.name or pack.name, thresholds settings.name")]
    [InlineData("require: its.current > 1", "bench.yaml:5:12: 'its' is nothing a rule knows; facts are written it.name or pack.name, thresholds settings.name; did you mean 'it'?")]
    [InlineData("require: it == 1", "bench.yaml:5:12: 'it' alone is no value; write it.name")]
    [InlineData("require: it.size == (it.current | amp)", "bench.yaml:5:37: 'amp' is no function or filter that rules may use; did you mean 'amps'?")]
    [InlineData("require: it.chain | size > 1", "bench.yaml:5:23: after the bar stands the name of a filter, not 'size>1'; a filtered value that is compared stands in brackets: (it.names | size) > 1")]
    [InlineData("require: it.current", "bench.yaml:5:12: the whole expression must be a yes or no; it is a number in A")]
    [InlineData("require: it.current < it.drop", "bench.yaml:5:12: 'it.current<it.drop' mixes units: A on the left, V on the right")]
    [InlineData("require: it.current + it.share < 3", "bench.yaml:5:12: 'it.current+it.share' mixes units: A on the left, a pure number on the right")]
    [InlineData("require: it.current == 'six'", "bench.yaml:5:12: 'it.current=='six'' compares a number in A with a word")]
    [InlineData("require: it.size > 3", "bench.yaml:5:12: what stands before '>' must be a number; it is a word")]
    [InlineData("require: it.size * 1000000 > 3", "bench.yaml:5:12: what stands before '*' must be a number; it is a word")]
    [InlineData("require: it.covered && it.current", "bench.yaml:5:26: what stands after '&&' must be a yes or no; it is a number in A")]
    [InlineData("require: max(it.current) > 1", "bench.yaml:5:12: 'max' takes 2 values, the one before the bar counted; here are 1")]
    [InlineData("require: max(it.current, it.drop) > 1", "bench.yaml:5:12: 'max' mixes units: A on the left, V on the right")]
    [InlineData("require: (it.size | size) > 1", "bench.yaml:5:23: value 1 of 'size' must be a list of names; it is a word")]
    [InlineData("require: it.current >", "bench.yaml:5:12: this is no valid expression: Error while parsing binary expression: Expecting an <expression> to the right of the operator instead of `<eof>` in: <expression> operator <expression>")]
    [InlineData("says: \"{{ it.current }}\"", "bench.yaml:6:13: the number 'it.current' needs a filter that writes its unit, such as it.current | amps")]
    [InlineData("says: \"{{ it.chain }}\"", "bench.yaml:6:13: the list 'it.chain' needs the filter list: it.chain | list")]
    [InlineData("says: \"{{ it.covered }}\"", "bench.yaml:6:13: 'it.covered' is a yes or no; use it in an if, or with the filter yes_no")]
    [InlineData("says: \"{{ it.current | volts }}\"", "bench.yaml:6:26: 'volts' writes V; what stands before it is in A")]
    [InlineData("severity: warning", "bench.yaml:3:13: 'warning' is no severity; it is one of danger, fault, advice")]
    [InlineData("severity: dangr", "bench.yaml:3:13: 'dangr' is no severity; it is one of danger, fault, advice; did you mean 'danger'?")]
    [InlineData("for: conductr", "bench.yaml:2:8: 'conductr' is no kind that rules can judge; did you mean 'conductor'?")]
    [InlineData("id: Over_Ampacity", "bench.yaml:1:7: 'Over_Ampacity' is no rule id: small letters and digits in words joined by '-'")]
    [InlineData("says:", "bench.yaml:1:3: the rule 'over-ampacity' has no 'says'")]
    [InlineData("source:", "bench.yaml:1:3: the rule 'over-ampacity' has no 'source'")]
    [InlineData("source: {work: A book, standing: read}", "bench.yaml:9:36: 'read' is no standing; it is one of published, common practice, from memory")]
    [InlineData("source: {standing: published}", "bench.yaml:9:11: the source has no 'work'")]
    [InlineData("source: a book", "bench.yaml:9:11: 'source' must be a mapping of keys to values; it is the value 'a book'")]
    [InlineData("sayz: hello", "bench.yaml:10:3: 'sayz' is no key here; did you mean 'says'?")]
    [InlineData("related: [over-amps]", "bench.yaml:1:7: 'over-amps' is no rule of this set")]
    [InlineData("why: [a, b]", "bench.yaml:8:8: 'why' must be a single value; it is a list")]
    public void A_wrong_rule_is_told_with_its_place_and_what_would_be_right(string line, string expected) =>
        Bench.Read(Bench.RuleText(line)).Problems.ShouldHaveSingleItem().ShouldBe(expected);

    [Fact]
    public void All_problems_of_a_set_are_told_at_once()
    {
        string text = Bench.RuleText("severity: bad", "says:") + Bench.RuleText("id: another", "require: it.nothing > 1") + Bench.RuleText("id: another");

        IReadOnlyList<string> problems = Bench.Read(text).Problems;

        problems.Count.ShouldBe(4);
        problems.ShouldContain("bench.yaml:18:7: the rule 'another' stands twice; it stood first at bench.yaml:9:7");
    }

    [Theory]
    [InlineData("rule: nothing", "bench.yaml:1:1: the rule set has no 'title'|bench.yaml:1:1: the rule set 'bench' holds no rules|bench.yaml:1:1: 'rule' is no key here; did you mean 'rules'?")]
    [InlineData("title: Bench\nextends: portable-bax\nrules: []", "bench.yaml:1:1: the rule set 'bench' holds no rules|bench.yaml:2:10: there is no rule set 'portable-bax'")]
    [InlineData("title: Bench\nrules: {a: b}", "bench.yaml:2:8: a file of rules must be a list; it is a mapping")]
    [InlineData("- nothing", "bench.yaml:1:3: a rule must be a mapping of keys to values; it is the value 'nothing'")]
    [InlineData("title: Bench\nsettings: {Limit: {value: 3}}\nrules: []", "bench.yaml:1:1: the rule set 'bench' holds no rules|bench.yaml:2:12: 'Limit' is no setting name: small letters and digits in words joined by '_'")]
    [InlineData("title: Bench\nsettings: {limit: 3}\nrules: []", "bench.yaml:1:1: the rule set 'bench' holds no rules|bench.yaml:2:19: the setting 'limit' must be a mapping of keys to values; it is the value '3'")]
    [InlineData(
        "title: Bench\nsettings: {limit: {value: 3 A, unit: V, means: x, source: {work: y, standing: from memory}}}\nrules: []",
        "bench.yaml:1:1: the rule set 'bench' holds no rules|bench.yaml:2:27: '3 A' is no value for the setting 'limit': it wants a value in V, such as 12 V")]
    [InlineData(
        "title: Bench\nsettings: {limit: {value: 3 A, unit: amp, means: x, source: {work: y, standing: from memory}}}\nrules: []",
        "bench.yaml:1:1: the rule set 'bench' holds no rules|bench.yaml:2:12: 'amp' is no unit a setting can have")]
    public void A_wrong_head_of_a_set_is_told(string text, string expected)
    {
        // The first words are enough where a list of all sets follows.
        IReadOnlyList<string> problems = Bench.Read(text).Problems;
        string[] wanted = expected.Split('|');

        problems.Count.ShouldBe(wanted.Length, string.Join("\n", problems));
        foreach (string words in wanted)
        {
            problems.ShouldContain(p => p.StartsWith(words, StringComparison.Ordinal), string.Join("\n", problems));
        }
    }

}
