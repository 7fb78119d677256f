namespace WireCheck.Bench;

/// <summary>
/// Holds the answers of the program compiled to machine code against those of the one that runs on the installed runtime:
/// every command on every example, and every broken description of the tests. A library that looks a type up by
/// name would fail in the first alone.
/// </summary>
internal static class SameAnswers
{
    /// <summary>Compares, and tells how many answers were the same.</summary>
    /// <returns>The number of answers compared.</returns>
    /// <exception cref="InvalidOperationException">Two answers differ.</exception>
    internal static int Compare(PublishedProgram native, PublishedProgram hosted)
    {
        int compared = 0;
        foreach (string[] arguments in Questions())
        {
            if (!native.Run(arguments).SaysTheSameAs(hosted.Run(arguments)))
            {
                throw new InvalidOperationException($"the two published programs differ in: wirecheck {string.Join(' ', arguments)}");
            }

            compared++;
        }

        return compared;
    }

    private static IEnumerable<string[]> Questions()
    {
        yield return ["--help"];
        yield return ["check"];
        yield return ["explain", "--list"];
        yield return ["explain", "--facts"];
        yield return ["explain", "drop-over-percent"];
        foreach (string example in Files("examples"))
        {
            yield return ["check", example];
            yield return ["check", "--format", "json", example];
            yield return ["numbers", "modes", example];
            yield return ["numbers", "modes", "--format", "json", example];
            yield return ["numbers", "standby", example];
        }

        foreach (string broken in Files("tests", "WireCheck.Tests", "Description", "Broken"))
        {
            yield return ["check", broken];
        }
    }

    private static IEnumerable<string> Files(params string[] folder) =>
        Directory.EnumerateFiles(Path.Combine([Repository.Root, .. folder]), "*.yaml").Order(StringComparer.Ordinal);
}
