using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using WireCheck.Knowledge;
using WireCheck.Reports.Text;
using WireCheck.Rules;
using WireCheck.Text;

namespace WireCheck.Explaining;

/// <summary>Explains the names a report or a description uses: rules, facts and part classes.</summary>
public static class Explainer
{
    /// <summary>
    /// Writes the page of a rule, a fact or a part class. False when the name is none of them; the nearest name is
    /// then given, or null.
    /// </summary>
    public static bool TryExplain(string name, TextWriter output, TextStyle style, out string? nearest)
    {
        TextLayout layout = new(output, style);
        IReadOnlyList<Rule> rules = AllRules();
        List<Rule> variants = [.. rules.Where(rule => rule.Id == name)];
        IReadOnlyList<Fact> facts = FactPages.Find(name);
        IReadOnlyList<PartClass> classes = PartClassPages.Find(name);
        nearest = null;
        if (variants.Count > 0)
        {
            // The same rule of a set that extends another is told once.
            RulePage.Write(layout, [.. variants.DistinctBy(rule => rule.Kind)]);
        }
        else if (facts.Count > 0)
        {
            FactPages.Write(layout, facts);
        }
        else if (classes.Count > 0)
        {
            PartClassPages.Write(layout, classes);
        }
        else
        {
            IEnumerable<string> known = rules.Select(rule => rule.Id)
                .Concat(FactCatalogue.All.Select(f => f.Name)).Concat(PartClassPages.Names());
            nearest = NearestName.Find(name, known);
            return false;
        }

        return true;
    }

    /// <summary>Writes one line for each rule that comes with the tool: severity, id and title, set by set.</summary>
    public static void WriteRules(TextWriter output, TextStyle style)
    {
        TextLayout layout = new(output, style);
        HashSet<string> told = new(StringComparer.Ordinal);
        foreach (RuleSet set in AllSets())
        {
            layout.Paragraph(0, $"{set.Name}:", set.Title);
            foreach (Rule rule in set.Rules.Where(rule => told.Add(rule.Id)))
            {
                layout.Paragraph(2, $"{SeverityWords.For(rule.Severity),-6}", $"{rule.Id}: {rule.Title}");
            }
        }
    }

    /// <summary>Writes every fact with its unit and sentence, by kind of part.</summary>
    public static void WriteFacts(TextWriter output, TextStyle style) => FactPages.WriteAll(new TextLayout(output, style));

    private static IReadOnlyList<Rule> AllRules() => [.. AllSets().SelectMany(set => set.Rules)];

    /// <summary>Every set that comes with the tool, the default one first.</summary>
    private static List<RuleSet> AllSets()
    {
        RuleSetLibrary library = new(new FactVocabulary(FactCatalogue.All));
        ProblemList problems = new();
        List<RuleSet> sets = [];
        foreach (string name in RuleSetLibrary.Names.OrderBy(n => n != RuleSetLibrary.DefaultSet))
        {
            if (library.Find(name, default, problems) is { } set)
            {
                sets.Add(set);
            }
        }

        return problems.IsEmpty ? sets : throw new InvalidOperationException(problems.InOrder()[0].ToString());
    }
}
