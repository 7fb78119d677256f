using Shouldly;
using WireCheck.Facts.Catalogue;
using WireCheck.Rules;
using WireCheck.Text;
using Xunit;

namespace WireCheck.Tests.Rules;

/// <summary>The rule sets that come with the tool, against the catalogue of facts.</summary>
public class RuleFilesTests
{
    private static readonly FactVocabulary Vocabulary = new(FactCatalogue.All);

    public static TheoryData<string> SetNames => [.. RuleSetLibrary.Names];

    [Theory]
    [MemberData(nameof(SetNames))]
    public void Every_rule_of_a_set_names_known_facts_and_settings(string name)
    {
        ProblemList problems = new();
        RuleSet? set = new RuleSetLibrary(Vocabulary).Find(name, new Position("test", 1, 1), problems);
        set.ShouldNotBeNull();
        RuleSetReader.CheckAll(set, problems);
        problems.InOrder().Select(p => $"{p.Position} {p.Message}").ShouldBeEmpty();
    }

    [Fact]
    public void Every_setting_of_the_default_set_is_used_by_a_rule()
    {
        ProblemList problems = new();
        RuleSet set = new RuleSetLibrary(Vocabulary).Find(RuleSetLibrary.DefaultSet, new Position("test", 1, 1), problems)!;
        RuleSetReader.CheckAll(set, problems);
        IEnumerable<string> used = set.Rules.SelectMany(rule => new[] { rule.When?.Compiled.Uses, rule.Require.Compiled.Uses }
            .Concat(rule.Graded.Select(g => g.When.Compiled.Uses)).OfType<WireCheck.Rules.Expressions.ExpressionUses>())
            .SelectMany(uses => uses.Settings).Select(s => s.Name).Distinct();
        set.Settings.Keys.Except(used).ShouldBeEmpty();
    }
}
