using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>Reads what stands at the top of a description, beside the sections of parts.</summary>
internal sealed class HeadReader
{
    /// <summary>The only version of the language so far.</summary>
    private const string Language = "1";

    private const string DefaultRuleSet = "portable-box";

    private static readonly string[] Keys =
    [
        "pack", "language", "notes", "rules", "settings", "surroundings", "defaults", "stays_live",
        "outside_links", "modes", "paths", "waivers", "measured", "stock", "costs", "tolerances",
    ];

    private readonly ReadContext _context;
    private readonly YamlMap _root;

    internal HeadReader(ReadContext context, YamlMap root)
    {
        _context = context;
        _root = root;
        Reader = MapReader.Root(context, "", "the description", root.Position, [new Layer(root, Origin.Written, "the description")]);
    }

    /// <summary>A reader of the top of the file.</summary>
    internal MapReader Reader { get; }

    /// <summary>All keys that may stand at the top of a file.</summary>
    internal static IReadOnlyList<string> KnownKeys { get; } =
        [.. Keys, .. PartSections.All.Select(s => s.Name), SectionNames.Conductors];

    internal void NoteUnknownSections()
    {
        foreach (YamlEntry entry in _root.Entries.Where(e => !KnownKeys.Contains(e.Key.Text)))
        {
            _context.Problems.Add(entry.Key.Position, InputMessages.UnknownSection(entry.Key.Text, KnownKeys));
        }
    }

    internal void CheckLanguage()
    {
        Given<string> written = Reader.Required<string>("language", example: Language);
        if (written.Value.Length > 0 && written.Value != Language)
        {
            _context.Problems.Add(written.Position, InputMessages.UnknownLanguage(written.Value));
        }
    }

    internal Given<string> Title() => Reader.Required<string>("pack", example: "Market-stall power box");

    internal string? Notes() => Reader.Optional<string>("notes")?.Value;

    internal YamlMap? Defaults()
    {
        YamlNode? node = _root.Find("defaults");
        if (node is not (null or YamlMap or YamlScalar { IsEmpty: true }))
        {
            _context.Problems.Add(node.Position, InputMessages.NotAMapping("'defaults'", node.InWords));
        }

        return node as YamlMap;
    }

    internal IReadOnlyList<Given<string>> RuleSets()
    {
        Given<string>[] sets = [.. Reader.Items("rules").Select(item => Reader.Read<string>(item.Node, item.Layer, "rules", null))];
        return sets.Length > 0 ? sets : [new Given<string>(DefaultRuleSet, _root.Position, Origin.Written)];
    }

    internal IReadOnlyDictionary<string, YamlScalar> Settings()
    {
        Dictionary<string, YamlScalar> settings = new(StringComparer.Ordinal);
        foreach ((YamlEntry entry, Layer layer) in Reader.Entries("settings"))
        {
            if (SettingReader.ValueOf(entry.Value) is { } value)
            {
                settings[entry.Key.Text] = value;
                SettingReader.NoteOtherKeys(entry, _context.Problems);
            }
            else
            {
                _context.Problems.Add(entry.Value.Position, InputMessages.NotASingleValue("settings", entry.Key.Text, entry.Value.InWords));
            }
        }

        return settings;
    }

    internal IReadOnlyDictionary<string, string> SettingReasons()
    {
        Dictionary<string, string> reasons = new(StringComparer.Ordinal);
        foreach ((YamlEntry entry, Layer _) in Reader.Entries("settings"))
        {
            if (SettingReader.ReasonOf(entry.Value) is { } reason)
            {
                reasons[entry.Key.Text] = reason;
            }
        }

        return reasons;
    }

    internal Surroundings Surroundings() =>
        Named("surroundings", _root.Find("surroundings"), SurroundingsReader.Read);

    internal IReadOnlyList<PathIntent> Paths()
    {
        foreach (YamlEntry entry in (_root.Find("paths") as YamlMap)?.Entries ?? [])
        {
            Given<string> id = new(entry.Key.Text, entry.Key.Position, Origin.Written);
            _context.References.Parts.Add(new PartUse(id, "the description", "paths", ["load", "inverter", "converter", "port"]));
        }

        return Mappings("paths", IntentReaders.ReadPath);
    }

    /// <summary>A section whose keys are names and whose values are mappings.</summary>
    internal IReadOnlyList<T> Mappings<T>(string section, Func<MapReader, T> read)
    {
        List<T> values = [];
        foreach ((YamlEntry entry, Layer _) in Reader.Entries(section))
        {
            YamlMap? map = entry.Value is YamlScalar { IsEmpty: true } ? new YamlMap(entry.Value.Position, []) : entry.Value as YamlMap;
            if (map is null)
            {
                _context.Problems.Add(entry.Value.Position, InputMessages.NotAMapping($"'{entry.Key.Text}' of {section}", entry.Value.InWords));
                continue;
            }

            MapReader reader = MapReader.Root(
                _context, section, entry.Key.Text, entry.Key.Position, [new Layer(map, Origin.Written, entry.Key.Text)]);
            values.Add(read(reader));
            reader.NoteUnknownKeys();
        }

        return values;
    }

    /// <summary>A section that is a list of mappings; messages call its entries "waiver 1", "waiver 2".</summary>
    internal IReadOnlyList<T> Listed<T>(string section, string word, Func<MapReader, T> read)
    {
        Reader.Has(section);
        List<T> values = [];
        int number = 0;
        foreach ((YamlNode node, Layer _) in Reader.Items(section))
        {
            string name = FormattableString.Invariant($"{word} {++number}");
            if (node is not YamlMap map)
            {
                _context.Problems.Add(node.Position, InputMessages.NotAMapping(name, node.InWords));
                continue;
            }

            MapReader reader = MapReader.Root(_context, section, name, map.Position, [new Layer(map, Origin.Written, name)]);
            values.Add(read(reader));
            reader.NoteUnknownKeys();
        }

        return values;
    }

    private T Named<T>(string name, YamlNode? node, Func<MapReader, T> read)
    {
        YamlMap map = node as YamlMap ?? new YamlMap(_root.Position, []);
        ReadContext context = _context;
        if (node is null or YamlScalar { IsEmpty: true })
        {
            _context.Problems.Add(node?.Position ?? _root.Position, InputMessages.MissingSection(name, "surroundings: {ambient: {from: 0 °C, to: 35 °C}}"));
            context = _context.Muted();
        }
        else if (node is not YamlMap)
        {
            _context.Problems.Add(node.Position, InputMessages.NotAMapping($"'{name}'", node.InWords));
            context = _context.Muted();
        }

        MapReader reader = MapReader.Root(context, name, name, map.Position, [new Layer(map, Origin.Written, name)]);
        T value = read(reader);
        reader.NoteUnknownKeys();
        return value;
    }
}
