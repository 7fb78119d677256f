using System.Diagnostics;
using WireCheck.Rules;
using WireCheck.Rules.Expressions;
using WireCheck.Text;

namespace WireCheck.Tests.Rules;

public class RuleSandboxTests
{
    [Theory]
    [InlineData("{{ while true }}x{{ end }}", "only if, else, for over a list of names, and values can stand in the words of a rule")]
    [InlineData("{{ for i in 1..2000000000 }}x{{ end }}", "cannot stand in a rule")]
    [InlineData("{{ for c in it.chain limit:3 }}x{{ end }}", "only if, else, for")]
    [InlineData("{{ tablerow c in it.chain }}x{{ end }}", "only if, else, for")]
    [InlineData("{{ include 'other.yaml' }}", "'include' is no function or filter")]
    [InlineData("{{ import it }}", "only if, else, for")]
    [InlineData("{{ func f; ret 1; end }}", "only if, else, for")]
    [InlineData("{{ f = do; f; end }}", "cannot stand in a rule")]
    [InlineData("{{ x = 'a' }}", "cannot stand in a rule")]
    [InlineData("{{ it.size = 'a' }}", "cannot stand in a rule")]
    [InlineData("{{ date.now }}", "'date' is nothing a rule knows")]
    [InlineData("{{ 'a' | string.pad_left 2000000000 }}", "after the bar stands the name of a filter")]
    [InlineData("{{ 'aaaa' | regex.match '(a+)+$' }}", "after the bar stands the name of a filter")]
    [InlineData("{{ 'a' * 2000000000 }}", "what stands before '*' must be a number")]
    [InlineData("{{ it.size.length }}", "cannot stand in a rule")]
    [InlineData("{{ it['size'] }}", "cannot stand in a rule")]
    [InlineData("{{ this }}", "cannot stand in a rule")]
    [InlineData("{{ object.eval '1' }}", "after the bar stands the name of a filter")]
    [InlineData("{{ with it }}{{ end }}", "only if, else, for")]
    [InlineData("{{ capture x }}{{ end }}", "only if, else, for")]
    [InlineData("{{ case it.size }}{{ when 1 }}{{ end }}", "only if, else, for")]
    [InlineData("{{ [1, 2] }}", "cannot stand in a rule")]
    [InlineData("{{ {a: 1} }}", "cannot stand in a rule")]
    [InlineData("{{ 1 << 2000000000 | count }}", "cannot stand in a rule")]
    public void Whatever_could_run_long_read_files_or_change_something_is_refused_before_it_runs(string words, string expected)
    {
        IReadOnlyList<string> problems = Bench.Read(Bench.RuleText($"says: \"{words}\"")).Problems;

        problems.ShouldNotBeEmpty();
        problems.ShouldContain(p => p.Contains(expected, StringComparison.Ordinal), string.Join("\n", problems));
    }

    [Fact]
    public void Deep_nesting_is_refused_quickly()
    {
        string deep = new string('(', 100_000) + "true" + new string(')', 100_000);
        Stopwatch watch = Stopwatch.StartNew();

        Bench.Read(Bench.RuleText($"require: {deep}")).Problems.ShouldNotBeEmpty();

        watch.Elapsed.ShouldBeLessThan(TimeSpan.FromSeconds(5));
    }

    [Fact]
    public void A_loop_over_more_names_than_allowed_is_a_problem_of_the_rule()
    {
        (RuleSet? set, _) = Bench.Read(Bench.RuleText("says: \"{{ for c in it.chain }}{{ c }}{{ end }}\""));
        var subject = Bench.Conductor("w1", 60, 50);
        subject.Set(Bench.Chain, Enumerable.Range(0, 5000).Select(i => $"p{i}").ToList());
        ProblemList problems = new();

        RuleEngine.Judge(new WireCheck.Facts.FactTable(Bench.Pack, [subject]), [set!], new Dictionary<string, double>(), problems);

        problems.InOrder().ShouldHaveSingleItem().ToString().ShouldStartWith("bench.yaml:1:7: the rule 'over-ampacity' could not be run on 'w1': ");
    }

    [Fact]
    public void Text_that_grows_past_its_bound_does_not_fill_memory()
    {
        (RuleSet? set, _) = Bench.Read(Bench.RuleText("says: \"{{ for c in it.chain }}{{ for d in it.chain }}{{ d }}{{ end }}{{ end }}\""));
        var subject = Bench.Conductor("w1", 60, 50);
        subject.Set(Bench.Chain, Enumerable.Range(0, 900).Select(_ => new string('x', 1000)).ToList());
        ProblemList problems = new();

        Judgements all = RuleEngine.Judge(
            new WireCheck.Facts.FactTable(Bench.Pack, [subject]), [set!], new Dictionary<string, double>(), problems);

        (all.Found.Count == 0 ? 0 : all.Found[0].Message.Length).ShouldBeLessThan(50_000);
    }

    [Fact]
    public void A_run_that_is_stopped_ends()
    {
        (RuleSet? set, _) = Bench.Read(Bench.RuleText());
        using CancellationTokenSource stop = new();
        stop.Cancel();

        Should.Throw<OperationCanceledException>(() => RuleEngine.Judge(
            new WireCheck.Facts.FactTable(Bench.Pack, [Bench.Conductor("w1", 60, 50)]), [set!], new Dictionary<string, double>(), new ProblemList(), stop.Token));
    }

    [Fact]
    public void Every_function_has_a_name_of_its_own_and_knows_what_it_takes()
    {
        foreach ((string name, RuleFunction function) in RuleFunctions.All)
        {
            function.Name.ShouldBe(name);
            function.Takes.ShouldNotBeEmpty();
            function.Takes.ShouldNotContain(ExpressionKind.Unknown);
        }
    }
}
