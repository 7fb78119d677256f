using WireCheck.Facts;
using WireCheck.Reports.Text;
using WireCheck.Rules;
using WireCheck.Rules.Expressions;

namespace WireCheck.Explaining;

/// <summary>The page of one rule: what it asks, of what, why, what to do, and where that comes from.</summary>
internal static class RulePage
{
    /// <summary>Writes the page.</summary>
    /// <param name="layout">Where it goes.</param>
    /// <param name="variants">The rule, once for each kind of part it judges.</param>
    internal static void Write(TextLayout layout, IReadOnlyList<Rule> variants)
    {
        Rule rule = variants[0];
        layout.Paragraph(0, rule.Id, $"({SeverityWords.For(rule.Severity)}, rule set {rule.SetName})");
        layout.Paragraph(0, "", $"{rule.Title}.".Replace("..", ".", StringComparison.Ordinal));
        layout.Heading("What it asks");
        layout.Paragraph(2, "Of every", string.Join(", ", variants.Select(v => v.Kind)));
        if (rule.When is not null)
        {
            layout.Paragraph(2, "for which", rule.When.Text);
        }

        layout.Paragraph(2, "it requires", rule.Require.Text);
        foreach (GradedSeverity grade in rule.Graded)
        {
            layout.Paragraph(2, SeverityWords.For(grade.Severity), $"when {grade.When.Text}");
        }

        layout.Heading("Why");
        layout.Paragraph(2, "", rule.Why);
        layout.Heading("What it says and what to do");
        layout.Paragraph(2, "Says:", rule.Says.Text);
        layout.Paragraph(2, "Do:", rule.Mend.Text);
        foreach (RuleEdit edit in rule.Edits)
        {
            string where = edit.When is null ? "" : $", when {edit.When.Text}";
            layout.Paragraph(2, "check --mend writes", $"{edit.Key} of {edit.Part?.Text ?? "it"}: {edit.Value.Text}{where}");
        }

        layout.Heading("Source");
        layout.Paragraph(2, "", rule.Source.ToString());
        WriteSettings(layout, rule);
        WriteFacts(layout, variants);
        if (rule.Related.Count > 0)
        {
            layout.Heading("See also");
            layout.Paragraph(2, "", string.Join(", ", rule.Related));
        }
    }

    private static void WriteSettings(TextLayout layout, Rule rule)
    {
        List<RuleSetting> settings = [.. UsesOf(rule).SelectMany(u => u.Settings).Distinct()];
        if (settings.Count == 0)
        {
            return;
        }

        layout.Heading("Settings it uses");
        foreach (RuleSetting setting in settings)
        {
            layout.Paragraph(2, $"settings.{setting.Name}:", $"{setting.Written}. {setting.Means} {setting.Source}");
        }
    }

    private static void WriteFacts(TextLayout layout, IReadOnlyList<Rule> variants)
    {
        layout.Heading("Facts it uses");
        HashSet<string> told = new(StringComparer.Ordinal);
        foreach (FactUse use in variants.SelectMany(UsesOf).SelectMany(u => u.Facts))
        {
            string name = use.OfPack ? $"pack.{use.Fact.Name}" : $"it.{use.Fact.Name}";
            if (told.Add(name))
            {
                layout.Paragraph(2, $"{name}:", FactPages.InWords(use.Fact));
            }
        }
    }

    private static IEnumerable<ExpressionUses> UsesOf(Rule rule)
    {
        if (rule.When is not null)
        {
            yield return rule.When.Compiled.Uses;
        }

        yield return rule.Require.Compiled.Uses;
        yield return rule.Says.Compiled.Uses;
        yield return rule.Mend.Compiled.Uses;
        foreach (RuleEdit edit in rule.Edits)
        {
            yield return edit.Value.Compiled.Uses;
        }

        foreach (GradedSeverity grade in rule.Graded)
        {
            yield return grade.When.Compiled.Uses;
        }
    }
}
