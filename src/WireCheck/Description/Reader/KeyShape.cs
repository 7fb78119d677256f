namespace WireCheck.Description.Reader;

/// <summary>The keys a reader knows in one mapping, and what each holds; collected while it reads.</summary>
internal sealed class KeyShape
{
    private readonly Dictionary<string, KeyShape> _keys = new(StringComparer.Ordinal);

    /// <summary>Known keys, in the order they were asked for.</summary>
    internal IReadOnlyCollection<string> Keys => _keys.Keys;

    /// <summary>The type of the value; null for a mapping.</summary>
    internal Type? ValueType { get; private set; }

    /// <summary>What a known key holds.</summary>
    internal KeyShape this[string key] => _keys[key];

    /// <summary>Notes a key as known.</summary>
    internal KeyShape Note(string key, Type? valueType = null)
    {
        if (!_keys.TryGetValue(key, out KeyShape? shape))
        {
            shape = new KeyShape { ValueType = valueType };
            _keys.Add(key, shape);
        }

        return shape;
    }
}
