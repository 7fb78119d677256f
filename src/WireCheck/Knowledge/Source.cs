namespace WireCheck.Knowledge;

/// <summary>How well a value or a rule is founded.</summary>
public enum Standing
{
    /// <summary>Read in the published work that is named.</summary>
    Published,

    /// <summary>What careful builders do, without a single text to cite.</summary>
    CommonPractice,

    /// <summary>Recalled and not checked against the text; to be verified before relying on it.</summary>
    FromMemory,
}

/// <summary>Where a value or a rule comes from.</summary>
/// <param name="Work">Name of the work, such as "33 CFR 183.425".</param>
/// <param name="Clause">Clause, table or page in it; may be empty.</param>
/// <param name="Standing">How well it is founded.</param>
public sealed record Source(string Work, string Clause, Standing Standing)
{
    /// <summary>On one line: <c>33 CFR 183.425, Table 5 (published)</c>.</summary>
    public override string ToString() =>
        Clause.Length == 0 ? $"{Work} ({StandingWords.For(Standing)})" : $"{Work}, {Clause} ({StandingWords.For(Standing)})";
}

/// <summary>The words for a standing, as rule and table files write them.</summary>
public static class StandingWords
{
    /// <summary>All words, best founded first.</summary>
    public static IReadOnlyList<string> All { get; } = ["published", "common practice", "from memory"];

    /// <summary>The word for a standing.</summary>
    public static string For(Standing standing) => All[(int)standing];

    /// <summary>The standing of a word, or null when it is none of <see cref="All"/>.</summary>
    public static Standing? Find(string word)
    {
        for (int i = 0; i < All.Count; i++)
        {
            if (All[i] == word)
            {
                return (Standing)i;
            }
        }

        return null;
    }
}
