using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace WireCheck.Tests.Documentation;

/// <summary>Every section and key of a description as a page: what it means, an example, whether it must be there.</summary>
internal static class SchemaReference
{
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal static string Of(JsonObject schema)
    {
        StringBuilder page = new();
        page.Append("## Every key\n\nA key in bold must be there, unless a part class or `defaults` gives it.\n");
        foreach ((string name, JsonNode? node) in schema["properties"]!.AsObject())
        {
            JsonObject section = Resolved(node!, schema);
            page.Append($"\n### {name}\n\n{Words(section)}");
            JsonObject item = ItemOf(section, schema);
            List<string> rows = [];
            if (name != "defaults")
            {
                AddKeys(rows, "", item, schema);
            }

            if (rows.Count == 0)
            {
                page.Append($" Example: `{ExampleOf(section)}`.\n");
            }
            else
            {
                page.Append("\n\n").Append(Guide.Row("key", "what it is", "example")).Append("|---|---|---|\n").AppendJoin("", rows);
            }
        }

        return page.ToString();
    }

    private static void AddKeys(List<string> rows, string before, JsonObject node, JsonObject schema)
    {
        string[] required = [.. (node["required"]?.AsArray() ?? []).Select(r => r!.GetValue<string>())];
        foreach ((string key, JsonNode? value) in node["properties"]?.AsObject() ?? [])
        {
            JsonObject child = Resolved(value!, schema);
            string path = before + key;
            rows.Add(Guide.Row(required.Contains(key) ? $"**{path}**" : path, Words(child), $"`{ExampleOf(child)}`"));
            JsonObject item = ItemOf(child, schema);
            if (item["properties"] is not null)
            {
                AddKeys(rows, path + (child["items"] is null ? "." : "[]."), item, schema);
            }
        }
    }

    /// <summary>The shape of what a section or a list holds, or the shape itself.</summary>
    private static JsonObject ItemOf(JsonObject node, JsonObject schema) =>
        node["patternProperties"]?.AsObject().First().Value is { } named ? Resolved(named, schema)
        : node["items"] is JsonObject item ? Resolved(item, schema)
        : node["anyOf"]?.AsArray().Select(a => Resolved(a!, schema)).FirstOrDefault(a => a["properties"] is not null) is { } shape ? shape
        : node;

    private static JsonObject Resolved(JsonNode node, JsonObject schema) => node["$ref"] is { } reference
        ? schema["definitions"]![reference.GetValue<string>().Split('/')[^1]]!.AsObject()
        : node.AsObject();

    private static string Words(JsonObject node)
    {
        string[] choices = [.. (node["enum"]?.AsArray() ?? []).Where(c => c?.GetValueKind() == JsonValueKind.String).Select(c => c!.GetValue<string>())];
        string words = node["description"]!.GetValue<string>();
        return choices.Length > 1 && choices is not ["yes", "no"] ? $"{words} One of {string.Join(", ", choices)}." : words;
    }

    private static string ExampleOf(JsonObject node) => node["examples"]?.AsArray().FirstOrDefault() is { } example ? Yaml(example) : "";

    /// <summary>A value as it stands in one line of YAML.</summary>
    private static string Yaml(JsonNode? value) => value switch
    {
        JsonObject map => $"{{{string.Join(", ", map.Select(m => $"{m.Key}: {Yaml(m.Value)}"))}}}",
        JsonArray list => $"[{string.Join(", ", list.Select(Yaml))}]",
        JsonValue text when text.GetValueKind() == JsonValueKind.String => text.GetValue<string>(),
        null => "",
        _ => value.ToJsonString(Plain),
    };
}
