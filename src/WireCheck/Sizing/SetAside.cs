using WireCheck.Findings;
using WireCheck.Rules;

namespace WireCheck.Sizing;

/// <summary>
/// What is not regarded when sizes are chosen again: what could not be mended, and where a danger stands the rules that made the
/// values it names so large. A voltage that arrives is not worth a fuse that no wire bears. What is found at a part that has values
/// of its own is always regarded: a fuse that blows in use is no choice.
/// </summary>
internal sealed class SetAside(SizeSearch search, Blame blame)
{
    private readonly Dictionary<FindingKey, Finding> _findings = [];
    private readonly HashSet<string> _rules = new(StringComparer.Ordinal);

    /// <summary>Adds what stands against a choice; false when that is nothing new.</summary>
    /// <param name="whole">What the rules say of the choice.</param>
    /// <param name="forbids">What forbids the next smaller option of each value.</param>
    internal bool Add(Trial whole, IReadOnlyList<Finding>[] forbids)
    {
        bool added = false;
        foreach (Finding standing in whole.Standing)
        {
            if (standing.Severity < Severity.Danger)
            {
                added |= HasNoValues(standing) && !_rules.Contains(standing.Rule) && _findings.TryAdd(FindingKey.Of(standing), standing);
                continue;
            }

            foreach (int value in blame.Named(standing))
            {
                foreach (Finding forbidding in forbids[value])
                {
                    added |= forbidding.Severity < Severity.Danger && HasNoValues(forbidding) && _rules.Add(forbidding.Rule);
                }
            }
        }

        return added;
    }

    private bool HasNoValues(Finding finding) => search.OfPart(finding.Part).Count == 0;

    /// <summary>An allowance that lets all of that stand.</summary>
    internal Allowance Allowance()
    {
        Allowance allowance = new();
        foreach (Finding finding in _findings.Values)
        {
            allowance.Let(finding);
        }

        foreach (string rule in _rules)
        {
            allowance.LetRule(rule);
        }

        return allowance;
    }
}
