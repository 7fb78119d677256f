using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using WireCheck.Rules;
using WireCheck.Text;

namespace WireCheck.Tests.Rules;

/// <summary>The rule on states without a solution, on facts made by hand: no box is known that reaches it.</summary>
public class UnsolvedStateTests
{
    private static readonly Position Here = new("box.yaml", 1, 1);

    [Fact]
    public void A_state_without_a_solution_is_a_fault_that_names_it()
    {
        Judgement found = Judge(["boiling (full, lowest resistance)"]).ShouldHaveSingleItem();
        found.Rule.Id.ShouldBe("state-not-solved");
        found.Severity.ShouldBe(Severity.Fault);
        found.Message.ShouldContain("No solution was found for boiling (full, lowest resistance)");
    }

    [Fact]
    public void A_box_whose_every_state_is_solved_is_let_pass()
    {
        Judge([]).ShouldBeEmpty();
    }

    private static IReadOnlyList<Judgement> Judge(IReadOnlyList<string> unsolved)
    {
        FactSubject pack = new(FactCatalogue.PackKind, "pack", Here);
        pack.Set(PackFacts.UnsolvedStates, unsolved);
        ProblemList problems = new();
        RuleSet set = new RuleSetLibrary(new FactVocabulary(FactCatalogue.All)).Find(RuleSetLibrary.DefaultSet, Here, problems)!;
        IReadOnlyDictionary<string, double> settings = SettingValues.Resolve([set], new Dictionary<string, YamlScalar>(), problems);
        Judgements judgements = RuleEngine.Judge(new FactTable(pack, []), [set], settings, problems);
        problems.IsEmpty.ShouldBeTrue();
        return judgements.Found;
    }
}
