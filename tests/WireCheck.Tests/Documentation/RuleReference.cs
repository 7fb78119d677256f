using System.Text;
using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using WireCheck.Knowledge;
using WireCheck.Rules;
using WireCheck.Rules.Expressions;
using WireCheck.Text;

namespace WireCheck.Tests.Documentation;

/// <summary>Functions, sets with their settings and rules, and facts, as a page.</summary>
internal static class RuleReference
{
    internal static string Of()
    {
        StringBuilder page = new();
        AddFunctions(page);
        FactVocabulary vocabulary = new(FactCatalogue.All);
        foreach (string name in RuleSetLibrary.Names)
        {
            ProblemList problems = new();
            AddSet(page, new RuleSetLibrary(vocabulary).Find(name, new Position("guide", 1, 1), problems)!);
            problems.IsEmpty.ShouldBeTrue();
        }

        AddFacts(page);
        return page.ToString();
    }

    private static void AddFunctions(StringBuilder page)
    {
        page.Append("## Functions\n\nWhat takes a unit refuses a number of another unit when the set is loaded.\n\n");
        page.Append(Guide.Row("function", "takes", "gives")).Append("|---|---|---|\n");
        foreach (RuleFunction function in RuleFunctions.All.Values.OrderBy(f => f.Name, StringComparer.Ordinal))
        {
            string takes = string.Join(", ", function.Takes.Select(Kind));
            page.Append(Guide.Row(function.Name, function.Unit is { Length: > 0 } unit ? $"{takes} in {unit}" : takes, Kind(function.Gives)));
        }
    }

    private static string Kind(ExpressionKind kind) => kind switch
    {
        ExpressionKind.Number => "a number",
        ExpressionKind.YesNo => "yes or no",
        ExpressionKind.Word => "a word",
        _ => "names",
    };

    private static void AddSet(StringBuilder page, RuleSet set)
    {
        page.Append($"\n## The set `{set.Name}`\n\n{set.Title}. {set.Description}\n\n");
        page.Append(Guide.Row("setting", "usual", "what it means", "source")).Append("|---|---|---|---|\n");
        foreach ((string name, RuleSetting setting) in set.Settings.OrderBy(s => s.Key, StringComparer.Ordinal))
        {
            page.Append(Guide.Row(name, setting.Written, setting.Means, setting.Source.ToString()));
        }

        page.Append('\n').Append(Guide.Row("rule", "for", "severity", "what it finds", "source")).Append("|---|---|---|---|---|\n");
        foreach (IGrouping<string, Rule> same in set.Rules.Where(r => r.SetName == set.Name).GroupBy(r => r.Id))
        {
            Rule rule = same.First();
            page.Append(Guide.Row(
                rule.Id, string.Join(", ", same.Select(r => r.Kind)), SeverityWords.For(rule.Severity) + (rule.Graded.Count > 0 ? " or as it says" : ""), rule.Title,
                rule.Source.ToString()));
        }
    }

    private static void AddFacts(StringBuilder page)
    {
        page.Append("\n## Facts\n\nOf each kind of part, what a rule may name. A fact marked * has its place beside it, as `name_mode` and `name_corner`.\n");
        foreach (IGrouping<string, Fact> kind in FactCatalogue.All.GroupBy(f => f.Kind))
        {
            page.Append($"\n### {kind.Key}\n\n").Append(Guide.Row("fact", "is", "what it tells")).Append("|---|---|---|\n");
            foreach (Fact fact in kind)
            {
                string unit = fact.Type switch
                {
                    FactType.Number => fact.Unit.Length > 0 ? fact.Unit : "a share or count",
                    FactType.YesNo => "yes or no",
                    FactType.Names => "names",
                    _ => "a word",
                };
                page.Append(Guide.Row(fact.Name + (fact.HasPlace ? " *" : ""), unit, fact.Sentence));
            }
        }
    }
}
