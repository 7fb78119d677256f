using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>Nested mappings, lists and references.</summary>
internal sealed partial class MapReader
{
    /// <summary>A nested mapping that must be there.</summary>
    internal T Map<T>(string key, Func<MapReader, T> read)
    {
        if (OptionalMap(key, read) is T value)
        {
            return value;
        }

        // Each value that the absent mapping must hold is told by its own name.
        return read(Nested(key, [], _context));
    }

    /// <summary>A nested mapping, or null when no layer gives it.</summary>
    internal T? OptionalMap<T>(string key, Func<MapReader, T> read)
    {
        _shape.Note(key);
        List<Layer> layers = [];
        foreach (Layer layer in _layers)
        {
            if (layer.Map.Find(key) is YamlMap map)
            {
                layers.Add(layer with { Map = map });
            }
            else if (layer.Map.Find(key) is YamlNode other)
            {
                _context.Problems.Add(other.Position, InputMessages.NotAMapping($"'{Path(key)}' of {layer.Subject}", other.InWords));
                return read(Nested(key, [], _context.Muted()));
            }
        }

        return layers.Count > 0 || _context.Recording ? ReadNested(Nested(key, layers, _context), read) : default;
    }

    /// <summary>Learns the keys of a mapping that may stand instead of a single value.</summary>
    internal void OptionalMapWhileRecording<T>(string key, Func<MapReader, T> read)
    {
        if (_context.Recording)
        {
            OptionalMap(key, read);
        }
    }

    /// <summary>A list of mappings; empty when no layer gives it.</summary>
    internal IReadOnlyList<T> List<T>(string key, Func<MapReader, T> read)
    {
        _shape.Note(key);
        if (_context.Recording)
        {
            return [ReadNested(Nested(key, [], _context), read)];
        }

        List<T> values = [];
        foreach ((YamlNode node, Layer layer) in Items(key))
        {
            if (node is YamlMap map)
            {
                values.Add(Entry(key, layer with { Map = map }, read));
            }
            else
            {
                _context.Problems.Add(node.Position, InputMessages.NotAMapping($"an entry of '{Path(key)}' of {layer.Subject}", node.InWords));
            }
        }

        return values;
    }

    /// <summary>The entries of a list with the layer they come from; empty when no layer has it.</summary>
    internal IReadOnlyList<(YamlNode Node, Layer Layer)> Items(string key)
    {
        if (Top(key) is not (YamlNode node, Layer layer))
        {
            return [];
        }

        if (node is YamlList list)
        {
            return [.. list.Items.Select(item => (item, layer))];
        }

        _context.Problems.Add(node.Position, InputMessages.NotAList(layer.Subject, Path(key), node.InWords));
        return [];
    }

    /// <summary>A mapping that is an entry of a list.</summary>
    internal T Entry<T>(string key, Layer layer, Func<MapReader, T> read)
    {
        string subject = Section.Length == 0 ? $"an entry of '{Path(key)}'" : $"an entry of '{Path(key)}' of {Id}";
        MapReader reader = new(_context, [layer with { Subject = subject }], "", _shape.Note(key))
        {
            Id = subject, Position = layer.Map.Position, Section = Section, ClassName = ClassName, WithoutClass = WithoutClass,
        };
        return ReadNested(reader, read);
    }

    /// <summary>The entries of a nested mapping whose keys are the user's; empty when no layer has it.</summary>
    internal IReadOnlyList<(YamlEntry Entry, Layer Layer)> Entries(string key)
    {
        _shape.Note(key);
        if (Top(key) is not (YamlNode node, Layer layer))
        {
            return [];
        }

        if (node is YamlMap map)
        {
            return [.. map.Entries.Select(e => (e, layer))];
        }

        _context.Problems.Add(node.Position, InputMessages.NotAMapping($"'{Path(key)}' of {layer.Subject}", node.InWords));
        return [];
    }

    /// <summary>The entries of a list, or the single value as a list of one.</summary>
    internal IReadOnlyList<(YamlNode Node, Layer Layer)> OneOrMany(string key, Type valueType)
    {
        _shape.Note(key, valueType);
        return Top(key) is (YamlNode node, Layer layer) && node is not YamlList ? [(node, layer)] : Items(key);
    }

