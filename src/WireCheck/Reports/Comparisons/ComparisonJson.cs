using System.Text.Json;
using WireCheck.Comparing;
using WireCheck.Facts;
using WireCheck.Findings;
using WireCheck.Reports.Json;
using WireCheck.Rules;

namespace WireCheck.Reports.Comparisons;

/// <summary>
/// What differs between two boxes for other programs, as <c>schema/comparison.schema.json</c> describes it. Numbers are in SI,
/// rounded to nine significant digits.
/// </summary>
public static class ComparisonJson
{
    /// <summary>Writes it as UTF-8 with a line feed at the end.</summary>
    public static void Write(Stream output, BoxDifference difference)
    {
        using (Utf8JsonWriter json = new(output, JsonReport.WriterOptions))
        {
            json.WriteStartObject();
            WriteTool(json);
            WriteBox(json, "old", difference.OldFile, difference.Old);
            WriteBox(json, "new", difference.NewFile, difference.New);
            json.WriteBoolean("worse", difference.IsWorse(Severity.Advice));
            json.WriteNumber("tolerance", difference.Tolerance);
            WriteList(json, "breaks", difference.Breaks, b => WriteBreak(json, b, difference.Growth.Power));
            WriteList(json, "items", difference.Items, i => WriteItem(json, i));
            WriteList(json, "findings", difference.Findings, f => WriteFinding(json, f));
            WriteList(json, "numbers", difference.Numbers, n => WriteNumber(json, n));
            json.WriteEndObject();
        }

        output.WriteByte((byte)'\n');
    }

    private static void WriteTool(Utf8JsonWriter json)
    {
        json.WriteStartObject("tool");
        json.WriteString("name", Report.ToolName);
        json.WriteString("version", Report.ToolVersion);
        json.WriteEndObject();
    }

    private static void WriteBox(Utf8JsonWriter json, string name, string file, JudgedBox box)
    {
        json.WriteStartObject(name);
        json.WriteString("file", file);
        json.WriteString("pack", box.Title);
        json.WriteString("verdict", VerdictWords.For(box.Findings.Counts.Verdict));
        json.WriteEndObject();
    }

    private static void WriteList<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteBreak(Utf8JsonWriter json, Break found, GrowingNumber? power)
    {
        json.WriteString("rule", found.Finding.Rule);
        json.WriteString("part", found.Finding.Part);
        json.WriteString("severity", SeverityWords.For(found.Finding.Severity));
        WriteNumber(json, "at", found.At);
        json.WriteString("at_power", power is null || found.At is not double at ? null : power.At(at));
        WriteNumber(json, "used", found.Used);
    }

    private static void WriteItem(Utf8JsonWriter json, ItemChange item)
    {
        json.WriteString("change", ComparisonWords.Change(item.Change));
        json.WriteString("kind", item.Kind);
        json.WriteString("id", item.Id);
        WriteNumber(json, "old_line", item.OldLine);
        WriteNumber(json, "new_line", item.NewLine);
        WriteList(json, "values", item.Values, v =>
        {
            json.WriteString("key", v.Key);
            json.WriteString("old", v.Old);
            json.WriteString("new", v.New);
            json.WriteBoolean("from_class", v.FromClass);
        });
    }

    private static void WriteFinding(Utf8JsonWriter json, FindingChange change)
    {
        Finding finding = change.Finding;
        json.WriteString("change", change.Change switch
        {
            ChangeKind.Added => "gained",
            ChangeKind.Removed => "lost",
            _ => "changed",
        });
        json.WriteString("rule", finding.Rule);
        json.WriteString("part", finding.Part);
        json.WriteString("severity", SeverityWords.For(finding.Severity));
        json.WriteString("old_severity", change.Old is { } old ? SeverityWords.For(old.Severity) : null);
        json.WriteBoolean("waived", finding.Waived is not null);
        json.WriteBoolean("worse", change.IsWorse);
        json.WriteNumber("line", finding.At.Line);
        json.WriteString("message", finding.Message);
        json.WriteString("mend", finding.Mend);
        WriteList(json, "moved", change.Moved, m =>
        {
            json.WriteString("name", m.Name);
            WriteNumber(json, "old", m.Old);
            WriteNumber(json, "new", m.New);
            json.WriteString("unit", m.Unit);
        });
    }

    private static void WriteNumber(Utf8JsonWriter json, MovedNumber number)
    {
        json.WriteString("kind", number.Kind);
        json.WriteString("part", number.Id);
        json.WriteString("name", number.Fact.Name);
        json.WriteString("unit", number.Fact.Unit);
        WriteNumber(json, "old", number.Old);
        WriteNumber(json, "new", number.New);
        WritePlace(json, "old_place", number.OldPlace);
        WritePlace(json, "new_place", number.NewPlace);
    }

    private static void WritePlace(Utf8JsonWriter json, string name, FactPlace? place)
    {
        if (place is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("mode", place.Mode);
        json.WriteString("corner", place.Corner);
        json.WriteEndObject();
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, double? value)
    {
        if (value is double number)
        {
            json.WriteNumber(name, JsonReport.Round(number));
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
