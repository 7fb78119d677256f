using WireCheck.Description;
using WireCheck.Facts;
using WireCheck.Rules;

namespace WireCheck.Findings;

/// <summary>A box with everything the rules said about it, for what goes on from a check.</summary>
/// <param name="Pack">The description.</param>
/// <param name="Sets">Rule sets that judged it.</param>
/// <param name="Facts">What they saw.</param>
/// <param name="Judgements">What they said, every passed comparison included.</param>
/// <param name="Findings">The findings made of it.</param>
public sealed record JudgedBox(Pack Pack, IReadOnlyList<RuleSet> Sets, FactTable Facts, Judgements Judgements, FindingList Findings)
{
    /// <summary>Title of the box.</summary>
    public string Title => Pack.Title.Value;
}
