using System.Text.Json;
using WireCheck.Findings;
using WireCheck.Reports.Numbers;
using WireCheck.Rules;
using WireCheck.Sizing;

namespace WireCheck.Reports.Sizing;

/// <summary>What sizing came to, for other programs: SI units, the same bytes for the same input.</summary>
public static class SizingJson
{
    /// <summary>Choices, sums and conflicts.</summary>
    public static void Write(Stream output, string file, string pack, SizingResult sizing) =>
        NumbersJson.Write(output, file, pack, json =>
        {
            json.WriteString("verdict_before", VerdictWords.For(sizing.Before.Counts.Verdict));
            json.WriteString("verdict", VerdictWords.For(sizing.After.Counts.Verdict));
            NumbersJson.Number(json, "metal_before_cubic_metres", sizing.MetalBefore);
            NumbersJson.Number(json, "metal_cubic_metres", sizing.MetalAfter);
            NumbersJson.Number(json, "price_before", sizing.PriceBefore);
            NumbersJson.Number(json, "price", sizing.PriceAfter);
            json.WriteNumber("checks", sizing.Checks);
            json.WriteStartArray("choices");
            foreach (SizedChoice choice in sizing.Choices)
            {
                WriteChoice(json, choice);
            }

            json.WriteEndArray();
            json.WriteStartArray("conflicts");
            foreach (Conflict conflict in sizing.Conflicts)
            {
                WriteConflict(json, conflict);
            }

            json.WriteEndArray();
        });

    private static void WriteChoice(Utf8JsonWriter json, SizedChoice choice)
    {
        json.WriteStartObject();
        json.WriteString("section", choice.Value.Section);
        json.WriteString("part", choice.Value.Id);
        json.WriteStartArray("keys");
        foreach (string key in choice.Value.Keys)
        {
            json.WriteStringValue(key);
        }

        json.WriteEndArray();
        json.WriteString("now", choice.Value.Written);
        json.WriteString("chosen", choice.Chosen.Text);
        json.WriteString("decided_by", choice.Decision switch { Decision.Rule => "rule", Decision.Given => "given", _ => "smallest" });
        json.WriteString("next_smaller", choice.Smaller);
        json.WriteStartArray("fails");
        foreach (Finding finding in choice.Fails)
        {
            WriteFinding(json, finding);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteConflict(Utf8JsonWriter json, Conflict conflict)
    {
        json.WriteStartObject();
        json.WritePropertyName("finding");
        WriteFinding(json, conflict.Finding);
        json.WriteString("part", conflict.Value?.Id);
        json.WriteStartArray("rules");
        foreach (string rule in conflict.Rules)
        {
            json.WriteStringValue(rule);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteFinding(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("rule", finding.Rule);
        json.WriteString("severity", SeverityWords.For(finding.Severity));
        json.WriteString("part", finding.Part);
        json.WriteString("message", finding.Message);
        json.WriteEndObject();
    }
}
