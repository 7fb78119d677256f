using System.Text.Json;
using WireCheck.Facts;
using WireCheck.Findings;
using WireCheck.Knowledge;
using WireCheck.Reports.Json;
using WireCheck.Reports.Templates;
using WireCheck.Rules;
using WireCheck.Text;
using WireCheck.Tolerances;

namespace WireCheck.Reports.Sarif;

/// <summary>
/// The findings in the Static Analysis Results Interchange Format (SARIF) 2.1.0 of OASIS, one run for all files. Columns count
/// UTF-16 characters. What could not be judged is a result of kind "open"; a waived finding is suppressed.
/// A margin that does not survive the tolerances is a failure that says so.
/// </summary>
public static class SarifReport
{
    private const string SchemaName = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    /// <summary>Writes the reports as UTF-8, with a line feed at the end.</summary>
    public static void Write(Stream output, IReadOnlyList<Report> reports)
    {
        SarifRules rules = new(reports);
        using (Utf8JsonWriter json = new(output, JsonReport.WriterOptions))
        {
            json.WriteStartObject();
            json.WriteString("$schema", SchemaName);
            json.WriteString("version", "2.1.0");
            json.WriteStartArray("runs");
            json.WriteStartObject();
            rules.WriteTool(json);
            json.WriteString("columnKind", "utf16CodeUnits");
            WriteArtifacts(json, reports);
            json.WriteStartArray("results");
            foreach (Report report in reports)
            {
                WriteResults(json, report, rules);
            }

            json.WriteEndArray();
            json.WriteEndObject();
            json.WriteEndArray();
            json.WriteEndObject();
        }

        output.WriteByte((byte)'\n');
    }

    private static void WriteArtifacts(Utf8JsonWriter json, IReadOnlyList<Report> reports)
    {
        json.WriteStartArray("artifacts");
        foreach (Report report in reports)
        {
            json.WriteStartObject();
            json.WriteStartObject("location");
            json.WriteString("uri", SarifLocation.UriOf(report.File));
            json.WriteEndObject();
            json.WriteString("sourceLanguage", "yaml");
            json.WriteStartObject("description");
            json.WriteString("text", Words(report.PackTitle));
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteResults(Utf8JsonWriter json, Report report, SarifRules rules)
    {
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        SarifLocation places = new(report);
        foreach (Finding finding in report.Findings.Findings)
        {
            WriteFinding(finding, $"{finding.Message} {finding.Mend}");
        }

        foreach (LostMargin lost in report.Tolerance?.Lost ?? [])
        {
            string at = ToleranceModel.Where(lost, report.Tolerance!.Corners);
            WriteFinding(lost.Finding, $"Passes as described, not {at}. {lost.Finding.Message} {lost.Finding.Mend}");
        }

        foreach (Undecided open in report.Findings.Undecided)
        {
            json.WriteStartObject();
            WriteRule(json, open.Rule.Id, rules);
            json.WriteString("kind", "open");
            json.WriteString("level", "none");
            WriteMessage(json, $"{open.Subject.Id} could not be judged; it would need {string.Join(", ", open.Missing.Select(m => m.Replace('_', ' ')))}.");
            SarifLocation.Write(json, open.Subject.Id, open.Subject.Kind, open.Subject.Position);
            json.WriteEndObject();
        }

        void WriteFinding(Finding finding, string message)
        {
            json.WriteStartObject();
            WriteRule(json, finding.Rule, rules);
            json.WriteString("kind", "fail");
            json.WriteString("level", LevelOf(finding.Severity));
            WriteMessage(json, message);
            SarifLocation.Write(json, finding.Part, finding.PartKind, finding.At);
            places.WriteRelated(json, finding);
            SarifFingerprint.Write(json, finding, seen);
            SarifFixes.Write(json, finding, report);
            WriteSuppression(json, finding);
            WriteProperties(json, finding);
            json.WriteEndObject();
        }
    }

    private static void WriteRule(Utf8JsonWriter json, string rule, SarifRules rules)
    {
        json.WriteString("ruleId", rule);
        json.WriteNumber("ruleIndex", rules.IndexOf(rule));
    }

    internal static string LevelOf(Severity severity) => severity switch
    {
        Severity.Danger => "error",
        Severity.Fault => "warning",
        _ => "note",
    };

    internal static void WriteMessage(Utf8JsonWriter json, string words)
    {
        json.WriteStartObject("message");
        json.WriteString("text", Words(words));
        json.WriteEndObject();
    }

    /// <summary>Words as a message: a viewer reads brackets as links and braces as placeholders, so both are plain.</summary>
    internal static string Words(string words) =>
        PlainText.Escape(words).Replace("{", "(", StringComparison.Ordinal).Replace("}", ")", StringComparison.Ordinal)
            .Replace("[", "(", StringComparison.Ordinal).Replace("]", ")", StringComparison.Ordinal);

    private static void WriteSuppression(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartArray("suppressions");
        if (finding.Waived is { } waived)
        {
            json.WriteStartObject();
            json.WriteString("kind", "inSource");
            json.WriteString("status", "accepted");
            json.WriteString("justification", waived.Until is { } day
                ? FormattableString.Invariant($"{PlainText.Escape(waived.Because)} (until {day:yyyy-MM-dd})")
                : PlainText.Escape(waived.Because));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteProperties(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject("properties");
        json.WriteString("severity", SeverityWords.For(finding.Severity));
        json.WriteString("part", PlainText.Escape(finding.Part));
        json.WriteString("mend", PlainText.Escape(finding.Mend));
        json.WriteString("source", finding.Source.ToString());
        json.WriteString("standing", StandingWords.For(finding.Source.Standing));
        if (finding.Place is { } place)
        {
            json.WriteString("mode", place.Mode);
            json.WriteString("corner", place.Corner);
        }

        json.WriteStartArray("assumed");
        foreach (string assumed in finding.Assumed)
        {
            json.WriteStringValue(PlainText.Escape(assumed));
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
