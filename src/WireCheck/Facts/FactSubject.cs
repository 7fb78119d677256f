using WireCheck.Text;

namespace WireCheck.Facts;

/// <summary>One part as rules see it: its facts and nothing else.</summary>
public sealed class FactSubject(string kind, string id, Position position)
{
    private readonly Dictionary<string, FactValue> _values = new(StringComparer.Ordinal);
    private readonly List<Assumption> _assumed = [];

    /// <summary>Kind of part, or "pack".</summary>
    public string Kind { get; } = kind;

    public string Id { get; } = id;

    /// <summary>Where the part stands in the description.</summary>
    public Position Position { get; } = position;

    /// <summary>Values that the builder left out and a part class or a named assumption gave, in words.</summary>
    public IReadOnlyList<Assumption> Assumed => _assumed;

    /// <summary>The assumptions that decide one of some facts, in words.</summary>
    /// <param name="facts">Names of facts.</param>
    public IReadOnlyList<string> AssumedFor(IReadOnlyCollection<string> facts)
    {
        List<string> words = [];
        foreach (Assumption assumption in _assumed)
        {
            if (assumption.BearsOn.Length == 0 || Array.Exists(assumption.BearsOn, facts.Contains))
            {
                words.Add(assumption.Words);
            }
        }

        return words;
    }

    /// <summary>All facts, by name.</summary>
    public IReadOnlyDictionary<string, FactValue> Values => _values;

    /// <summary>The fact of that name, or null when it does not apply to this part.</summary>
    public FactValue? Find(string name) => _values.GetValueOrDefault(name);

    /// <summary>Sets a fact that is the same in all states.</summary>
    public void Set(Fact fact, object value) => Store(fact, value, null);

    /// <summary>Keeps the larger of what is there and this value.</summary>
    public void KeepLargest(Fact fact, double value, FactPlace place)
    {
        if (!_values.TryGetValue(fact.Name, out FactValue? held) || value > (double)held.Value)
        {
            Store(fact, value, place);
        }
    }

    /// <summary>Keeps the smaller of what is there and this value.</summary>
    public void KeepSmallest(Fact fact, double value, FactPlace place)
    {
        if (!_values.TryGetValue(fact.Name, out FactValue? held) || value < (double)held.Value)
        {
            Store(fact, value, place);
        }
    }

    /// <summary>Notes an assumption that bears on this part; the same words are kept once.</summary>
    /// <param name="words">What is assumed.</param>
    /// <param name="bearsOn">Names of the facts that it decides; a finding that rests on none of them does not tell it. With none named, all tell it.</param>
    public void Assume(string words, params string[] bearsOn)
    {
        if (!_assumed.Exists(a => a.Words == words))
        {
            _assumed.Add(new Assumption(words, bearsOn));
        }
    }

    private void Store(Fact fact, object value, FactPlace? place)
    {
        if (fact.Kind != Kind)
        {
            throw new ArgumentException($"'{fact.Name}' is a fact of a {fact.Kind}, not of a {Kind}", nameof(fact));
        }

        if (value is double number && !double.IsFinite(number))
        {
            throw new ArgumentException($"'{fact.Name}' of {Id} would be {number}", nameof(value));
        }

        _values[fact.Name] = new FactValue(fact, value, place);
    }
}
