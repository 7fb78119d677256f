using System.Globalization;
using WireCheck.Description.Reader;

namespace WireCheck.Edits;

/// <summary>
/// Finds the place of a value. What <c>defaults</c> or a part class give is not changed there, since it serves other parts too: the
/// key goes into the part's own mapping, which lies over both.
/// </summary>
internal sealed class PlaceFinder
{
    private readonly SpannedMap _root;
    private readonly Dictionary<string, PartEntry> _parts = new(StringComparer.Ordinal);

    internal PlaceFinder(SpannedMap root)
    {
        _root = root;
        foreach (PartSection section in PartSections.All)
        {
            AddSection(section.Name);
        }

        AddSection(SectionNames.Conductors);
    }

    internal EditPlace Find(ValueEdit edit)
    {
        string[] keys = edit.Key.Split('.');
        if (Array.Exists(keys, key => key.Length == 0))
        {
            return new NoPlace(null, $"'{edit.Key}' is no key");
        }

        if (edit.PartId.Length == 0)
        {
            return Descend(_root, keys, [], -1);
        }

        if (!_parts.TryGetValue(edit.WrittenId, out PartEntry? part))
        {
            return new NoPlace(null, $"the description has no part {edit.PartId}");
        }

        string[] above = [part.Section, edit.WrittenId];
        return part.SharedAs is { } name ? new NoPlace(part.Entry.Key, Shared(name))
            : part.Entry.Value is SpannedScalar { Plain: true, Text: "" } ? new NothingAfterKey(part.Entry.Key, keys, [.. above, .. keys])
            : Descend(part.Entry.Value, keys, above, edit.Leg);
    }

    private static string Shared(string name) => $"it is shared by the alias *{name}; write it out at this part first";

    private void AddSection(string section)
    {
        if (_root.Find(section)?.Value is not SpannedMap map)
        {
            return;
        }

        foreach (SpannedEntry entry in map.Entries)
        {
            if (entry.Key is SpannedScalar id)
            {
                _parts.TryAdd(id.Text, new PartEntry(section, entry, map.SharedAs));
            }
        }
    }

    /// <summary>Follows the keys as far as they go.</summary>
    private static EditPlace Descend(SpannedNode from, string[] keys, IReadOnlyList<string> above, int leg)
    {
        List<string> path = [.. above];
        SpannedNode node = from;
        for (int index = 0; ; index++)
        {
            string? shared = node.SharedAs ?? (node as SpannedAlias)?.Name;
            if (shared is not null)
            {
                return new NoPlace(node, Shared(shared));
            }

            bool last = index == keys.Length;
            if (last && node is SpannedList legs && leg >= 0 && leg < legs.Items.Count)
            {
                path.Add(leg.ToString(CultureInfo.InvariantCulture));
                node = legs.Items[leg];
                leg = -1;
                index--;
            }
            else if (last)
            {
                return AtValue(node, path);
            }
            else if (node is SpannedList list && Item(list, keys[index]) is { } item)
            {
                path.Add(keys[index]);
                node = item;
            }
            else if (node is not SpannedMap map)
            {
                return new NoPlace(node, $"there is no place for '{string.Join('.', keys[index..])}'");
            }
            else if (map.Find(keys[index]) is not { } entry)
            {
                return new KeyMissing(map, keys[index..], [.. path, .. keys[index..]]);
            }
            else if (entry.Value is SpannedScalar { Plain: true, Text: "", Marked: false })
            {
                return new NothingAfterKey(entry.Key, keys[(index + 1)..], [.. path, .. keys[index..]]);
            }
            else
            {
                path.Add(keys[index]);
                node = entry.Value;
            }
        }
    }

    private static EditPlace AtValue(SpannedNode node, List<string> path) => node switch
    {
        SpannedScalar { Block: true } => new NoPlace(node, "it is written as a block of text"),
        SpannedScalar { Marked: false } value => new ValueThere(value, path),
        SpannedScalar => new NoPlace(node, "it carries an anchor or a tag"),
        _ => new NoPlace(node, "more than one value stands there"),
    };

    private static SpannedNode? Item(SpannedList list, string number) =>
        int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int index) && index < list.Items.Count
            ? list.Items[index]
            : null;

    private sealed record PartEntry(string Section, SpannedEntry Entry, string? SharedAs);
}
