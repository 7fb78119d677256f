namespace WireCheck.Facts.Catalogue;

/// <summary>Facts that several kinds of part share under the same names, defined once and made for each kind.</summary>
/// <param name="kind">Kind of part they are made for.</param>
public abstract class FactGroup(string kind)
{
    private readonly List<Fact> _facts = [];

    /// <summary>Kind of part the facts are about.</summary>
    public string Kind { get; } = kind;

    /// <summary>All facts of the group for this kind.</summary>
    public IReadOnlyList<Fact> Facts => _facts;

    private protected Fact Number(string name, string unit, string sentence) => Keep(Fact.Number(Kind, name, unit, sentence));

    private protected Fact Worst(string name, string unit, string sentence) => Keep(Fact.Worst(Kind, name, unit, sentence));

    private protected Fact Word(string name, string sentence) => Keep(Fact.Word(Kind, name, sentence));

    private protected Fact YesNo(string name, string sentence) => Keep(Fact.YesNo(Kind, name, sentence));

    private protected Fact Names(string name, string sentence) => Keep(Fact.Names(Kind, name, sentence));

    private Fact Keep(Fact fact)
    {
        _facts.Add(fact);
        return fact;
    }
}
