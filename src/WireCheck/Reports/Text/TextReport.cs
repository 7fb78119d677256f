using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using WireCheck.Findings;
using WireCheck.Rules;

namespace WireCheck.Reports.Text;

/// <summary>
/// The short answer for a builder at the bench: the verdict, what was found worst first with what to do, how
/// near the rest is to its limits, how long the box keeps, what could not be judged, and the cautions.
/// </summary>
public sealed class TextReport
{
    private const double SecondsPerDay = 86400;

    private readonly Report _report;
    private readonly TextLayout _layout;

    private TextReport(Report report, TextLayout layout)
    {
        _report = report;
        _layout = layout;
    }

    /// <summary>Writes the report.</summary>
    public static void Write(TextWriter output, Report report, TextStyle style)
    {
        TextReport text = new(report, new TextLayout(output, style));
        text.WriteVerdict();
        text.WriteFindings(waived: false);
        text.WriteFindings(waived: true);
        text.WriteMargins();
        text.WriteShelf();
        text.WriteUndecided();
        text.WriteCautions();
    }

    private void WriteVerdict()
    {
        FindingCounts counts = _report.Findings.Counts;
        string verdict = counts.Verdict switch
        {
            Verdict.Passes => "PASSES",
            Verdict.PassesWithAdvice => "PASSES, WITH ADVICE",
            Verdict.Faulty => "FAULTY",
            _ => "DANGEROUS",
        };
        _layout.Paragraph(0, "", $"{_report.PackTitle} ({_report.File})");
        _layout.Paragraph(0, $"{verdict}:", $"{InWords(counts)}.", ColourOf(WorstOf(counts)));
    }

    private static string InWords(FindingCounts counts)
    {
        List<string> parts = [];
        AddCount(parts, counts.Danger, "danger", "dangers");
        AddCount(parts, counts.Fault, "fault", "faults");
        AddCount(parts, counts.Advice, "piece of advice", "pieces of advice");
        AddCount(parts, counts.Waived, "finding waived", "findings waived");
        AddCount(parts, counts.Undecided, "question left open", "questions left open");
        return parts.Count == 0 ? "nothing found" : string.Join(", ", parts);
    }

    private static void AddCount(List<string> parts, int count, string one, string many)
    {
        if (count > 0)
        {
            parts.Add($"{count} {(count == 1 ? one : many)}");
        }
    }

    private void WriteFindings(bool waived)
    {
        List<Finding> findings = [.. _report.Findings.Findings.Where(f => (f.Waived is not null) == waived)];
        if (waived && findings.Count > 0)
        {
            _layout.Heading("Waived");
        }

        foreach (Finding finding in findings)
        {
            WriteFinding(finding);
        }
    }

    private void WriteFinding(Finding finding)
    {
        string severity = SeverityWords.For(finding.Severity).ToUpperInvariant();
        string where = finding.PartKind == FactVocabulary.PackKind ? "the box" : finding.Part;
        _layout.Blank();
        _layout.Paragraph(0, severity, $"{where}, line {finding.At.Line}: {finding.Rule}", ColourOf(finding.Severity));
        _layout.Paragraph(2, "", finding.Message);
        _layout.Paragraph(2, "Do:", finding.Mend);
        if (finding.Waived is { } waived)
        {
            string until = waived.Until is { } day ? FormattableString.Invariant($" (until {day:yyyy-MM-dd})") : "";
            _layout.Paragraph(2, "Accepted:", waived.Because + until);
        }

        if (finding.Assumed.Count > 0)
        {
            _layout.Paragraph(2, "Assumed:", string.Join("; ", finding.Assumed) + ".");
        }

        _layout.Paragraph(2, "From:", finding.Source.ToString());
    }

    private void WriteMargins()
    {
        if (_report.Findings.NearestMargins.Count == 0)
        {
            return;
        }

        _layout.Heading("Passes, nearest to the limit");
        foreach (Margin margin in _report.Findings.NearestMargins)
        {
            string label = $"{NumberWords.Percent(margin.Share),6}";
            string used = NumberWords.Quantity(margin.Used, margin.Unit);
            string limit = NumberWords.Quantity(margin.Limit, margin.Unit);
            string where = margin.Subject.Kind == FactVocabulary.PackKind ? "the box" : margin.Subject.Id;
            _layout.Paragraph(2, label, $"{where}: {used} of {limit} ({margin.Rule.Id})");
        }
    }

    private void WriteShelf()
    {
        if (_report.Facts.Pack.Find(PackFacts.TimeToCutOff.Name)?.Value is not double seconds)
        {
            return;
        }

        _layout.Heading("On the shelf");
        _layout.Paragraph(2, "", $"{NumberWords.Days(seconds / SecondsPerDay)} from full, with everything switched off, until the cut-off.");
    }

    private void WriteUndecided()
    {
        if (_report.Findings.Undecided.Count == 0)
        {
            return;
        }

        _layout.Heading("Could not be judged");
        foreach (IGrouping<string, Undecided> ofRule in _report.Findings.Undecided.GroupBy(u => u.Rule.Id))
        {
            string parts = string.Join(", ", ofRule.Select(u => u.Subject.Id));
            string missing = string.Join(", ", ofRule.SelectMany(u => u.Missing).Distinct().Select(name => name.Replace('_', ' ')));
            _layout.Paragraph(2, "-", $"{ofRule.Key} on {parts}: would need {missing}.");
        }
    }

    private void WriteCautions()
    {
        _layout.Heading("Before you touch it");
        foreach (string caution in _report.Cautions)
        {
            _layout.Paragraph(2, "-", caution);
        }
    }

    private static Severity? WorstOf(FindingCounts counts) => counts.Verdict switch
    {
        Verdict.Dangerous => Severity.Danger,
        Verdict.Faulty => Severity.Fault,
        Verdict.PassesWithAdvice => Severity.Advice,
        _ => null,
    };

    private static string ColourOf(Severity? severity) => severity switch
    {
        Severity.Danger => "\e[1;31m",
        Severity.Fault => "\e[1;33m",
        Severity.Advice => "\e[1;36m",
        _ => "\e[1;32m",
    };
}
