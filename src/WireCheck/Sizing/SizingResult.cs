using WireCheck.Findings;
using WireCheck.Rules;

namespace WireCheck.Sizing;

/// <summary>Why a value is what it is.</summary>
public enum Decision
{
    /// <summary>A rule fails at the next smaller one.</summary>
    Rule,

    /// <summary>There is no smaller one to choose.</summary>
    Smallest,

    /// <summary>It may only grow, and need not.</summary>
    Given,
}

/// <summary>One value that was chosen.</summary>
/// <param name="Value">Where it stands.</param>
/// <param name="Chosen">What was chosen.</param>
/// <param name="Decision">Why nothing smaller was.</param>
/// <param name="Smaller">The next smaller option, which fails; null when there is none.</param>
/// <param name="Fails">What is found with the next smaller one, worst first; empty when there is none.</param>
public sealed record SizedChoice(
    SizedValue Value, SizeOption Chosen, Decision Decision, string? Smaller, IReadOnlyList<Finding> Fails)
{
    /// <summary>True when it differs from what stands in the description.</summary>
    public bool Changed => Chosen.Text != Value.Written;

    /// <summary>The choice of an option, with what forbids the next lighter one.</summary>
    internal static SizedChoice Of(SizedValue value, int option, IReadOnlyList<Finding> forbids)
    {
        SizeOption chosen = value.Options[option];
        string? smaller = null;
        for (int i = value.Lowest; i < value.Options.Count; i++)
        {
            if (value.Options[i].Weight < chosen.Weight)
            {
                smaller = value.Options[i].Text;
            }
        }

        return forbids.Count > 0 ? new SizedChoice(value, chosen, Decision.Rule, smaller, forbids)
            : new SizedChoice(value, chosen, value.OnlyGrows is null ? Decision.Smallest : Decision.Given, null, []);
    }

    /// <summary>True when it comes before what stands now in the order of sizes.</summary>
    public bool Shrinks => Changed && Value.WrittenIndex is var now and >= 0 && Value.Options.ToList().IndexOf(Chosen) < now;
}

/// <summary>A finding that no choice takes away, and the rules that stand against each other there.</summary>
/// <param name="Finding">What stands in the end.</param>
/// <param name="Value">The value that would have to bend; null when no value has to do with it.</param>
/// <param name="Rules">
/// Rules that together leave that value no option, none of which can be left out; only the finding's own when no value has to
/// do with it.
/// </param>
public sealed record Conflict(Finding Finding, SizedValue? Value, IReadOnlyList<string> Rules);

/// <summary>What sizing came to.</summary>
/// <param name="Choices">Every value that could be chosen, in the order of the file.</param>
/// <param name="Before">What is found in the box as it is written.</param>
/// <param name="After">What is found with the values chosen, by a whole check.</param>
/// <param name="Conflicts">What stands in the end, and why.</param>
/// <param name="Checks">How often the box was judged.</param>
public sealed record SizingResult(
    IReadOnlyList<SizedChoice> Choices, FindingList Before, FindingList After, IReadOnlyList<Conflict> Conflicts, int Checks)
{
    /// <summary>Metal in m³ of all wire that could be chosen, as it is written.</summary>
    public double MetalBefore => Choices.Sum(c => c.Value.WrittenMetal);

    /// <summary>Metal in m³ of the same wire as chosen.</summary>
    public double MetalAfter => Choices.Sum(c => c.Chosen.Metal);

    /// <summary>Price of what could be chosen and has a price, as it is written; null when nothing has.</summary>
    public double? PriceBefore => Sum(Choices.Select(c => c.Value.WrittenPrice));

    /// <summary>The same as chosen.</summary>
    public double? PriceAfter => Sum(Choices.Select(c => c.Chosen.Price));

    /// <summary>
    /// Dangers and faults of the box as chosen that the box as written does not have, or has as something less grave: such a choice must
    /// not be written into a description.
    /// </summary>
    public IReadOnlyList<Finding> Worsens =>
    [
        .. After.Findings.Where(f => f.Waived is null && f.Severity >= Severity.Fault
            && !Before.Findings.Any(b => b.Rule == f.Rule && b.Part == f.Part && b.Severity >= f.Severity)),
    ];

    private static double? Sum(IEnumerable<double?> prices)
    {
        double? sum = null;
        foreach (double? price in prices)
        {
            sum = price is { } known ? (sum ?? 0) + known : sum;
        }

        return sum;
    }
}
