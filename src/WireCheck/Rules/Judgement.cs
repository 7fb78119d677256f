using WireCheck.Facts;

namespace WireCheck.Rules;

/// <summary>A number or word that a judgement rests on.</summary>
/// <param name="Name">Fact name; with <c>pack.</c> before it when it is about the whole box, <c>settings.</c> for a threshold.</param>
/// <param name="Value">A double in <paramref name="Unit"/>, a string, a bool or a list of strings.</param>
/// <param name="Unit">SI unit, "" when it has none.</param>
/// <param name="Place">The state it comes from, or null.</param>
public sealed record JudgedValue(string Name, object Value, string Unit, FactPlace? Place);

/// <summary>A subject that does not meet a rule.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Subject">The part.</param>
/// <param name="Severity">The rule's severity, or the graded one that holds.</param>
/// <param name="Message">What is wrong, with the numbers.</param>
/// <param name="Mend">What to do.</param>
/// <param name="Values">Every fact and setting that the rule's expressions and words name and that has a value.</param>
/// <param name="Place">Mode and corner of the first of the values that has one, or null.</param>
public sealed record Judgement(
    Rule Rule,
    FactSubject Subject,
    Severity Severity,
    string Message,
    string Mend,
    IReadOnlyList<JudgedValue> Values,
    FactPlace? Place)
{
    /// <summary>By how much it fails, where the requirement is a comparison of two positive numbers; null otherwise.</summary>
    public Margin? Failed { get; init; }

    /// <summary>Values of the description that would mend it; empty where the mend is no value.</summary>
    public IReadOnlyList<OfferedEdit> Edits { get; init; } = [];
}

/// <summary>A subject that a rule could not judge, because facts have no value.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Subject">The part.</param>
/// <param name="Missing">Names of the facts that would be needed.</param>
public sealed record Undecided(Rule Rule, FactSubject Subject, IReadOnlyList<string> Missing);

/// <summary>How near a subject comes to a rule's limit, or how far it is beyond.</summary>
/// <param name="Rule">The rule, whose requirement is a comparison of two positive numbers.</param>
/// <param name="Subject">The part.</param>
/// <param name="Used">The side that must be the smaller.</param>
/// <param name="Limit">The side that must be the larger.</param>
/// <param name="Unit">Unit of both, or null when it is not known.</param>
/// <param name="Floor">The limit is one that must be reached, not kept under: the requirement is written with &gt; or &gt;=.</param>
public sealed record Margin(Rule Rule, FactSubject Subject, double Used, double Limit, string? Unit, bool Floor = false)
{
    /// <summary>What is found: the left side of the requirement.</summary>
    public double Value => Floor ? Limit : Used;

    /// <summary>What it must keep under or reach: the right side.</summary>
    public double Bound => Floor ? Used : Limit;

    /// <summary>Share of the limit that is used: 0 to 1 where it passes, above where it fails.</summary>
    public double Share => Used / Limit;
}

/// <summary>Everything the rules say about a box.</summary>
/// <param name="Found">Judgements, in the order of rules and then of parts.</param>
/// <param name="Undecided">What could not be judged, in the same order.</param>
/// <param name="Margins">Every passed comparison, in the same order.</param>
public sealed record Judgements(
    IReadOnlyList<Judgement> Found, IReadOnlyList<Undecided> Undecided, IReadOnlyList<Margin> Margins);
