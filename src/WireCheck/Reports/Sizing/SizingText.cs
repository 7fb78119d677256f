using WireCheck.Findings;
using WireCheck.Quantities;
using WireCheck.Reports.Text;
using WireCheck.Rules;
using WireCheck.Sizing;

namespace WireCheck.Reports.Sizing;

/// <summary>What sizing came to, for a terminal.</summary>
public static class SizingText
{
    /// <summary>What changes, what decided each value, what it saves, and what stands in the end.</summary>
    public static void Write(TextWriter output, string title, SizingResult sizing)
    {
        output.Write($"{PlainText.Escape(title)}\n");
        WriteChanges(output, sizing);
        WriteSums(output, sizing);
        WriteDecisions(output, sizing);
        WriteEnd(output, sizing);
    }

    private static void WriteChanges(TextWriter output, SizingResult sizing)
    {
        // In a box without findings nothing must grow; a thin wire does where thick ones then may shrink.
        string grows = sizing.Before.Findings.Count == 0 ? "larger, so that others may be smaller" : "must be larger";
        TextTable table = new("part", "value", "now", "chosen", "");
        foreach (SizedChoice choice in sizing.Choices)
        {
            if (choice.Changed)
            {
                table.Add(
                    choice.Value.Id, SizingWords.Key(choice.Value), choice.Value.Written, choice.Chosen.Text,
                    choice.Value.WrittenIndex < 0 ? "what stands now may not be chosen" : choice.Shrinks ? "may be smaller" : grows);
            }
        }

        output.Write(sizing.Choices.Any(c => c.Changed) ? "\nWhat changes\n" : "\nNothing changes: no single value could be smaller.\n");
        table.Write(output);
    }

    private static void WriteSums(TextWriter output, SizingResult sizing)
    {
        output.Write($"\nMetal of the wire: {SizingWords.Metal(sizing.MetalBefore)} now, {SizingWords.Metal(sizing.MetalAfter)} as chosen.\n");
        if (sizing.PriceAfter is { } after)
        {
            string before = sizing.PriceBefore is { } price ? $"{QuantityText.Plain(price, 6)} now, " : "";
            output.Write($"Price of what has one: {before}{QuantityText.Plain(after, 6)} as chosen.\n");
        }
    }

    private static void WriteDecisions(TextWriter output, SizingResult sizing)
    {
        output.Write("\nWhat decides each value\n");
        TextTable table = new("part", "value", "chosen", "next smaller", "fails", "at");
        foreach (SizedChoice choice in sizing.Choices)
        {
            table.Add(
                choice.Value.Id, SizingWords.Key(choice.Value), choice.Chosen.Text, choice.Smaller ?? "",
                SizingWords.Why(choice), choice.Fails.Count > 0 ? choice.Fails[0].Part : "");
        }

        table.Write(output);
    }

    private static void WriteEnd(TextWriter output, SizingResult sizing)
    {
        FindingCounts counts = sizing.After.Counts;
        output.Write($"\nA check of the box as chosen: {VerdictWords.For(counts.Verdict)}.\n");
        TextLayout layout = new(output, TextStyle.Piped);
        foreach (Conflict conflict in sizing.Conflicts)
        {
            layout.Paragraph(2, $"{SeverityWords.For(conflict.Finding.Severity)} {conflict.Finding.Part}: {conflict.Finding.Rule}", "");
            layout.Paragraph(4, "", conflict.Finding.Message);
            layout.Paragraph(4, "", SizingWords.Why(conflict));
        }
    }
}
