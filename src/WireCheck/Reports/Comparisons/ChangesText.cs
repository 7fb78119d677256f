using WireCheck.Comparing;
using WireCheck.Findings;
using WireCheck.Reports.Text;
using WireCheck.Rules;

namespace WireCheck.Reports.Comparisons;

/// <summary>What a save changed, in a few lines: the verdict, findings gained, changed and lost.</summary>
public static class ChangesText
{
    /// <summary>Writes it.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="report">The box as it is now.</param>
    /// <param name="before">As it was at the last save that could be read; null when there was none.</param>
    /// <param name="changes">Findings that differ.</param>
    /// <param name="style">Width and colour.</param>
    public static void Write(TextWriter output, Report report, Report? before, IReadOnlyList<FindingChange> changes, TextStyle style)
    {
        TextLayout layout = new(output, style);
        string verdict = VerdictWords.For(report.Verdict);
        string was = before is null ? "" : VerdictWords.For(before.Verdict);
        layout.Blank();
        layout.Paragraph(
            0,
            verdict.ToUpperInvariant() + ":",
            $"{report.File}, {CountWords.Of(report)}{(was.Length == 0 || was == verdict ? "" : $" (before: {was})")}. {Told(changes)}",
            SeverityColour.Of(SeverityOf(report.Verdict)));
        foreach (FindingChange change in changes)
        {
            Finding finding = change.Finding;
            string severity = SeverityWords.For(finding.Severity);
            string what = change.Change switch
            {
                ChangeKind.Added => "gained",
                ChangeKind.Removed => "lost",
                _ => "changed",
            };
            string line = change.Change == ChangeKind.Removed ? "" : FormattableString.Invariant($", line {finding.At.Line}");
            layout.Paragraph(2, what, $"{severity} {ComparisonWords.Where(finding)}{line}: {finding.Rule}{(finding.Waived is null ? "" : " (waived)")}", SeverityColour.Of(severity));
            if (change.Change == ChangeKind.Added)
            {
                layout.Paragraph(4, "", finding.Message);
                layout.Paragraph(4, "Do:", finding.Mend);
            }
            else if (change.Change == ChangeKind.Changed)
            {
                layout.Paragraph(4, "", ComparisonWords.Differences(change));
            }
        }
    }

    private static string Told(IReadOnlyList<FindingChange> changes) => changes.Count == 0
        ? "No finding changed."
        : FormattableString.Invariant(
            $"{changes.Count(c => c.Change == ChangeKind.Added)} gained, {changes.Count(c => c.Change == ChangeKind.Removed)} lost, {changes.Count(c => c.Change == ChangeKind.Changed)} changed.");

    private static string SeverityOf(Verdict verdict) => verdict switch
    {
        Verdict.Dangerous => "danger",
        Verdict.Faulty => "fault",
        Verdict.PassesWithAdvice => "advice",
        _ => "passes",
    };
}
