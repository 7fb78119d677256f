namespace WireCheck.Knowledge;

/// <summary>Entries by name, in the order of their file.</summary>
public sealed class NamedTable<T>
    where T : class
{
    private readonly Dictionary<string, T> _byName;

    internal NamedTable(IEnumerable<(string Name, T Entry)> entries)
    {
        List<string> names = [];
        _byName = new Dictionary<string, T>(StringComparer.Ordinal);
        foreach ((string name, T entry) in entries)
        {
            if (!_byName.TryAdd(name, entry))
            {
                throw new KnowledgeException($"'{name}' stands twice in one table");
            }

            names.Add(name);
        }

        Names = names;
    }

    /// <summary>All names, in the order of the file.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>All entries, in the order of the file.</summary>
    public IEnumerable<T> All => Names.Select(name => _byName[name]);

    /// <summary>The entry of that name, or null.</summary>
    public T? Find(string name) => _byName.GetValueOrDefault(name);

    /// <summary>The entry of that name.</summary>
    /// <exception cref="KeyNotFoundException">There is none; names from a description are checked when it is read.</exception>
    public T this[string name] => Find(name) ?? throw new KeyNotFoundException($"no entry '{name}'; there are {string.Join(", ", Names)}");
}
