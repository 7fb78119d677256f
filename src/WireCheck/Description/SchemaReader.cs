using System.Text.Json;
using NJsonSchema;

namespace WireCheck.Description;

/// <summary>
/// Builds the validator's schema from the text of <c>schema/pack.schema.json</c>. The validator's own reader looks up every
/// property of every type by name while it runs, which took a third of a whole check. This one knows the words that the
/// schema uses and refuses every other; a test holds what it builds against what the validator's own reader builds.
/// </summary>
internal sealed class SchemaReader
{
    private readonly Dictionary<string, JsonSchema> _definitions = new(StringComparer.Ordinal);

    private SchemaReader()
    {
    }

    /// <summary>The schema of a text.</summary>
    /// <param name="text">UTF-8 of a schema that refers to its own <c>definitions</c> only.</param>
    /// <exception cref="InvalidOperationException">It uses a word that is not known here, or refers to nothing.</exception>
    internal static JsonSchema Read(Stream text)
    {
        using JsonDocument document = JsonDocument.Parse(text);
        SchemaReader reader = new();
        JsonSchema schema = new();
        if (document.RootElement.TryGetProperty("definitions", out JsonElement definitions))
        {
            foreach (JsonProperty definition in definitions.EnumerateObject())
            {
                reader._definitions.Add(definition.Name, new JsonSchema());
            }
        }

        reader.Fill(schema, document.RootElement);
        return schema;
    }

    private T Fill<T>(T schema, JsonElement from)
        where T : JsonSchema
    {
        foreach (JsonProperty word in from.EnumerateObject())
        {
            if (!TryPlainWord(schema, word.Name, word.Value) && !TryNestedWord(schema, word.Name, word.Value))
            {
                throw new InvalidOperationException($"the schema uses '{word.Name}', which its reader does not know");
            }
        }

        return schema;
    }

    private static bool TryPlainWord(JsonSchema schema, string word, JsonElement value)
    {
        switch (word)
        {
            case "$schema":
                schema.SchemaVersion = value.GetString()!;
                return true;
            case "title":
                schema.Title = value.GetString();
                return true;
            case "description":
                schema.Description = value.GetString();
                return true;
            case "type":
                schema.Type = TypeOf(value);
                return true;
            case "pattern":
                schema.Pattern = value.GetString();
                return true;
            case "maxLength":
                schema.MaxLength = value.GetInt32();
                return true;
            case "minimum":
                schema.Minimum = value.GetDecimal();
                return true;
            case "maximum":
                schema.Maximum = value.GetDecimal();
                return true;
            case "exclusiveMinimum":
                schema.ExclusiveMinimum = value.GetDecimal();
                return true;
            case "minItems":
                schema.MinItems = value.GetInt32();
                return true;
            case "maxItems":
                schema.MaxItems = value.GetInt32();
                return true;
            case "examples":
                schema.ExtensionData = new Dictionary<string, object?> { [word] = Plain(value) };
                return true;
            default:
                return false;
        }
    }

    private bool TryNestedWord(JsonSchema schema, string word, JsonElement value)
    {
        switch (word)
        {
            case "$ref":
                schema.Reference = Definition(value.GetString()!);
                return true;
            case "enum":
                foreach (JsonElement item in value.EnumerateArray())
                {
                    schema.Enumeration.Add(Plain(item));
                }

                return true;
            case "required":
                foreach (JsonElement item in value.EnumerateArray())
                {
                    schema.RequiredProperties.Add(item.GetString()!);
                }

                return true;
            case "properties":
                FillAll(schema.Properties, value);
                return true;
            case "patternProperties":
                FillAll(schema.PatternProperties, value);
                return true;
            case "additionalProperties" when value.ValueKind is JsonValueKind.True or JsonValueKind.False:
                schema.AllowAdditionalProperties = value.GetBoolean();
                return true;
            case "additionalProperties":
                schema.AdditionalPropertiesSchema = Fill(new JsonSchema(), value);
                return true;
            case "items":
                schema.Item = Fill(new JsonSchema(), value);
                return true;
            case "anyOf":
                foreach (JsonElement item in value.EnumerateArray())
                {
                    schema.AnyOf.Add(Fill(new JsonSchema(), item));
                }

                return true;
            case "definitions":
                foreach (JsonProperty definition in value.EnumerateObject())
                {
                    schema.Definitions.Add(definition.Name, Fill(Definition($"#/definitions/{definition.Name}"), definition.Value));
                }

                return true;
            default:
                return false;
        }
    }

    private void FillAll(IDictionary<string, JsonSchemaProperty> properties, JsonElement from)
    {
        foreach (JsonProperty property in from.EnumerateObject())
        {
            properties.Add(property.Name, Fill(new JsonSchemaProperty(), property.Value));
        }
    }

    private JsonSchema Definition(string reference)
    {
        const string Place = "#/definitions/";
        return reference.StartsWith(Place, StringComparison.Ordinal) && _definitions.TryGetValue(reference[Place.Length..], out JsonSchema? found)
            ? found
            : throw new InvalidOperationException($"the schema refers to '{reference}', which it does not define");
    }

    private static JsonObjectType TypeOf(JsonElement value)
    {
        if (value.ValueKind != JsonValueKind.Array)
        {
            return OneType(value.GetString()!);
        }

        JsonObjectType types = JsonObjectType.None;
        foreach (JsonElement item in value.EnumerateArray())
        {
            types |= OneType(item.GetString()!);
        }

        return types;
    }

    private static JsonObjectType OneType(string word) => word switch
    {
        "string" => JsonObjectType.String,
        "number" => JsonObjectType.Number,
        "integer" => JsonObjectType.Integer,
        "boolean" => JsonObjectType.Boolean,
        "object" => JsonObjectType.Object,
        "array" => JsonObjectType.Array,
        "null" => JsonObjectType.Null,
        _ => throw new InvalidOperationException($"the schema uses the type '{word}', which its reader does not know"),
    };

    /// <summary>A value as the validator's own reader holds it.</summary>
    private static object? Plain(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.String => value.GetString(),
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        JsonValueKind.Number => value.TryGetInt64(out long whole) ? (object)whole : value.GetDouble(),
        JsonValueKind.Array => PlainList(value),
        JsonValueKind.Object => PlainMap(value),
        _ => null,
    };

    private static object?[] PlainList(JsonElement value)
    {
        object?[] items = new object?[value.GetArrayLength()];
        for (int i = 0; i < items.Length; i++)
        {
            items[i] = Plain(value[i]);
        }

        return items;
    }

    private static Dictionary<string, object?> PlainMap(JsonElement value)
    {
        Dictionary<string, object?> map = [];
        foreach (JsonProperty property in value.EnumerateObject())
        {
            map.Add(property.Name, Plain(property.Value));
        }

        return map;
    }
}
