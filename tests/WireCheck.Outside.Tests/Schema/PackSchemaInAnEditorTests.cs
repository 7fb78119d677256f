using System.Text.Json;
using WireCheck.Outside.Tests.Reports;

namespace WireCheck.Outside.Tests.Schema;

/// <summary>The schema as an editor uses it: the YAML language server of npm diagnoses and completes a description with it.</summary>
public sealed class PackSchemaInAnEditorTests
{
    [Fact]
    public void An_example_has_no_problem_and_its_keys_are_completed_and_explained()
    {
        string example = Path.Combine(Tool.Root, "examples", "market-stall-12v.yaml");
        int line = Array.FindIndex(File.ReadAllLines(example), l => l.StartsWith("fuses:", StringComparison.Ordinal));
        JsonElement told = Ask(example, line, 2);

        Strings(told, "problems").ShouldBeEmpty();
        told.GetProperty("hover").GetString()!.Length.ShouldBeGreaterThan(20);
    }

    [Fact]
    public void A_wrong_value_is_diagnosed_and_the_keys_of_a_fuse_are_offered()
    {
        string file = Path.Combine(Path.GetTempPath(), $"editor-{Guid.NewGuid():N}.yaml");
        File.WriteAllText(file, "pack: Box\nlanguage: 1\nfuses:\n  main:\n    rating: 20\n    \n");
        try
        {
            JsonElement told = Ask(file, 5, 4);

            Strings(told, "problems").ShouldContain(p => p.StartsWith("5: ", StringComparison.Ordinal));
            string[] offered = Strings(told, "completions");
            offered.ShouldContain("class");
            offered.ShouldContain("holder");
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static JsonElement Ask(string file, int line, int column)
    {
        Tool.Package("yaml-language-server/package.json");
        (int code, string output, string errors) = Tool.Run(
            "node", Path.Combine(Tool.Browser, "editor.js"), Path.Combine(Tool.Root, "schema", "pack.schema.json"), file,
            line.ToString(System.Globalization.CultureInfo.InvariantCulture), column.ToString(System.Globalization.CultureInfo.InvariantCulture));
        code.ShouldBe(0, errors);
        return JsonDocument.Parse(output).RootElement;
    }

    private static string[] Strings(JsonElement told, string name) => [.. told.GetProperty(name).EnumerateArray().Select(e => e.GetString()!)];
}
