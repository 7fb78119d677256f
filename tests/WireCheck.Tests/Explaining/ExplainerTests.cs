using WireCheck.Explaining;
using WireCheck.Facts.Catalogue;
using WireCheck.Reports.Text;
using WireCheck.Rules;
using WireCheck.Text;

namespace WireCheck.Tests.Explaining;

public class ExplainerTests
{
    [Fact]
    public void Every_rule_has_a_page_with_its_condition_reason_remedy_and_source()
    {
        ProblemList problems = new();
        RuleSetLibrary library = new(new FactVocabulary(FactCatalogue.All));
        foreach (string name in RuleSetLibrary.Names)
        {
            foreach (Rule rule in library.Find(name, default, problems)!.Rules)
            {
                string page = Explain(rule.Id);

                page.ShouldStartWith($"{rule.Id} (");
                foreach (string heading in (string[])["What it asks", "Why", "What it says and what to do", "Source", "Facts it uses"])
                {
                    page.ShouldContain($"\n{heading}\n");
                }
            }
        }
    }

    [Fact]
    public void A_fact_is_explained_by_name_and_by_kind_and_name()
    {
        Explain("ampacity").ShouldContain("conductor.ampacity: ");
        Explain("conductor.ampacity").ShouldStartWith("conductor.ampacity: ");
        Explain("conductor.ampacity").ShouldContain(" In A.");
    }

    [Fact]
    public void A_part_class_is_explained_with_its_values_and_source()
    {
        string page = Explain("bms-4s-lfp-80a");

        page.ShouldContain("  continuous: 80 A\n");
        page.ShouldContain("\nSource\n");
    }

    [Fact]
    public void An_unknown_name_is_told_with_the_nearest()
    {
        using StringWriter output = new();

        Explainer.TryExplain("conductor-over-ampacit", output, TextStyle.Piped, out string? nearest).ShouldBeFalse();

        nearest.ShouldBe("conductor-over-ampacity");
        output.ToString().ShouldBeEmpty();
    }

    [Fact]
    public void The_list_of_rules_names_each_once_with_its_severity()
    {
        using StringWriter output = new();

        Explainer.WriteRules(output, TextStyle.Piped);

        output.ToString().Split('\n').Count(line => line.Contains(" conductor-over-ampacity: ", StringComparison.Ordinal)).ShouldBe(1);
        output.ToString().ShouldContain("  danger conductor-over-ampacity: ");
    }

    [Fact]
    public void The_list_of_facts_names_every_fact()
    {
        using StringWriter output = new();

        Explainer.WriteFacts(output, TextStyle.Piped);

        foreach (WireCheck.Facts.Fact fact in FactCatalogue.All)
        {
            output.ToString().ShouldContain($"\n  {fact.Name}: ");
        }
    }

    private static string Explain(string name)
    {
        using StringWriter output = new();
        Explainer.TryExplain(name, output, TextStyle.Piped, out _).ShouldBeTrue(name);
        return output.ToString();
    }
}
