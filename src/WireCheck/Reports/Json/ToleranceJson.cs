using System.Text.Json;
using WireCheck.Rules;
using WireCheck.Tolerances;

namespace WireCheck.Reports.Json;

/// <summary>What becomes of a box within its tolerances, as a part of the JSON report.</summary>
internal static class ToleranceJson
{
    internal static void Write(Utf8JsonWriter json, ToleranceResult result)
    {
        json.WriteStartObject("tolerance");
        json.WriteNumber("corners", result.Corners);
        json.WriteStartArray("of");
        foreach (Tolerance tolerance in result.Tolerances.Varied)
        {
            json.WriteStartObject();
            json.WriteString("name", tolerance.Name);
            json.WriteNumber("share", JsonReport.Round(tolerance.Share));
            json.WriteBoolean("declared", tolerance.Source is null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("lost");
        foreach (LostMargin lost in result.Lost)
        {
            WriteLost(json, lost);
        }

        json.WriteEndArray();
        json.WriteStartArray("thinnest");
        foreach (ThinMargin margin in result.Thinnest)
        {
            json.WriteStartObject();
            json.WriteString("rule", margin.Described.Rule.Id);
            json.WriteString("part", margin.Described.Subject.Id);
            json.WriteNumber("described", JsonReport.Round(margin.Described.Share));
            json.WriteNumber("worst", JsonReport.Round(margin.Worst.Share));
            json.WriteString("corner", margin.Corner);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteLost(Utf8JsonWriter json, LostMargin lost)
    {
        json.WriteStartObject();
        json.WriteString("rule", lost.Finding.Rule);
        json.WriteString("part", lost.Finding.Part);
        json.WriteString("severity", SeverityWords.For(lost.Finding.Severity));
        json.WriteString("message", lost.Finding.Message);
        json.WriteNumber("corners", lost.Corners);
        json.WriteStartObject("needs");
        foreach ((string name, bool high) in lost.Needs)
        {
            json.WriteString(name, high ? "high" : "low");
        }

        json.WriteEndObject();
        json.WriteEndObject();
    }
}
