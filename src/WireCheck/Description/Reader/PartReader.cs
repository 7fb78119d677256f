using WireCheck.Description.Kinds;
using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>Reads the parts of every section, each over the defaults of its kind and its part class.</summary>
internal sealed class PartReader
{
    private static readonly YamlMap Nothing = new(default, []);

    private readonly ReadContext _context;
    private readonly YamlMap _defaults;
    private readonly Dictionary<string, (string Section, Position Place)> _ids = new(StringComparer.Ordinal);

    internal PartReader(ReadContext context, YamlMap? defaults)
    {
        _context = context;
        _defaults = defaults ?? Nothing;
        NoteUnknownKinds();
    }

    /// <summary>All parts of a section except conductors.</summary>
    internal IReadOnlyList<Part> ReadSection(PartSection section, YamlNode node) =>
        [.. Entries(section.Name, section.Kind, node).Select(reader => Finish(reader, section.Read))];

    /// <summary>All legs of all conductors.</summary>
    internal IReadOnlyList<Conductor> ReadConductors(YamlNode node) =>
        [.. Entries(SectionNames.Conductors, ConductorReader.Kind, node).SelectMany(reader => Finish(reader, ConductorReader.Read))];

    private static T Finish<T>(MapReader reader, Func<MapReader, T> read)
    {
        T value = read(reader);
        reader.NoteUnknownKeys();
        return value;
    }

    private IEnumerable<MapReader> Entries(string section, string kind, YamlNode node)
    {
        if (node is not YamlMap map)
        {
            if (node is not YamlScalar { IsEmpty: true })
            {
                _context.Problems.Add(node.Position, InputMessages.NotAMapping($"'{section}'", node.InWords));
            }

            yield break;
        }

        foreach (YamlEntry entry in map.Entries)
        {
            if (ReaderOf(section, kind, entry) is MapReader reader)
            {
                yield return reader;
            }
        }
    }

    private MapReader? ReaderOf(string section, string kind, YamlEntry entry)
    {
        string id = entry.Key.Text;
        NoteBadId(id, section, entry.Key.Position);
        YamlMap? own = entry.Value switch
        {
            YamlMap map => map,
            YamlScalar { IsEmpty: true } => new YamlMap(entry.Value.Position, []),
            _ => null,
        };
        if (own is null)
        {
            _context.Problems.Add(entry.Value.Position, InputMessages.NotAMapping(id, entry.Value.InWords));
            return null;
        }

        List<Layer> layers = [new Layer(own, Origin.Written, id)];
        if (_defaults.Find(kind) is YamlMap defaults)
        {
            layers.Add(new Layer(defaults, Origin.Written, $"defaults of {kind}"));
        }

        ClassUse use = AddClasses(section, id, layers);
        MapReader reader = MapReader.Root(_context, section, id, entry.Key.Position, layers, use);
        reader.Has("part", typeof(string));
        return reader;
    }

    /// <summary>Adds the class that a layer names, then the class that this one names, and so on.</summary>
    private ClassUse AddClasses(string section, string id, List<Layer> layers)
    {
        List<string> chain = [];
        Layer? from = layers.FirstOrDefault(l => l.Map.Find("part") is not null);
        while (from?.Map.Find("part") is YamlNode node)
        {
            if (node is not YamlScalar { Text.Length: > 0 } name)
            {
                _context.Problems.Add(node.Position, InputMessages.NotASingleValue(from.Subject, "part", node.InWords));
                return new ClassUse(null, false);
            }

            bool loops = chain.Contains(name.Text);
            chain.Add(name.Text);
            if (loops)
            {
                _context.Problems.Add(name.Position, InputMessages.ClassLoop(id, chain));
                return new ClassUse(chain[0], false);
            }

            if (_context.Classes.Find(section, name.Text) is not YamlMap values)
            {
                string[] known = [.. _context.Classes.Names(section)];
                _context.Problems.Add(name.Position, InputMessages.UnknownClass(from.Subject, name.Text, section, known));
                return new ClassUse(chain[0], false);
            }

            from = new Layer(values, Origin.PartClass, $"part class {name.Text}");
            layers.Add(from);
        }

        return new ClassUse(chain.FirstOrDefault(), true);
    }

    private void NoteBadId(string id, string section, Position place)
    {
        if (!IdRules.IsValid(id))
        {
            _context.Problems.Add(place, InputMessages.BadId(id));
        }
        else if (IdRules.Reserved.Contains(id))
        {
            _context.Problems.Add(place, InputMessages.ReservedId(id));
        }

        if (!_ids.TryAdd(id, (section, place)))
        {
            (string firstSection, Position first) = _ids[id];
            _context.Problems.Add(place, InputMessages.DuplicateId(id, firstSection, first));
        }
    }

    private void NoteUnknownKinds()
    {
        foreach (YamlEntry entry in _defaults.Entries)
        {
            if (!PartSections.Kinds.Contains(entry.Key.Text))
            {
                _context.Problems.Add(entry.Key.Position, InputMessages.UnknownKey("'defaults'", entry.Key.Text, PartSections.Kinds));
            }
            else if (entry.Value is not (YamlMap or YamlScalar { IsEmpty: true }))
            {
                _context.Problems.Add(entry.Value.Position, InputMessages.NotAMapping($"defaults of {entry.Key.Text}", entry.Value.InWords));
            }
        }
    }
}
