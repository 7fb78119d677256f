using WireCheck.Facts;
using WireCheck.Knowledge;
using WireCheck.Rules.Expressions;
using WireCheck.Text;

namespace WireCheck.Rules;

/// <summary>A severity that holds instead of the rule's own when a condition is met.</summary>
/// <param name="When">The condition.</param>
/// <param name="Severity">The severity.</param>
public sealed record GradedSeverity(RuleExpression When, Severity Severity);

/// <summary>One judgement as data: a kind of subject, what its facts must satisfy, words and a source.</summary>
public sealed class Rule
{
    /// <summary>Stable id in kebab-case, named after the fault.</summary>
    public required string Id { get; init; }

    /// <summary>The rule set it belongs to.</summary>
    public required string SetName { get; init; }

    /// <summary>Kind of part it judges, or "pack".</summary>
    public required string Kind { get; init; }

    public required Severity Severity { get; init; }

    /// <summary>Tried in order; the first whose condition holds gives the severity.</summary>
    public IReadOnlyList<GradedSeverity> Graded { get; init; } = [];

    /// <summary>What is wrong when it finds something, in one sentence.</summary>
    public required string Title { get; init; }

    /// <summary>Which subjects it judges; null means every one of the kind.</summary>
    public RuleExpression? When { get; init; }

    /// <summary>What must hold; a subject for which it does not is found.</summary>
    public required RuleExpression Require { get; init; }

    /// <summary>Facts that the requirement names, of the subject and of the whole box.</summary>
    public IEnumerable<Fact> JudgedFacts => Require.Compiled.Uses.Facts.Select(use => use.Fact);

    /// <summary>The finding's words.</summary>
    public required RuleWords Says { get; init; }

    /// <summary>What to do about it.</summary>
    public required RuleWords Mend { get; init; }

    /// <summary>The mend as values of the description, where it is one; each is offered when its condition holds.</summary>
    public IReadOnlyList<RuleEdit> Edits { get; init; } = [];

    /// <summary>Why it matters.</summary>
    public required string Why { get; init; }

    public required Source Source { get; init; }

    /// <summary>Ids of rules that belong to the same question.</summary>
    public IReadOnlyList<string> Related { get; init; } = [];

    public required Position Position { get; init; }
}
