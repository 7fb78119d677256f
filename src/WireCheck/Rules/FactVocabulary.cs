using WireCheck.Facts;

namespace WireCheck.Rules;

/// <summary>The facts that rules may name, by kind of part.</summary>
public sealed class FactVocabulary
{
    /// <summary>The kind of the subject that stands for the whole box.</summary>
    public const string PackKind = "pack";

    private readonly Dictionary<string, Dictionary<string, Fact>> _byKind = new(StringComparer.Ordinal);

    /// <summary>Takes every definition; for a fact with a place, <c>name_mode</c> and <c>name_corner</c> are added as words.</summary>
    public FactVocabulary(IEnumerable<Fact> definitions)
    {
        foreach (Fact fact in definitions)
        {
            Add(fact);
            if (fact.HasPlace)
            {
                Add(Fact.Word(fact.Kind, fact.Name + ModeSuffix, $"The mode in which {fact.Name} was found."));
                Add(Fact.Word(fact.Kind, fact.Name + CornerSuffix, $"The corner at which {fact.Name} was found."));
            }
        }

        foreach (string kind in _byKind.Keys.ToList())
        {
            Add(Fact.Word(kind, "id", "The part's id in the description."));
            Add(Fact.Word(kind, "kind", "The kind of part."));
        }
    }

    internal const string ModeSuffix = "_mode";

    internal const string CornerSuffix = "_corner";

    /// <summary>Every kind that has facts, in alphabetical order.</summary>
    public IReadOnlyList<string> Kinds => [.. _byKind.Keys.Order(StringComparer.Ordinal)];

    /// <summary>True when the kind has facts.</summary>
    public bool HasKind(string kind) => _byKind.ContainsKey(kind);

    /// <summary>The fact of that name of a kind, or null.</summary>
    public Fact? Find(string kind, string name) =>
        _byKind.TryGetValue(kind, out Dictionary<string, Fact>? facts) ? facts.GetValueOrDefault(name) : null;

    /// <summary>Names of all facts of a kind, in alphabetical order.</summary>
    public IReadOnlyList<string> NamesOf(string kind) =>
        _byKind.TryGetValue(kind, out Dictionary<string, Fact>? facts) ? [.. facts.Keys.Order(StringComparer.Ordinal)] : [];

    private void Add(Fact fact)
    {
        if (!_byKind.TryGetValue(fact.Kind, out Dictionary<string, Fact>? facts))
        {
            _byKind[fact.Kind] = facts = new Dictionary<string, Fact>(StringComparer.Ordinal);
        }

        facts[fact.Name] = fact;
    }
}
