using System.Globalization;
using WireCheck.Text;

namespace WireCheck.Edits;

/// <summary>The tree that a text should have after its edits, to hold the edited text against.</summary>
internal static class EditedTree
{
    /// <summary>The same tree with one value set; keys that are missing are added at the end of their mapping.</summary>
    internal static YamlNode Set(YamlNode? node, ReadOnlySpan<string> keys, string value)
    {
        if (keys.Length == 0)
        {
            return new YamlScalar(default, value, node is YamlScalar { Quoted: true });
        }

        if (node is YamlList list && int.TryParse(keys[0], NumberStyles.None, CultureInfo.InvariantCulture, out int item))
        {
            YamlNode[] items = [.. list.Items];
            items[item] = Set(items[item], keys[1..], value);
            return new YamlList(list.Position, items);
        }

        List<YamlEntry> entries = node is YamlMap map ? [.. map.Entries] : [];
        string key = keys[0];
        int at = entries.FindIndex(e => e.Key.Text == key);
        if (at >= 0)
        {
            entries[at] = entries[at] with { Value = Set(entries[at].Value, keys[1..], value) };
        }
        else
        {
            entries.Add(new YamlEntry(new YamlScalar(default, key, false), Set(null, keys[1..], value)));
        }

        return new YamlMap(node?.Position ?? default, entries);
    }

    /// <summary>True when both say the same, whatever the order of their keys and their quotes.</summary>
    internal static bool Same(YamlNode? left, YamlNode? right)
    {
        switch (left, right)
        {
            case (YamlScalar a, YamlScalar b):
                return a.Text == b.Text && a.IsEmpty == b.IsEmpty;
            case (YamlList a, YamlList b):
                return a.Items.Count == b.Items.Count && a.Items.Zip(b.Items).All(pair => Same(pair.First, pair.Second));
            case (YamlMap a, YamlMap b):
                return a.Entries.Count == b.Entries.Count && a.Entries.All(entry => Same(entry.Value, b.Find(entry.Key.Text)));
            default:
                return false;
        }
    }
}
