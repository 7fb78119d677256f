using System.Text.RegularExpressions;
using Newtonsoft.Json.Linq;
using NJsonSchema;
using NJsonSchema.Validation;
using WireCheck.Description.Reader;
using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>
/// Holds a description against <c>schema/pack.schema.json</c>, the same file that editors load. The typed
/// reader says more clearly what is wrong, so only what it let pass is told here.
/// </summary>
internal static class SchemaCheck
{
    private const string ResourceName = "schema/pack.schema.json";

    // The schema has a few hundred patterns; the validator asks for each by its text, and the cache of the
    // platform would keep only fifteen of them.
    private const int Patterns = 1024;

    // The schema is loaded once, on another thread.
    private static readonly Lazy<Task<JsonSchema>> Schema = new(() => Task.Run(Load));

    private static readonly JsonLoadSettings WithPlaces = new() { LineInfoHandling = LineInfoHandling.Load };

    /// <summary>Notes what does not fit the schema, where nothing in the same piece is noted yet.</summary>
    internal static void Check(YamlMap root, ProblemList problems) => Note(root, BeginCheck(root).GetAwaiter().GetResult(), problems);

    /// <summary>
    /// Holds a description against the schema on another thread. It takes longer than reading the description and
    /// solving its circuit, and nearly always finds nothing that the typed reader let pass.
    /// </summary>
    internal static Task<ICollection<ValidationError>> BeginCheck(YamlMap root) => Task.Run(async () =>
    {
        using YamlJsonReader reader = new(root);
        JToken document = JToken.Load(reader, WithPlaces);
        return (await Schema.Value.ConfigureAwait(false)).Validate(document);
    });

    /// <summary>Notes what the check found, where nothing in the same piece is noted yet.</summary>
    internal static void Note(YamlMap root, ICollection<ValidationError> errors, ProblemList problems)
    {
        if (errors.Count == 0)
        {
            return;
        }

        ToldPlaces told = new(root, problems.InOrder());
        foreach (ValidationError error in errors.SelectMany(Deepest))
        {
            Position place = new(root.Position.File, Math.Max(1, error.LineNumber), Math.Max(1, error.LinePosition));
            if (!told.Within(place))
            {
                string path = (error.Path ?? "").TrimStart('#', '/');
                problems.Add(place, InputMessages.AgainstSchema(path, error.Schema.Description, ExampleOf(error.Schema)));
            }
        }
    }

    /// <summary>The schema as text.</summary>
    internal static string Text()
    {
        using StreamReader reader = new(Open());
        return reader.ReadToEnd();
    }

    private static JsonSchema Load()
    {
        Regex.CacheSize = Math.Max(Regex.CacheSize, Patterns);
        using Stream text = Open();
        return SchemaReader.Read(text);
    }

    private static Stream Open() => typeof(SchemaCheck).Assembly.GetManifestResourceStream(ResourceName)
        ?? throw new InvalidOperationException($"{ResourceName} is not built in");

    /// <summary>The errors inside an error of several choices, where they lie deeper; else the error itself.</summary>
    private static IEnumerable<ValidationError> Deepest(ValidationError error)
    {
        IEnumerable<ValidationError> inside = error switch
        {
            ChildSchemaValidationError choices => choices.Errors.Values.SelectMany(e => e),
            MultiTypeValidationError types => types.Errors.Values.SelectMany(e => e),
            _ => [],
        };
        ValidationError[] deeper = [.. inside.SelectMany(Deepest).Where(e => e.Path != error.Path)];
        return deeper.Length > 0 ? deeper : [error];
    }

    private static string? ExampleOf(JsonSchema schema) =>
        schema.ExtensionData?.TryGetValue("examples", out object? examples) == true
        && examples is IEnumerable<object?> list && list.FirstOrDefault() is (string or long or double) and object first
            ? Convert.ToString(first, System.Globalization.CultureInfo.InvariantCulture)
            : null;
}
