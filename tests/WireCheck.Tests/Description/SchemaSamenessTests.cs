using Newtonsoft.Json.Linq;
using WireCheck.Description;
using WireCheck.Description.Reader;
using WireCheck.Text;

namespace WireCheck.Tests.Description;

/// <summary>The schema that editors load and the typed reader know the same keys.</summary>
public sealed class SchemaSamenessTests
{
    private static readonly JObject Schema = JObject.Parse(SchemaCheck.Text());

    public static TheoryData<string> Sections() =>
        [.. PartSections.All.Select(s => s.Name), SectionNames.Conductors, "modes", "paths"];

    [Theory]
    [MemberData(nameof(Sections))]
    public void The_schema_has_exactly_the_keys_that_the_reader_knows(string section)
    {
        string[] known = [.. Paths(Record(section), "").Order(StringComparer.Ordinal)];
        JObject entry = (JObject)((JProperty)Schema["properties"]![section]!["patternProperties"]!.First!).Value;

        PathsOfSchema(entry, "").Where(p => !IsEndOfRange(p)).Distinct().Order(StringComparer.Ordinal).ShouldBe(known);
    }

    [Fact]
    public void The_schema_has_exactly_the_sections_that_the_reader_knows()
    {
        IEnumerable<string> sections = ((JObject)Schema["properties"]!).Properties().Select(p => p.Name);

        sections.Order(StringComparer.Ordinal).ShouldBe(HeadReader.KnownKeys.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_schema_has_the_defaults_of_every_kind()
    {
        IEnumerable<string> kinds = ((JObject)Schema["properties"]!["defaults"]!["properties"]!).Properties().Select(p => p.Name);

        kinds.Order(StringComparer.Ordinal).ShouldBe(PartSections.Kinds.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_property_of_the_schema_has_a_description_and_an_example()
    {
        string[] bare = [.. Schema.Descendants().OfType<JProperty>()
            .Where(p => p.Name == "properties")
            .SelectMany(p => ((JObject)p.Value).Properties())
            .Where(p => p.Value["$ref"] is null && !(p.Value["description"] is not null && p.Value["examples"] is JArray { Count: > 0 }))
            .Select(p => p.Path)];

        bare.ShouldBeEmpty();
    }

    private static KeyShape Record(string section)
    {
        Position place = new("nowhere", 1, 1);
        ReadContext context = new(new ProblemList(), LibraryClasses.Embedded, new ReferenceList()) { Recording = true };
        MapReader reader = MapReader.Root(context, section, "part", place, []);
        switch (section)
        {
            case "modes":
                IntentReaders.ReadMode(reader);
                break;
            case "paths":
                IntentReaders.ReadPath(reader);
                break;
            case SectionNames.Conductors:
                reader.Has("part", typeof(string));
                ConductorReader.Read(reader);
                break;
            default:
                reader.Has("part", typeof(string));
                PartSections.All.Single(s => s.Name == section).Read(reader);
                break;
        }

        return reader.Shape;
    }

    private static IEnumerable<string> Paths(KeyShape shape, string above) =>
        shape.Keys.SelectMany(key => Paths(shape[key], $"{above}/{key}").Prepend($"{above}/{key}"));

    private static IEnumerable<string> PathsOfSchema(JToken schema, string above)
    {
        JToken actual = schema["$ref"] is JToken reference ? Schema.SelectToken(((string)reference!)[2..].Replace('/', '.'))! : schema;
        IEnumerable<string> own = actual["properties"] is JObject properties
            ? properties.Properties().SelectMany(p => PathsOfSchema(p.Value, $"{above}/{p.Name}").Prepend($"{above}/{p.Name}"))
            : [];
        IEnumerable<string> choices = actual["anyOf"] is JArray any ? any.SelectMany(choice => PathsOfSchema(choice, above)) : [];
        IEnumerable<string> items = actual["items"] is JObject item ? PathsOfSchema(item, above) : [];
        return own.Concat(choices).Concat(items);
    }

    // A range may be a mapping of its two ends; to the reader it is one value.
    private static bool IsEndOfRange(string path) =>
        path.Count(c => c == '/') > 1 && (path.EndsWith("/from", StringComparison.Ordinal) || path.EndsWith("/to", StringComparison.Ordinal));
}
