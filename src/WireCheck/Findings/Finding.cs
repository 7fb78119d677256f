using WireCheck.Facts;
using WireCheck.Knowledge;
using WireCheck.Rules;
using WireCheck.Text;

namespace WireCheck.Findings;

/// <summary>The builder's acceptance of a finding.</summary>
/// <param name="Because">The reason.</param>
/// <param name="Until">Last day it holds; null means always.</param>
public sealed record Waived(string Because, DateOnly? Until);

/// <summary>Something a builder should know about one part, as every report tells it.</summary>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Title">The rule's title.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Part">Id of the part.</param>
/// <param name="PartKind">Kind of the part, or "pack" or "waiver".</param>
/// <param name="Message">What is wrong, with the numbers.</param>
/// <param name="Mend">What to do.</param>
/// <param name="Values">The numbers and words it rests on, by fact name.</param>
/// <param name="Place">Mode and corner it was found in, or null.</param>
/// <param name="At">Where the part stands in the description.</param>
/// <param name="Why">Why it matters.</param>
/// <param name="Source">The rule's source.</param>
/// <param name="Assumed">Values the builder left out that bear on it, in words.</param>
/// <param name="Waived">Set when the builder accepts it; it then does not count towards the verdict.</param>
public sealed record Finding(
    string Rule,
    string Title,
    Severity Severity,
    string Part,
    string PartKind,
    string Message,
    string Mend,
    IReadOnlyList<JudgedValue> Values,
    FactPlace? Place,
    Position At,
    string Why,
    Source Source,
    IReadOnlyList<string> Assumed,
    Waived? Waived)
{
    /// <summary>Values of the description that would mend it; empty where the mend is no value.</summary>
    public IReadOnlyList<OfferedEdit> Edits { get; init; } = [];
}
