using System.Text;

namespace WireCheck.Edits;

/// <summary>Keys that a mapping lacks and that are put in together: each a value or a mapping of more.</summary>
internal sealed class MissingKeys
{
    private readonly List<string> _order = [];
    private readonly Dictionary<string, string> _values = new(StringComparer.Ordinal);
    private readonly Dictionary<string, MissingKeys> _nested = new(StringComparer.Ordinal);

    /// <summary>Adds a value below the keys of a path. False when something else already stands there.</summary>
    internal bool Add(ReadOnlySpan<string> keys, string value)
    {
        string key = keys[0];
        if (keys.Length == 1)
        {
            if (_nested.ContainsKey(key) || !_values.TryAdd(key, value))
            {
                return false;
            }

            _order.Add(key);
            return true;
        }

        if (_values.ContainsKey(key))
        {
            return false;
        }

        if (!_nested.TryGetValue(key, out MissingKeys? below))
        {
            _nested.Add(key, below = new MissingKeys());
            _order.Add(key);
        }

        return below.Add(keys[1..], value);
    }

    /// <summary>Each key with its value, mappings in braces.</summary>
    internal string Write(string between)
    {
        StringBuilder text = new();
        foreach (string key in _order)
        {
            text.Append(text.Length > 0 ? between : "").Append(ScalarText.Write(key)).Append(": ")
                .Append(_values.TryGetValue(key, out string? value) ? ScalarText.Write(value) : $"{{{_nested[key].Write(", ")}}}");
        }

        return text.ToString();
    }
}
