namespace WireCheck.Text;

/// <summary>A piece of a YAML file that keeps its place.</summary>
public abstract class YamlNode(Position position)
{
    /// <summary>Where the piece begins.</summary>
    public Position Position { get; } = position;

    /// <summary>What it is, in words for a message: "a mapping", "a list", "the value 12".</summary>
    public abstract string InWords { get; }
}

/// <summary>A single value, as it is written; what it means is decided by who reads it.</summary>
public sealed class YamlScalar(Position position, string text, bool quoted) : YamlNode(position)
{
    /// <summary>The characters of the value, without quotes.</summary>
    public string Text { get; } = text;

    /// <summary>True when it stood in quotes or as a block of text.</summary>
    public bool Quoted { get; } = quoted;

    /// <summary>True when nothing is written after the key.</summary>
    public bool IsEmpty => Text.Length == 0 && !Quoted;

    public override string InWords => IsEmpty ? "nothing" : $"the value '{Text}'";
}

/// <summary>A list of pieces in the order of the file.</summary>
public sealed class YamlList(Position position, IReadOnlyList<YamlNode> items) : YamlNode(position)
{
    public IReadOnlyList<YamlNode> Items { get; } = items;

    public override string InWords => "a list";
}

/// <summary>One key and its value.</summary>
/// <param name="Key">The key with its place.</param>
/// <param name="Value">The value.</param>
public readonly record struct YamlEntry(YamlScalar Key, YamlNode Value);

/// <summary>A mapping; keys are unique and keep the order of the file.</summary>
public sealed class YamlMap(Position position, IReadOnlyList<YamlEntry> entries) : YamlNode(position)
{
    public IReadOnlyList<YamlEntry> Entries { get; } = entries;

    public override string InWords => "a mapping";

    /// <summary>The value of a key, or null.</summary>
    public YamlNode? Find(string key)
    {
        foreach (YamlEntry entry in Entries)
        {
            if (entry.Key.Text == key)
            {
                return entry.Value;
            }
        }

        return null;
    }
}
