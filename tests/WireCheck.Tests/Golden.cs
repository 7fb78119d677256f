namespace WireCheck.Tests;

/// <summary>
/// Compares an output with the file that holds the expected one. With WIRECHECK_REGENERATE set to 1 the file
/// is written anew instead; its diff is then read, never edited by hand.
/// </summary>
internal static class Golden
{
    /// <summary>The folder that holds the solution.</summary>
    internal static string Root { get; } = FindRoot();

    /// <summary>Compares with a file below tests/WireCheck.Tests.</summary>
    internal static void ShouldMatch(string actual, string path)
    {
        string file = Path.Combine(Root, "tests", "WireCheck.Tests", path);
        if (Environment.GetEnvironmentVariable("WIRECHECK_REGENERATE") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, actual);
        }

        File.Exists(file).ShouldBeTrue($"{path} is missing");
        actual.ShouldBe(File.ReadAllText(file), $"the output differs from {path}");
    }

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "WireCheck.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("the tests do not run inside the source tree");
    }
}
