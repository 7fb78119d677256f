using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using WireCheck.Facts;
using WireCheck.Findings;
using WireCheck.Rules;

namespace WireCheck.Reports.Json;

/// <summary>
/// The report for other programs, as <c>schema/result.schema.json</c> describes it. Numbers are in SI and
/// rounded to nine significant digits; there are no times or paths of the machine, so the same input gives
/// the same bytes.
/// </summary>
public static class JsonReport
{
    internal static readonly JsonWriterOptions WriterOptions = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = MakeEncoder(),
    };

    /// <summary>
    /// Writes the reports as UTF-8, with a line feed at the end: one as an object, several as a list of objects.
    /// </summary>
    public static void Write(Stream output, IReadOnlyList<Report> reports)
    {
        using (Utf8JsonWriter json = new(output, WriterOptions))
        {
            if (reports.Count == 1)
            {
                WriteReport(json, reports[0]);
            }
            else
            {
                json.WriteStartArray();
                foreach (Report report in reports)
                {
                    WriteReport(json, report);
                }

                json.WriteEndArray();
            }
        }

        output.WriteByte((byte)'\n');
    }

    private static void WriteReport(Utf8JsonWriter json, Report report)
    {
        json.WriteStartObject();
        json.WriteStartObject("tool");
        json.WriteString("name", Report.ToolName);
        json.WriteString("version", Report.ToolVersion);
        json.WriteEndObject();
        json.WriteString("file", report.File);
        json.WriteString("pack", report.PackTitle);
        json.WriteString("verdict", VerdictWords.For(report.Verdict));
        WriteCounts(json, report.Findings.Counts);
        WriteOverrides(json, report.Overrides);
        json.WriteStartArray("findings");
        foreach (Finding finding in report.Findings.Findings)
        {
            WriteFinding(json, finding);
        }

        json.WriteEndArray();
        WriteFacts(json, report.Facts);
        if (report.Tolerance is { } tolerance)
        {
            ToleranceJson.Write(json, tolerance);
        }

        json.WriteEndObject();
    }

    /// <summary>
    /// Letters of every script stay readable. Besides what the encoder always escapes, so are the characters
    /// that hide or reorder text, since a report may be shown in a terminal.
    /// </summary>
    private static JavaScriptEncoder MakeEncoder()
    {
        TextEncoderSettings settings = new(UnicodeRanges.All);
        settings.ForbidCharacters('\u00AD', '\u061C', '\u180E', '\uFEFF');
        settings.ForbidRange(UnicodeRange.Create('\u200B', '\u200F'));
        settings.ForbidRange(UnicodeRange.Create('\u2028', '\u202E'));
        settings.ForbidRange(UnicodeRange.Create('\u2060', '\u206F'));
        return JavaScriptEncoder.Create(settings);
    }

    private static void WriteOverrides(Utf8JsonWriter json, IReadOnlyList<SettingOverride> overrides)
    {
        if (overrides.Count == 0)
        {
            return;
        }

        json.WriteStartArray("overrides");
        foreach (SettingOverride changed in overrides)
        {
            json.WriteStartObject();
            json.WriteString("name", changed.Name);
            json.WriteString("written", changed.Written);
            json.WriteString("usual", changed.Usual);
            json.WriteString("because", changed.Because);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteCounts(Utf8JsonWriter json, FindingCounts counts)
    {
        json.WriteStartObject("counts");
        json.WriteNumber("danger", counts.Danger);
        json.WriteNumber("fault", counts.Fault);
        json.WriteNumber("advice", counts.Advice);
        json.WriteNumber("waived", counts.Waived);
        json.WriteNumber("undecided", counts.Undecided);
        json.WriteEndObject();
    }

    private static void WriteFinding(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("rule", finding.Rule);
        json.WriteString("severity", SeverityWords.For(finding.Severity));
        json.WriteString("part", finding.Part);
        json.WriteString("mode", finding.Place?.Mode);
        json.WriteString("message", finding.Message);
        json.WriteString("mend", finding.Mend);
        WriteEdits(json, finding.Edits);
        json.WriteStartObject("numbers");
        foreach (JudgedValue value in finding.Values)
        {
            WriteValue(json, value.Name, value.Value, value.Unit, value.Place);
        }

        json.WriteEndObject();
        json.WriteStartObject("at");
        json.WriteNumber("line", finding.At.Line);
        json.WriteNumber("column", finding.At.Column);
        json.WriteEndObject();
        WriteSource(json, finding.Source);
        WriteStrings(json, "assumed", finding.Assumed);
        WriteWaived(json, finding.Waived);
        json.WriteEndObject();
    }

    private static void WriteEdits(Utf8JsonWriter json, IReadOnlyList<OfferedEdit> edits)
    {
        json.WriteStartArray("edits");
        foreach (OfferedEdit edit in edits)
        {
            json.WriteStartObject();
            json.WriteString("part", edit.Part);
            json.WriteString("key", edit.Key);
            json.WriteString("value", edit.Value);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteSource(Utf8JsonWriter json, Knowledge.Source source)
    {
        json.WriteStartObject("source");
        json.WriteString("work", source.Work);
        json.WriteString("clause", source.Clause);
        json.WriteString("standing", Knowledge.StandingWords.For(source.Standing));
        json.WriteEndObject();
    }

    private static void WriteWaived(Utf8JsonWriter json, Waived? waived)
    {
        if (waived is null)
        {
            json.WriteNull("waived");
            return;
        }

        json.WriteStartObject("waived");
        json.WriteString("because", waived.Because);
        json.WriteString("until", waived.Until?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        json.WriteEndObject();
    }

    private static void WriteFacts(Utf8JsonWriter json, FactTable table)
    {
        json.WriteStartObject("facts");
        foreach (FactSubject subject in table.Subjects.Prepend(table.Pack))
        {
            json.WriteStartObject(subject.Id);
            foreach ((string name, FactValue fact) in subject.Values.OrderBy(f => f.Key, StringComparer.Ordinal))
            {
                WriteValue(json, name, fact.Value, fact.Definition.Unit, fact.Place);
            }

            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteValue(Utf8JsonWriter json, string name, object value, string unit, FactPlace? place)
    {
        json.WriteStartObject(name);
        switch (value)
        {
            case double number:
                json.WriteNumber("value", Round(number));
                json.WriteString("unit", unit);
                break;
            case bool yes:
                json.WriteBoolean("value", yes);
                break;
            case IEnumerable<string> names:
                WriteStrings(json, "value", names);
                break;
            default:
                json.WriteString("value", (string)value);
                break;
        }

        if (place is not null)
        {
            json.WriteString("mode", place.Mode);
            json.WriteString("corner", place.Corner);
        }

        json.WriteEndObject();
    }

    private static void WriteStrings(Utf8JsonWriter json, string name, IEnumerable<string> values)
    {
        json.WriteStartArray(name);
        foreach (string value in values)
        {
            json.WriteStringValue(value);
        }

        json.WriteEndArray();
    }

    /// <summary>Nine significant digits: finer ones are noise of the solver.</summary>
    internal static double Round(double value) =>
        double.Parse(value.ToString("G9", System.Globalization.CultureInfo.InvariantCulture), System.Globalization.CultureInfo.InvariantCulture);
}
