namespace WireCheck.Tests.House;

/// <summary>The files of the project as they lie on the disk.</summary>
internal static class SourceTree
{
    /// <summary>C# files below a folder, by their paths from the top, without what a build has made.</summary>
    internal static IReadOnlyList<string> Files(string folder) =>
    [
        .. Directory.EnumerateFiles(Path.Combine(Golden.Root, folder), "*.cs", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Golden.Root, file))
            .Where(file => !file.Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj"))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The text of a file by its path from the top.</summary>
    internal static string Read(string file) => File.ReadAllText(Path.Combine(Golden.Root, file));

    /// <summary>Whether there is a file or a folder at that path from the top.</summary>
    internal static bool Has(string path) => Path.Exists(Path.Combine(Golden.Root, path));
}