    /// <summary>A list of ids; each must name a part of one of the kinds (any part when none is given).</summary>
    internal IReadOnlyList<Given<string>> PartIds(string key, params string[] kinds)
    {
        _shape.Note(key, typeof(string));
        List<Given<string>> ids = [];
        foreach ((YamlNode node, Layer layer) in Items(key))
        {
            Given<string> id = Read<string>(node, layer, key, null);
            AddUse(id, key, layer, kinds);
            ids.Add(id);
        }

        return ids;
    }

    /// <summary>The id of a part of one of the kinds, or null when no layer gives it.</summary>
    internal Given<string>? PartId(string key, params string[] kinds)
    {
        Given<string>? id = Optional<string>(key);
        if (id is not null && Top(key) is (_, Layer layer))
        {
            AddUse(id, key, layer, kinds);
        }

        return id;
    }

    /// <summary>A terminal that must be there.</summary>
    internal TerminalReference Terminal(string key)
    {
        Given<string> written = Required<string>(key, example: "main.1");
        return Terminal(written, Top(key)?.Layer.Subject ?? Id, key);
    }

    /// <summary>The two terminals of a list such as <c>between</c>.</summary>
    internal (TerminalReference First, TerminalReference Second)? Terminals(string key)
    {
        _shape.Note(key, typeof(string));
        List<TerminalReference> ends = [];
        foreach ((YamlNode node, Layer layer) in Items(key))
        {
            ends.Add(Terminal(Read<string>(node, layer, key, null), layer.Subject, key));
        }

        if (ends.Count == 2)
        {
            return (ends[0], ends[1]);
        }

        if (Top(key) is (YamlList list, Layer owner))
        {
            _context.Problems.Add(list.Position, InputMessages.NeedsTwo(owner.Subject, Path(key), ends.Count));
        }

        return null;
    }

    /// <summary>The two terminals of a list that must be there.</summary>
    internal (TerminalReference First, TerminalReference Second) TwoTerminals(string key)
    {
        if (Terminals(key) is (TerminalReference, TerminalReference) both)
        {
            return both;
        }

        if (Top(key) is null)
        {
            NoteMissing(key, "[plus.1, main.1]");
        }

        return (new TerminalReference("", "", Position), new TerminalReference("", "", Position));
    }

    /// <summary>
    /// Which of the ways to tell a load's demand is used: the one in the uppermost layer that has any, so that
    /// a current written at the part wins over the power of its class. Notes none, or several.
    /// </summary>
    internal string? OneOfLoad(params string[] keys)
    {
        foreach (Layer layer in _layers)
        {
            string[] given = [.. keys.Where(k => layer.Map.Find(k) is not null)];
            if (given.Length > 1)
            {
                _context.Problems.Add(layer.Map.Find(given[1])!.Position, InputMessages.OneOfLoad(layer.Subject, given));
            }

            if (given.Length > 0)
            {
                return given[0];
            }
        }

        _context.Problems.Add(Position, InputMessages.OneOfLoad(Id, []));
        return null;
    }

    /// <summary>Splits <c>id.terminal</c> and notes it for resolving.</summary>
    internal TerminalReference Terminal(Given<string> written, string subject, string key)
    {
        int dot = written.Value.IndexOf('.', StringComparison.Ordinal);
        TerminalReference reference = dot < 0
            ? new TerminalReference(written.Value, "", written.Position)
            : new TerminalReference(written.Value[..dot], written.Value[(dot + 1)..], written.Position);
        if (written.Value.Length > 0)
        {
            _context.References.Terminals.Add(new TerminalUse(reference, subject, Path(key)));
        }

        return reference;
    }

    private void AddUse(Given<string> id, string key, Layer layer, string[] kinds)
    {
        if (id.Value.Length > 0)
        {
            _context.References.Parts.Add(new PartUse(id, layer.Subject, Path(key), kinds));
        }
    }

    private static T ReadNested<T>(MapReader reader, Func<MapReader, T> read)
    {
        T value = read(reader);
        reader.NoteUnknownKeys();
        return value;
    }

    private MapReader Nested(string key, IReadOnlyList<Layer> layers, ReadContext context) =>
        new(context, layers, Path(key), _shape.Note(key))
        {
            Id = Id,
            Position = layers.Count > 0 ? layers[0].Map.Position : Position,
            Section = Section,
            ClassName = ClassName,
            WithoutClass = WithoutClass,
        };
}
