namespace WireCheck.Rules;

/// <summary>How much a finding matters; a larger value is worse.</summary>
public enum Severity
{
    /// <summary>Could be better.</summary>
    Advice,

    /// <summary>Will not work as meant, or breaks something.</summary>
    Fault,

    /// <summary>Can burn or hurt.</summary>
    Danger,
}

/// <summary>The words for a severity, as rule files and reports write them.</summary>
public static class SeverityWords
{
    /// <summary>All words, worst first.</summary>
    public static IReadOnlyList<string> All { get; } = ["danger", "fault", "advice"];

    /// <summary>The word for a severity.</summary>
    public static string For(Severity severity) => All[All.Count - 1 - (int)severity];

    /// <summary>The severity of a word, or null when it is none of <see cref="All"/>.</summary>
    public static Severity? Find(string word)
    {
        for (int i = 0; i < All.Count; i++)
        {
            if (All[i] == word)
            {
                return (Severity)(All.Count - 1 - i);
            }
        }

        return null;
    }
}
