using NJsonSchema;
using WireCheck.Knowledge;
using YamlDotNet.Serialization;

namespace WireCheck.Tests.Knowledge;

/// <summary>Every table and part file meets the schema that an editor loads for it.</summary>
public sealed class TablesSchemaTests
{
    [Fact]
    public async Task Every_table_and_part_file_meets_its_schema()
    {
        JsonSchema schema = await JsonSchema.FromFileAsync(Path.Combine(Golden.Root, "schema", "tables.schema.json"));
        IDeserializer yaml = new DeserializerBuilder().WithAttemptingUnquotedStringTypeDeserialization().Build();
        ISerializer json = new SerializerBuilder().JsonCompatible().Build();
        KnowledgeFiles files = KnowledgeFiles.Embedded();
        foreach (string file in files.In("rules/tables/").Concat(files.In("rules/parts/")))
        {
            object? tree = yaml.Deserialize(await File.ReadAllTextAsync(Path.Combine(Golden.Root, file)));

            schema.Validate(json.Serialize(tree)).ShouldBeEmpty(file);
        }
    }

    [Theory]
    [InlineData("{\"table\": \"materials\"}")]
    [InlineData("{\"kind\": \"relays\", \"classes\": []}")]
    [InlineData("{\"table\": \"stud-rules\", \"values\": [{\"name\": \"a\", \"value\": 4, \"means\": \"b\"}]}")]
    public async Task A_file_without_values_or_sources_does_not(string text)
    {
        JsonSchema schema = await JsonSchema.FromFileAsync(Path.Combine(Golden.Root, "schema", "tables.schema.json"));

        schema.Validate(text).ShouldNotBeEmpty();
    }
}
