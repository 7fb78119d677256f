using WireCheck.Knowledge;
using WireCheck.Text;

namespace WireCheck.Rules;

/// <summary>Reads the fields of one mapping of a rule file and notes what is missing, misspelt or of the wrong form.</summary>
internal sealed class RuleFields
{
    private readonly YamlMap _map;
    private readonly string _what;
    private readonly ProblemList _problems;

    /// <summary>Takes a mapping and notes every key that is not among the known ones.</summary>
    internal RuleFields(YamlMap map, string what, IReadOnlyList<string> known, ProblemList problems)
    {
        _map = map;
        _what = what;
        _problems = problems;
        foreach (YamlEntry entry in map.Entries)
        {
            if (!known.Contains(entry.Key.Text))
            {
                problems.Add(entry.Key.Position, RuleProblemWords.UnknownKey(entry.Key.Text, known));
            }
        }
    }

    /// <summary>The single value of a key, or null with a problem noted.</summary>
    internal YamlScalar? Required(string key)
    {
        YamlNode? node = _map.Find(key);
        if (node is null or YamlScalar { IsEmpty: true } or YamlScalar { Text: "" })
        {
            _problems.Add(_map.Position, RuleProblemWords.Missing(_what, key));
            return null;
        }

        return AsScalar(key, node);
    }

    /// <summary>The single value of a key, or null when it is not there.</summary>
    internal YamlScalar? Optional(string key) => _map.Find(key) is { } node ? AsScalar(key, node) : null;

    /// <summary>The items of a list, or nothing when the key is not there.</summary>
    internal IReadOnlyList<YamlNode> Items(string key)
    {
        switch (_map.Find(key))
        {
            case null:
                return [];
            case YamlList list:
                return list.Items;
            case { } other:
                _problems.Add(other.Position, RuleProblemWords.WantsList($"'{key}'", other));
                return [];
        }
    }

    /// <summary>The items of a list, a single mapping as the only item, or nothing when the key is not there.</summary>
    internal IReadOnlyList<YamlNode> OneOrMore(string key) => _map.Find(key) is YamlMap single ? [single] : Items(key);

    /// <summary>The <c>source</c> mapping, or null with problems noted.</summary>
    internal Source? Source()
    {
        if (_map.Find("source") is not { } node)
        {
            _problems.Add(_map.Position, RuleProblemWords.Missing(_what, "source"));
            return null;
        }

        if (node is not YamlMap map)
        {
            _problems.Add(node.Position, RuleProblemWords.WantsMapping("'source'", node));
            return null;
        }

        RuleFields fields = new(map, "the source", ["work", "clause", "standing"], _problems);
        YamlScalar? work = fields.Required("work");
        YamlScalar? clause = fields.Optional("clause");
        YamlScalar? word = fields.Required("standing");
        Standing? standing = word is null ? null : StandingWords.Find(word.Text);
        if (word is not null && standing is null)
        {
            _problems.Add(word.Position, RuleProblemWords.UnknownStanding(word.Text));
        }

        return work is null || standing is null ? null : new Source(work.Text, clause?.Text ?? "", standing.Value);
    }

    private YamlScalar? AsScalar(string key, YamlNode node)
    {
        if (node is YamlScalar scalar)
        {
            return scalar;
        }

        _problems.Add(node.Position, RuleProblemWords.WantsText(key, node));
        return null;
    }
}
