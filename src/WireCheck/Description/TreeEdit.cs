using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>One value of a part set to something else.</summary>
/// <param name="Section">Section of the file, such as <c>inverters</c>.</param>
/// <param name="Id">Id of the part or mode.</param>
/// <param name="Key">Its key, nested ones joined by a point.</param>
/// <param name="Value">The value as a builder would write it.</param>
public sealed record TreeEdit(string Section, string Id, string Key, string Value)
{
    /// <summary>
    /// The tree with the values set, at the parts themselves, so that they win over defaults and classes. The tree that was
    /// given stays as it is; an edit of a part that it does not hold does nothing.
    /// </summary>
    public static YamlMap Apply(YamlMap root, IReadOnlyList<TreeEdit> edits)
    {
        ILookup<string, TreeEdit> bySection = edits.ToLookup(e => e.Section, StringComparer.Ordinal);
        return Map(root, section => bySection[section.Key.Text].ToLookup(e => e.Id, StringComparer.Ordinal) is { Count: > 0 } byId
            && section.Value is YamlMap parts
            ? Map(parts, part => byId[part.Key.Text].Aggregate(part.Value, (value, edit) => Set(value, edit.Key.Split('.'), edit.Value)))
            : section.Value);
    }

    private static YamlMap Map(YamlMap map, Func<YamlEntry, YamlNode> change) =>
        new(map.Position, [.. map.Entries.Select(e => new YamlEntry(e.Key, change(e)))]);

    private static YamlMap Set(YamlNode node, string[] keys, string value)
    {
        YamlMap map = node as YamlMap ?? new YamlMap(node.Position, []);
        YamlNode? held = map.Find(keys[0]);
        YamlNode set = keys.Length == 1
            ? new YamlScalar(node.Position, value, false)
            : Set(held ?? new YamlMap(node.Position, []), keys[1..], value);
        return held is null
            ? new YamlMap(map.Position, [.. map.Entries, new YamlEntry(new YamlScalar(node.Position, keys[0], false), set)])
            : Map(map, e => e.Key.Text == keys[0] ? set : e.Value);
    }
}
