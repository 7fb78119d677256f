using System.Text;
using Newtonsoft.Json.Linq;
using NJsonSchema;
using WireCheck.Description;

namespace WireCheck.Tests.Description;

public sealed class SchemaReaderTests
{
    [Fact]
    public async Task It_builds_what_the_readers_of_the_validator_build()
    {
        JsonSchema own = Read(SchemaCheck.Text());
        JsonSchema theirs = await JsonSchema.FromJsonAsync(SchemaCheck.Text());

        string[] lines = own.ToJson().Split('\n');
        string[] wanted = theirs.ToJson().Split('\n');
        lines.Zip(wanted).Where(pair => pair.First != pair.Second).Take(5).ShouldBeEmpty();
        lines.Length.ShouldBe(wanted.Length);
    }

    [Fact]
    public async Task Both_find_the_same_wrong_in_every_example_with_a_value_taken_out_or_changed()
    {
        JsonSchema own = Read(SchemaCheck.Text());
        JsonSchema theirs = await JsonSchema.FromJsonAsync(SchemaCheck.Text());
        int wrong = 0;
        foreach (JObject changed in Changed())
        {
            string[] found = [.. own.Validate(changed).Select(e => e.ToString())];
            found.ShouldBe(theirs.Validate(changed).Select(e => e.ToString()));
            wrong += found.Length > 0 ? 1 : 0;
        }

        wrong.ShouldBeGreaterThan(100);
    }

    [Theory]
    [InlineData("""{"type": "object", "minProperties": 1}""", "minProperties")]
    [InlineData("""{"type": "text"}""", "text")]
    [InlineData("""{"properties": {"a": {"$ref": "#/definitions/b"}}, "definitions": {"a": {}}}""", "#/definitions/b")]
    public void A_word_that_it_does_not_know_is_refused(string text, string named) =>
        Should.Throw<InvalidOperationException>(() => Read(text)).Message.ShouldContain($"'{named}'");

    private static JsonSchema Read(string text) => SchemaReader.Read(new MemoryStream(Encoding.UTF8.GetBytes(text)));

    /// <summary>Each example of the schema as a description, whole, and with each of its values made wrong in turn.</summary>
    private static IEnumerable<JObject> Changed()
    {
        JObject schema = JObject.Parse(SchemaCheck.Text());
        foreach (JProperty section in ((JObject)schema["properties"]!).Properties())
        {
            if (section.Value["examples"] is not JArray { Count: > 0 } examples)
            {
                continue;
            }

            JObject box = new() { ["pack"] = "Box", ["language"] = 1, [section.Name] = examples[0].DeepClone() };
            yield return box;
            foreach (JToken value in box.Descendants().Where(t => t is JValue).ToList())
            {
                foreach (JToken other in new JToken[] { 7, true, "no such thing", new JObject(), new JArray(1), JValue.CreateNull() })
                {
                    JObject changed = (JObject)box.DeepClone();
                    changed.SelectToken(value.Path)!.Replace(other);
                    yield return changed;
                }
            }
        }
    }
}
