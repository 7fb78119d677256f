using System.Text.Json;
using WireCheck.Findings;
using WireCheck.Knowledge;
using WireCheck.Rules;

namespace WireCheck.Reports.Sarif;

/// <summary>The tool and the rules that a SARIF run names, each once and in the order of their names.</summary>
internal sealed class SarifRules
{
    private readonly List<RuleEntry> _rules = [];
    private readonly Dictionary<string, int> _places = new(StringComparer.Ordinal);

    internal SarifRules(IReadOnlyList<Report> reports)
    {
        SortedDictionary<string, RuleEntry> named = new(StringComparer.Ordinal);
        foreach (Report report in reports)
        {
            foreach (Finding finding in report.Findings.Findings.Concat(report.Tolerance?.Lost.Select(l => l.Finding) ?? []))
            {
                named.TryAdd(finding.Rule, new RuleEntry(finding.Rule, finding.Title, finding.Why, finding.Source, finding.Severity));
            }

            foreach (Rule rule in report.Findings.Undecided.Select(u => u.Rule))
            {
                named.TryAdd(rule.Id, new RuleEntry(rule.Id, rule.Title, rule.Why, rule.Source, rule.Severity));
            }
        }

        foreach (RuleEntry rule in named.Values)
        {
            _places.Add(rule.Id, _rules.Count);
            _rules.Add(rule);
        }
    }

    internal int IndexOf(string rule) => _places[rule];

    internal void WriteTool(Utf8JsonWriter json)
    {
        json.WriteStartObject("tool");
        json.WriteStartObject("driver");
        json.WriteString("name", Report.ToolName);
        json.WriteString("version", Report.ToolVersion);
        json.WriteString("semanticVersion", Report.ToolVersion);
        json.WriteStartArray("rules");
        foreach (RuleEntry rule in _rules)
        {
            Write(json, rule);
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, RuleEntry rule)
    {
        json.WriteStartObject();
        json.WriteString("id", rule.Id);
        json.WriteString("name", PascalCase(rule.Id));
        Text(json, "shortDescription", rule.Title.TrimEnd('.') + ".");
        Text(json, "fullDescription", rule.Why);
        Text(json, "help", $"{rule.Why} Source: {rule.Source}. The whole page: {Report.ToolName} explain {rule.Id}");
        json.WriteStartObject("defaultConfiguration");
        json.WriteString("level", SarifReport.LevelOf(rule.Severity));
        json.WriteEndObject();
        json.WriteStartObject("properties");
        json.WriteString("standing", StandingWords.For(rule.Source.Standing));
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Text(Utf8JsonWriter json, string name, string words)
    {
        json.WriteStartObject(name);
        json.WriteString("text", PlainText.Escape(words));
        json.WriteEndObject();
    }

    private static string PascalCase(string id) =>
        string.Concat(id.Split('-', StringSplitOptions.RemoveEmptyEntries).Select(word => char.ToUpperInvariant(word[0]) + word[1..]));

    private sealed record RuleEntry(string Id, string Title, string Why, Source Source, Severity Severity);
}
