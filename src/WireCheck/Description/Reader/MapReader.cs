using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>
/// Reads a mapping that may consist of several layers: what is written at a part lies over the defaults of
/// its kind, and both lie over its part class. Nested mappings are merged the same way; each value keeps its
/// own place. What is missing or wrong is noted, and a stand-in is returned so that reading goes on.
/// </summary>
internal sealed partial class MapReader
{
    private readonly ReadContext _context;
    private readonly IReadOnlyList<Layer> _layers;
    private readonly string _path;
    private readonly KeyShape _shape;
    private List<(string Key, Problem Problem)>? _missing;

    private MapReader(ReadContext context, IReadOnlyList<Layer> layers, string path, KeyShape shape)
    {
        _context = context;
        _layers = layers;
        _path = path;
        _shape = shape;
    }

    /// <summary>The user's id of the part.</summary>
    internal required string Id { get; init; }

    /// <summary>Where the mapping's owner stands.</summary>
    internal required Position Position { get; init; }

    /// <summary>The section it stands in.</summary>
    internal required string Section { get; init; }

    /// <summary>The part class, or null.</summary>
    internal string? ClassName { get; init; }

    /// <summary>What is missing is not told, since the class that should give it could not be found.</summary>
    internal bool WithoutClass { get; init; }

    /// <summary>Keys asked for so far.</summary>
    internal KeyShape Shape => _shape;

    internal ReadContext Context => _context;

    /// <summary>A reader of a whole part or of a mapping that stands by itself.</summary>
    internal static MapReader Root(
        ReadContext context, string section, string id, Position position, IReadOnlyList<Layer> layers, ClassUse? use = null) =>
        new(context, layers, "", new KeyShape())
        {
            Id = id, Position = position, Section = section, ClassName = use?.Name, WithoutClass = use is { Found: false },
        };

    /// <summary>True when a layer has the key; always true while keys are recorded.</summary>
    internal bool Has(string key, Type? valueType = null)
    {
        _shape.Note(key, valueType);
        return _context.Recording || Top(key) is not null;
    }

    /// <summary>A value that must be there.</summary>
    internal Given<T> Required<T>(string key, Bounds? bounds = null, string? example = null)
    {
        Given<T>? given = Optional<T>(key, bounds);
        return given ?? StandIn<T>(key, example);
    }

    /// <summary>A value, or null when no layer gives it.</summary>
    internal Given<T>? Optional<T>(string key, Bounds? bounds = null)
    {
        _shape.Note(key, typeof(T));
        return Top(key) is (YamlNode node, Layer layer) ? Read<T>(node, layer, key, bounds) : null;
    }

    /// <summary>A value that is assumed when nothing gives it.</summary>
    internal Given<T> OrAssumed<T>(string key, T assumed, Bounds? bounds = null) =>
        Optional<T>(key, bounds) ?? new Given<T>(assumed, Position, Origin.PartClass);

    /// <summary>A name from a table of the library.</summary>
    internal Given<string> Word(string key, WordTable table, string example) =>
        OptionalWord(key, table) ?? StandIn<string>(key, example);

    /// <summary>A name from a table of the library, or null.</summary>
    internal Given<string>? OptionalWord(string key, WordTable table)
    {
        Given<string>? given = Optional<string>(key);
        if (given is null || Top(key) is not (_, Layer layer))
        {
            return given;
        }

        CheckWord(given, table, layer.Subject, Path(key));
        return given;
    }

    /// <summary>One of a few fixed words, or null.</summary>
    internal Given<string>? OptionalChoice(string key, params string[] words)
    {
        Given<string>? given = Optional<string>(key);
        if (given is { Value.Length: > 0 } && !words.Contains(given.Value) && Top(key) is (_, Layer layer))
        {
            _context.Problems.Add(given.Position, InputMessages.UnknownWord(layer.Subject, Path(key), given.Value, words));
        }

        return given;
    }

    /// <summary>Notes a name that is not in a table.</summary>
    internal void CheckWord(Given<string> given, WordTable table, string subject, string key)
    {
        IReadOnlyCollection<string> known = _context.Classes.Words(table);
        if (given.Value.Length > 0 && known.Count > 0 && !known.Contains(given.Value))
        {
            _context.Problems.Add(given.Position, InputMessages.UnknownWord(subject, key, given.Value, known));
        }
    }

    /// <summary>Notes a problem at the place of a key, or of the owner where no layer has it.</summary>
    internal void Note(string key, string message) =>
        _context.Problems.Add(Top(key)?.Node.Position ?? Position, message);

    /// <summary>Notes every key of the layers that was not asked for. Called last.</summary>
    internal void NoteUnknownKeys()
    {
        foreach (Layer layer in _layers)
        {
            string subject = _path.Length == 0 ? layer.Subject : $"'{_path}' of {layer.Subject}";
            foreach (YamlEntry entry in layer.Map.Entries.Where(e => !_shape.Keys.Contains(e.Key.Text)))
            {
                _context.Problems.Add(entry.Key.Position, InputMessages.UnknownKey(subject, entry.Key.Text, _shape.Keys));
                WithdrawMissing(NearestName.Find(entry.Key.Text, _shape.Keys));
            }
        }
    }

    /// <summary>A misspelt key is told as such, and not as missing too.</summary>
    private void WithdrawMissing(string? meant)
    {
        foreach ((string key, Problem problem) in _missing ?? [])
        {
            if (key == meant)
            {
                _context.Problems.Withdraw(problem);
            }
        }
    }

    /// <summary>The key with the keys above it.</summary>
    internal string Path(string key) => _path.Length == 0 ? key : $"{_path}.{key}";

    /// <summary>The uppermost layer that has a key, and what it has there.</summary>
    internal (YamlNode Node, Layer Layer)? Top(string key)
    {
        foreach (Layer layer in _layers)
        {
            if (layer.Map.Find(key) is YamlNode node)
            {
                return (node, layer);
            }
        }

        return null;
    }

    internal Given<T> Read<T>(YamlNode node, Layer layer, string key, Bounds? bounds)
    {
        ValueSite site = new(layer.Subject, Path(key), bounds ?? Bounds.Positive, _context.Problems);
        ValueReaders.For<T>().TryRead(node, site, out T value);
        return new Given<T>(value, node.Position, layer.Origin);
    }

    private Given<T> StandIn<T>(string key, string? example)
    {
        ValueReader<T> reader = ValueReaders.For<T>();
        NoteMissing(key, example ?? reader.Example);
        return new Given<T>(reader.StandIn, Position, Origin.Written);
    }

    private void NoteMissing(string key, string example)
    {
        if (WithoutClass)
        {
            return;
        }

        string words = Path(key).Replace('.', ' ').Replace('_', ' ');
        bool hasClasses = ClassName is null && _context.Classes.Names(Section).Any();
        string message = Section == SectionNames.Conductors && key is "insulation" or "ends"
            ? InputMessages.MissingForAll(Id, words, key, example)
            : InputMessages.Missing(Id, words, Path(key), example, hasClasses);
        Problem problem = new(Position, message);
        _context.Problems.Add(problem);
        (_missing ??= []).Add((key, problem));
    }
}
