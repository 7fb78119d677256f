using System.Globalization;
using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Knowledge;

/// <summary>
/// A mapping of one of the tool's own files, read by key. Whatever is missing or malformed throws
/// <see cref="KnowledgeException"/> with its place.
/// </summary>
internal readonly struct TableNode(YamlMap map)
{
    internal Position Position => map.Position;

    internal YamlMap Map => map;

    internal IReadOnlyList<YamlEntry> Entries => map.Entries;

    internal bool Has(string key) => map.Find(key) is not null;

    internal TableNode Child(string key) => AsMap(Required(key));

    internal TableNode? ChildOrNone(string key) => map.Find(key) is { } node ? AsMap(node) : null;

    /// <summary>The mappings of a list.</summary>
    internal IEnumerable<TableNode> Children(string key) => Items(key).Select(AsMap);

    internal IReadOnlyList<YamlNode> Items(string key) =>
        Required(key) is YamlList list ? list.Items : throw Wrong(Required(key), $"'{key}' must be a list");

    internal string Word(string key) => WordOf(Required(key));

    internal double Number(string key) => NumberOf(Required(key));

    internal double? NumberOrNone(string key) => map.Find(key) is { } node ? NumberOf(node) : null;

    internal bool YesOrNo(string key) => Word(key) switch
    {
        "yes" => true,
        "no" => false,
        _ => throw Wrong(Required(key), $"'{key}' must be yes or no"),
    };

    internal double[] Numbers(string key) => [.. Items(key).Select(NumberOf)];

    /// <summary>A list of a typical and an aged figure.</summary>
    internal (double Typical, double Aged) Pair(string key)
    {
        double[] two = Numbers(key);
        return two.Length == 2 ? (two[0], two[1]) : throw Wrong(Required(key), $"'{key}' must be two numbers");
    }

    /// <summary>A mapping from number to number, in rising order of the keys.</summary>
    internal Curve Curve(string key)
    {
        TableNode child = Child(key);
        try
        {
            return new Curve([.. child.Entries.Select(e => (NumberOf(e.Key), NumberOf(e.Value)))]);
        }
        catch (ArgumentException error)
        {
            throw new KnowledgeException($"{child.Position}: {error.Message}", error);
        }
    }

    internal Source Source(string key)
    {
        TableNode node = Child(key);
        string word = node.Word("standing");
        Standing standing = StandingWords.Find(word)
            ?? throw new KnowledgeException($"{node.Position}: '{word}' is no standing; use one of {string.Join(", ", StandingWords.All)}");
        return new Source(node.Word("work"), node.Word("clause"), standing);
    }

    internal static double NumberOf(YamlNode node) =>
        double.TryParse(WordOf(node), NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number)
            ? number
            : throw Wrong(node, $"{node.InWords} is no number");

    internal static string WordOf(YamlNode node) =>
        node is YamlScalar scalar ? scalar.Text : throw Wrong(node, $"a single value is due, not {node.InWords}");

    internal static TableNode AsMap(YamlNode node) =>
        node is YamlMap child ? new TableNode(child) : throw Wrong(node, $"a mapping is due, not {node.InWords}");

    /// <summary>A size as tables write it: a gauge number or <c>2/0</c>, or square millimetres.</summary>
    internal static ConductorSize SizeOf(YamlNode node, SizeSystem system)
    {
        string text = WordOf(node);
        if (system == SizeSystem.Awg && text.EndsWith("/0", StringComparison.Ordinal)
            && int.TryParse(text.AsSpan(0, text.Length - 2), NumberStyles.None, CultureInfo.InvariantCulture, out int noughts))
        {
            return new ConductorSize(system, 1 - noughts);
        }

        return new ConductorSize(system, NumberOf(node));
    }

    internal static KnowledgeException Wrong(YamlNode node, string what) => new($"{node.Position}: {what}");

    private YamlNode Required(string key) => map.Find(key) ?? throw new KnowledgeException($"{map.Position}: '{key}' is missing");
}
