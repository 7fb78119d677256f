using System.Text.Json;
using WireCheck.Edits;
using WireCheck.Findings;

namespace WireCheck.Reports.Sarif;

/// <summary>The values that a finding offers to write, as stretches of the description to be replaced.</summary>
internal static class SarifFixes
{
    /// <summary>Writes <c>fixes</c> where every value of the finding can be written; nothing where one cannot.</summary>
    internal static void Write(Utf8JsonWriter json, Finding finding, Report report)
    {
        if (finding.Edits.Count == 0 || report.Text?.Value is not { } text)
        {
            return;
        }

        EditPlan plan = text.Plan([.. finding.Edits.Select(e => new ValueEdit(e.Part, e.Key, e.Value))]);
        if (plan.Refused.Count > 0 || plan.Changes.Count == 0)
        {
            return;
        }

        json.WriteStartArray("fixes");
        json.WriteStartObject();
        json.WriteStartObject("description");
        json.WriteString("text", SarifReport.Words(EditWords.Of(finding)));
        json.WriteEndObject();
        json.WriteStartArray("artifactChanges");
        json.WriteStartObject();
        json.WriteStartObject("artifactLocation");
        json.WriteString("uri", SarifLocation.UriOf(report.File));
        json.WriteEndObject();
        json.WriteStartArray("replacements");
        foreach (TextChange change in plan.Changes)
        {
            WriteReplacement(json, change);
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void WriteReplacement(Utf8JsonWriter json, TextChange change)
    {
        json.WriteStartObject();
        json.WriteStartObject("deletedRegion");
        json.WriteNumber("startLine", change.Start.Line);
        json.WriteNumber("startColumn", change.Start.Column);
        json.WriteNumber("endLine", change.End.Line);
        json.WriteNumber("endColumn", change.End.Column);
        json.WriteEndObject();
        json.WriteStartObject("insertedContent");
        json.WriteString("text", change.NewText);
        json.WriteEndObject();
        json.WriteEndObject();
    }
}
