using WireCheck.Rules;

namespace WireCheck.Findings;

/// <summary>The answer in a word: the worst finding that is not waived.</summary>
public enum Verdict
{
    /// <summary>Nothing was found.</summary>
    Passes,

    /// <summary>Only advice.</summary>
    PassesWithAdvice,

    /// <summary>Something will not work or will break.</summary>
    Faulty,

    /// <summary>Something can burn or hurt.</summary>
    Dangerous,
}

/// <summary>How many findings of each severity there are.</summary>
/// <param name="Danger">Dangers that stand.</param>
/// <param name="Fault">Faults that stand.</param>
/// <param name="Advice">Advice that stands.</param>
/// <param name="Waived">Findings of any severity that are waived, not counted before.</param>
/// <param name="Undecided">What rules could not judge.</param>
public sealed record FindingCounts(int Danger, int Fault, int Advice, int Waived, int Undecided)
{
    /// <summary>Findings of a severity or worse that stand.</summary>
    public int AtLeast(Severity severity) => severity switch
    {
        Severity.Danger => Danger,
        Severity.Fault => Danger + Fault,
        _ => Danger + Fault + Advice,
    };

    /// <summary>The verdict these counts make.</summary>
    public Verdict Verdict => Danger > 0 ? Verdict.Dangerous
        : Fault > 0 ? Verdict.Faulty
        : Advice > 0 ? Verdict.PassesWithAdvice
        : Verdict.Passes;
}

/// <summary>The words for a verdict.</summary>
public static class VerdictWords
{
    /// <summary>As JSON writes it: <c>passes</c>, <c>passes with advice</c>, <c>faulty</c>, <c>dangerous</c>.</summary>
    public static string For(Verdict verdict) => verdict switch
    {
        Verdict.Passes => "passes",
        Verdict.PassesWithAdvice => "passes with advice",
        Verdict.Faulty => "faulty",
        _ => "dangerous",
    };
}
