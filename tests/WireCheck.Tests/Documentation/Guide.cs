using WireCheck.Tests.House;

namespace WireCheck.Tests.Documentation;

/// <summary>
/// A guide whose beginning is written by hand and whose end is generated. With WIRECHECK_REGENERATE set to 1 the end is
/// written anew.
/// </summary>
internal static class Guide
{
    /// <summary>The line that parts the two.</summary>
    internal const string Marker = "<!-- From here on made from what the program holds; a test keeps it current. -->\n";

    /// <summary>The part written by hand.</summary>
    internal static string Written(string path) => SourceTree.Read(path).Split(Marker)[0];

    /// <summary>The blocks of YAML in the part written by hand, in order.</summary>
    internal static IReadOnlyList<string> YamlBlocks(string path)
    {
        string[] pieces = Written(path).Split("```");
        return [.. pieces.Where((p, i) => i % 2 == 1 && p.StartsWith("yaml\n", StringComparison.Ordinal)).Select(p => p["yaml\n".Length..])];
    }

    /// <summary>Holds the end of a guide to what it should be.</summary>
    internal static void ShouldEndWith(string path, string generated)
    {
        string whole = Written(path) + Marker + "\n" + generated;
        if (Environment.GetEnvironmentVariable("WIRECHECK_REGENERATE") == "1")
        {
            File.WriteAllText(Path.Combine(Golden.Root, path), whole);
        }

        SourceTree.Read(path).ShouldBe(whole, $"{path} is not current");
    }

    /// <summary>A row of a table; what would end a cell is taken out.</summary>
    internal static string Row(params IEnumerable<string> cells) =>
        $"| {string.Join(" | ", cells.Select(c => c.Replace("|", "\\|", StringComparison.Ordinal).Replace("\n", " ", StringComparison.Ordinal)))} |\n";
}
