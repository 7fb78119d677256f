namespace WireCheck.Edits;

/// <summary>A piece of YAML with the characters it takes in the text.</summary>
/// <param name="start">Offset of its first character, anchor and tag included.</param>
/// <param name="end">Offset after its last character.</param>
internal abstract class SpannedNode(int start, int end)
{
    internal int Start { get; } = start;

    internal int End { get; } = end;

    /// <summary>The anchor's name when the piece has one and an alias takes it somewhere else too; else null.</summary>
    internal string? SharedAs { get; set; }
}

/// <summary>A single value.</summary>
internal sealed class SpannedScalar(int start, int end, string text) : SpannedNode(start, end)
{
    internal string Text { get; } = text;

    /// <summary>True without quotes.</summary>
    internal bool Plain { get; init; }

    /// <summary>True as a block of text below its key.</summary>
    internal bool Block { get; init; }

    /// <summary>True when an anchor or a tag stands before it.</summary>
    internal bool Marked { get; init; }
}

/// <summary>A name that stands for a piece written before.</summary>
internal sealed class SpannedAlias(int start, int end, string name) : SpannedNode(start, end)
{
    internal string Name { get; } = name;
}

/// <summary>A list.</summary>
internal sealed class SpannedList(int start, int end, bool flow, IReadOnlyList<SpannedNode> items) : SpannedNode(start, end)
{
    /// <summary>True in brackets, false with an item on each line.</summary>
    internal bool Flow { get; } = flow;

    internal IReadOnlyList<SpannedNode> Items { get; } = items;
}

/// <summary>A key and its value.</summary>
internal sealed record SpannedEntry(SpannedNode Key, SpannedNode Value);

/// <summary>A mapping.</summary>
internal sealed class SpannedMap(int start, int end, bool flow, IReadOnlyList<SpannedEntry> entries) : SpannedNode(start, end)
{
    /// <summary>True in braces, false with a key on each line.</summary>
    internal bool Flow { get; } = flow;

    internal IReadOnlyList<SpannedEntry> Entries { get; } = entries;

    /// <summary>The entry of a key, or null.</summary>
    internal SpannedEntry? Find(string key)
    {
        foreach (SpannedEntry entry in Entries)
        {
            if (entry.Key is SpannedScalar name && name.Text == key)
            {
                return entry;
            }
        }

        return null;
    }
}
