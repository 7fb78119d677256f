namespace WireCheck.Cli.Tests;

/// <summary>The source tree that the tests were built from.</summary>
internal static class Repository
{
    /// <summary>Its top folder.</summary>
    internal static string Root { get; } = Find(AppContext.BaseDirectory);

    /// <summary>A file or folder in it.</summary>
    internal static string File(params string[] path) => Path.Combine([Root, .. path]);

    private static string Find(string folder) => System.IO.File.Exists(Path.Combine(folder, "WireCheck.sln"))
        ? folder
        : Find(Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("the tests do not lie in the source tree"));
}
