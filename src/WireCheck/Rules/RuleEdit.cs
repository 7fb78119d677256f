using WireCheck.Rules.Expressions;

namespace WireCheck.Rules;

/// <summary>Which of two values for the same key is the safer one.</summary>
public enum SaferValue
{
    /// <summary>Neither: the first rule that names one decides.</summary>
    Neither,

    /// <summary>The larger.</summary>
    Larger,

    /// <summary>The smaller.</summary>
    Smaller,
}

/// <summary>A mend that is a value of the description, as a rule writes it.</summary>
/// <param name="When">Where it applies; null means always.</param>
/// <param name="Part">Words that give the id of the part; null means the subject itself.</param>
/// <param name="Key">Keys down to the value, joined by dots.</param>
/// <param name="Value">Words that give the value as a description writes it.</param>
/// <param name="Safer">What wins when two rules want different values.</param>
public sealed record RuleEdit(RuleExpression? When, RuleWords? Part, string Key, RuleWords Value, SaferValue Safer);

/// <summary>A value that a judgement offers to write.</summary>
/// <param name="Part">Id of the part or of a conductor's leg; empty for a value of the box itself.</param>
/// <param name="Key">Keys down to the value, joined by dots.</param>
/// <param name="Value">The value as a description writes it.</param>
/// <param name="Safer">What wins when two findings offer different values.</param>
public sealed record OfferedEdit(string Part, string Key, string Value, SaferValue Safer);
