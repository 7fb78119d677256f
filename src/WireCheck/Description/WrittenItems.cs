using WireCheck.Description.Reader;
using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>
/// Reads what is written in a description, thing by thing, without asking what it means: what a comparison of two files needs.
/// </summary>
public sealed class WrittenItems
{
    /// <summary>The kind under which the top of the file stands.</summary>
    public const string TopKind = "description";

    private const string ClassKey = "part";

    private static readonly string[] NamedSections = ["modes", "paths"];

    private static readonly string[] ListedSections = ["outside_links", "waivers", "measured", "stock"];

    private readonly IPartClasses _classes;
    private readonly YamlMap _root;
    private readonly List<WrittenItem> _items = [];

    private WrittenItems(YamlMap root, IPartClasses classes)
    {
        _root = root;
        _classes = classes;
    }

    /// <summary>Everything in the order of the file; empty when the text is no mapping, which the reader of the description tells.</summary>
    /// <param name="fileName">The name of the file.</param>
    /// <param name="text">Its text.</param>
    public static IReadOnlyList<WrittenItem> Read(string fileName, string text) =>
        YamlReader.ReadMap(fileName, text, YamlLimits.Default, new ProblemList()) is { } root
            ? new WrittenItems(root, LibraryClasses.Embedded).ReadAll()
            : [];

    /// <summary>The section in which things of a kind stand.</summary>
    public static string SectionOf(string kind) => kind == ConductorReader.Kind ? SectionNames.Conductors
        : PartSections.All.FirstOrDefault(s => s.Kind == kind)?.Name ?? NamedSections.FirstOrDefault(s => s[..^1] == kind) ?? kind;

    private List<WrittenItem> ReadAll()
    {
        Dictionary<string, string> top = new(StringComparer.Ordinal);
        foreach (YamlEntry entry in _root.Entries)
        {
            string section = entry.Key.Text;
            if (KindOf(section) is { } kind)
            {
                AddParts(section, kind, entry.Value);
            }
            else if (NamedSections.Contains(section))
            {
                AddNamed(section[..^1], entry.Value);
            }
            else if (ListedSections.Contains(section) && entry.Value is YamlList list)
            {
                AddListed(section.Replace('_', ' ').TrimEnd('s'), list);
            }
            else if (section is not ("defaults" or "language"))
            {
                // What the defaults say is told at each part that takes it.
                Flatten(section, entry.Value, top);
            }
        }

        _items.Insert(0, new WrittenItem(TopKind, TopKind, _root.Position.Line, top, top.Keys.ToHashSet(StringComparer.Ordinal)));
        return _items;
    }

    private static string? KindOf(string section) => section == SectionNames.Conductors
        ? ConductorReader.Kind
        : PartSections.All.FirstOrDefault(s => s.Name == section)?.Kind;

    private void AddParts(string section, string kind, YamlNode parts)
    {
        foreach (YamlEntry entry in (parts as YamlMap)?.Entries ?? [])
        {
            Dictionary<string, string> values = new(StringComparer.Ordinal);
            Flatten("", entry.Value, values);
            HashSet<string> own = [.. values.Keys];
            if ((_root.Find("defaults") as YamlMap)?.Find(kind) is { } defaults)
            {
                AddBelow(defaults, values);
            }

            // A class may name another; each is followed once, since the reader has refused loops.
            HashSet<string> followed = [];
            string? name = values.GetValueOrDefault(ClassKey);
            while (name is not null && followed.Add(name) && _classes.Find(section, name) is { } classValues)
            {
                AddBelow(classValues, values);
                name = (classValues.Find(ClassKey) as YamlScalar)?.Text;
            }

            _items.Add(new WrittenItem(kind, entry.Key.Text, entry.Key.Position.Line, values, own));
        }
    }

    private void AddNamed(string kind, YamlNode section)
    {
        foreach (YamlEntry entry in (section as YamlMap)?.Entries ?? [])
        {
            Dictionary<string, string> values = new(StringComparer.Ordinal);
            Flatten("", entry.Value, values);
            _items.Add(new WrittenItem(kind, entry.Key.Text, entry.Key.Position.Line, values, values.Keys.ToHashSet(StringComparer.Ordinal)));
        }
    }

    private void AddListed(string kind, YamlList list)
    {
        foreach (YamlNode node in list.Items)
        {
            Dictionary<string, string> values = new(StringComparer.Ordinal);
            Flatten("", node, values);
            string id = string.Join(", ", values.Select(v => $"{v.Key} {v.Value}"));
            _items.Add(new WrittenItem(kind, id, node.Position.Line, values, values.Keys.ToHashSet(StringComparer.Ordinal)));
        }
    }

    /// <summary>Adds the values of a lower layer that no layer above it gives.</summary>
    private static void AddBelow(YamlNode layer, Dictionary<string, string> values)
    {
        Dictionary<string, string> lower = new(StringComparer.Ordinal);
        Flatten("", layer, lower);
        foreach ((string key, string value) in lower)
        {
            values.TryAdd(key, value);
        }
    }

    private static void Flatten(string key, YamlNode node, Dictionary<string, string> values)
    {
        switch (node)
        {
            case YamlScalar { IsEmpty: false } scalar:
                values[key] = scalar.Text;
                break;
            case YamlList list when list.Items.All(i => i is YamlScalar):
                values[key] = $"[{string.Join(", ", list.Items.Select(i => ((YamlScalar)i).Text))}]";
                break;
            case YamlList list:
                for (int i = 0; i < list.Items.Count; i++)
                {
                    Flatten(Below(key, FormattableString.Invariant($"{i + 1}")), list.Items[i], values);
                }

                break;
            case YamlMap map:
                foreach (YamlEntry entry in map.Entries)
                {
                    Flatten(Below(key, entry.Key.Text), entry.Value, values);
                }

                break;
        }
    }

    private static string Below(string key, string name) => key.Length == 0 ? name : $"{key}.{name}";
}
