using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace WireCheck.Fuzz;

/// <summary>The texts that mutations begin with, and what they are spliced from.</summary>
internal sealed partial class SeedTexts
{
    /// <summary>A rule set of a user's own and a description that it judges, both small.</summary>
    internal const string House = "house.yaml";

    private readonly Dictionary<string, List<YamlNode>> _values = new(StringComparer.Ordinal);

    private SeedTexts(string root)
    {
        string[] cases = Yaml(Path.Combine(root, "tests/WireCheck.Tests/Rules/Cases"));
        Examples = Read(Yaml(Path.Combine(root, "examples")).Where(f => Path.GetFileName(f) != House));
        Descriptions = [.. Examples, .. Read(cases), .. Read(Yaml(Path.Combine(root, "tests/WireCheck.Tests/Switching/Sneak")))];
        Broken = Read(Yaml(Path.Combine(root, "tests/WireCheck.Tests/Description/Broken")));
        Workshop = File.ReadAllText(Path.Combine(root, "examples/house-rules/workshop-box.yaml"));
        RuleSets = Read([Path.Combine(root, "examples/house-rules", House), .. Yaml(Path.Combine(root, "rules/sets"))]);
        Templates = Read(Directory.GetFiles(Path.Combine(root, "src/WireCheck/Reports/Templates"), "report.*").Order(StringComparer.Ordinal));
        foreach (string text in (string[])[.. Descriptions, .. RuleSets, .. Read(Yaml(Path.Combine(root, "rules/parts")))])
        {
            if (TryTree(text) is { } tree)
            {
                Collect(tree);
            }
        }

        Words = [.. Descriptions.Concat(Broken).Concat(RuleSets).Concat(Templates).SelectMany(t => Word().Matches(t).Select(m => m.Value))
            .Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
    }

    /// <summary>Deeper than any description that means something.</summary>
    private const int DeepestTree = 200;

    /// <summary>The descriptions of <c>examples</c>.</summary>
    internal IReadOnlyList<string> Examples { get; }

    /// <summary>Examples, and the good and bad box of each rule and sneak path.</summary>
    internal IReadOnlyList<string> Descriptions { get; }

    /// <summary>Descriptions that the reader refuses.</summary>
    internal IReadOnlyList<string> Broken { get; }

    /// <summary>The small box that names <see cref="House"/> among its rule sets.</summary>
    internal string Workshop { get; }

    /// <summary>Files of rules.</summary>
    internal IReadOnlyList<string> RuleSets { get; }

    /// <summary>The tool's own templates.</summary>
    internal IReadOnlyList<string> Templates { get; }

    /// <summary>Every word of all of them.</summary>
    internal IReadOnlyList<string> Words { get; }

    /// <summary>Reads what lies below the top folder of the project; the same files give the same texts.</summary>
    internal static SeedTexts Load(string root) => new(root);

    /// <summary>What some text has under a key; null when none has it.</summary>
    internal YamlNode? AnyValueOf(string key, Random random) =>
        _values.TryGetValue(key, out List<YamlNode>? values) ? values[random.Next(values.Count)] : null;

    /// <summary>The tree of a text; null when it is no mapping or list that a parser takes.</summary>
    internal static YamlNode? TryTree(string text)
    {
        // The library's tree is built by recursion: a text nested so deeply is for the tool to refuse, not for the tree of this program.
        if (DepthOf(text) > DeepestTree)
        {
            return null;
        }

        YamlStream stream = [];
        try
        {
            stream.Load(new StringReader(text));
        }
        catch (Exception error) when (error is YamlException or InvalidOperationException)
        {
            // The second is what its scanner throws at some broken texts.
            return null;
        }

        return stream.Documents.Count == 0 ? null : stream.Documents[0].RootNode;
    }

    /// <summary>Most brackets open at once.</summary>
    private static int DepthOf(string text)
    {
        int open = 0;
        int most = 0;
        foreach (char letter in text)
        {
            open += letter switch
            {
                '[' or '{' => 1,
                ']' or '}' => -1,
                _ => 0,
            };
            most = Math.Max(most, open);
        }

        return most;
    }

    private void Collect(YamlNode node)
    {
        if (node is YamlSequenceNode list)
        {
            foreach (YamlNode child in list.Children)
            {
                Collect(child);
            }
        }
        else if (node is YamlMappingNode map)
        {
            foreach ((YamlNode key, YamlNode value) in map.Children)
            {
                if (key is YamlScalarNode { Value: { } name })
                {
                    _values.TryAdd(name, []);
                    _values[name].Add(value);
                }

                Collect(value);
            }
        }
    }

    private static string[] Yaml(string folder) => [.. Directory.GetFiles(folder, "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];

    private static string[] Read(IEnumerable<string> files) => [.. files.Select(File.ReadAllText)];

    [GeneratedRegex(@"[\p{L}\p{N}_.-]+")]
    private static partial Regex Word();
}
