namespace WireCheck.Bench;

/// <summary>
/// Holds the answers of the program compiled to machine code against those of the one that runs on the installed runtime.
/// A library that looks a type up by name would fail in the first alone.
/// </summary>
internal static class SameAnswers
{
    /// <summary>Asks both programs and returns the questions that they answer differently, as a user would type them.</summary>
    internal static IReadOnlyList<string> Differences(PublishedProgram native, PublishedProgram hosted, IEnumerable<string[]> questions)
    {
        List<string> different = [];
        foreach (string[] arguments in questions)
        {
            if (!native.Run(arguments).SaysTheSameAs(hosted.Run(arguments)))
            {
                different.Add($"wirecheck {string.Join(' ', arguments)}");
            }
        }

        return different;
    }

    /// <summary>Compares, and tells how many answers were the same.</summary>
    /// <returns>The number of answers compared.</returns>
    /// <exception cref="InvalidOperationException">Two answers differ.</exception>
    internal static int Compare(PublishedProgram native, PublishedProgram hosted)
    {
        List<string[]> questions = [.. new Questions(hosted).All()];
        IReadOnlyList<string> different = Differences(native, hosted, questions);
        return different.Count == 0
            ? questions.Count
            : throw new InvalidOperationException($"the two published programs differ in: {string.Join("; ", different)}");
    }
}
