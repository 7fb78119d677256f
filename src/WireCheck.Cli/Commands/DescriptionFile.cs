using System.Text;
using WireCheck.Text;

namespace WireCheck.Cli.Commands;

/// <summary>Reads a description from the disk.</summary>
internal static class DescriptionFile
{
    /// <summary>The text, or null with one problem noted when the file cannot be read.</summary>
    internal static string? Read(string file, ProblemList problems) => SourceFile.Load(file, problems);

    /// <summary>The text with its name and folder, or null with one problem noted when the file cannot be read.</summary>
    internal static DescriptionText? ReadWhole(string file, ProblemList problems) =>
        Read(file, problems) is { } text ? new DescriptionText(file, text, FolderOf(file)) : null;

    /// <summary>Writes a changed text over the file, with the byte order mark it had; false when it cannot be written.</summary>
    internal static bool Rewrite(string file, string text)
    {
        try
        {
            bool marked = File.ReadAllBytes(file).AsSpan().StartsWith(Encoding.UTF8.Preamble);
            return Answer.TryWriteFile(file, [.. marked ? Encoding.UTF8.Preamble : [], .. Encoding.UTF8.GetBytes(text)]);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>The folder in which a description's own rule sets may lie.</summary>
    internal static string FolderOf(string file) => Path.GetDirectoryName(Path.GetFullPath(file)) ?? ".";

    /// <summary>
    /// The files that were named, and of each folder every description in it and below: files that end in yaml or yml and
    /// have a <c>pack:</c>, in the order of their names. A folder without one is a problem.
    /// </summary>
    internal static IReadOnlyList<string> Expand(IEnumerable<string> named, ProblemList problems)
    {
        List<string> files = [];
        foreach (string name in named)
        {
            if (!Directory.Exists(name))
            {
                files.Add(name);
                continue;
            }

            List<string> found = [.. Inside(name).Where(IsDescription).Order(StringComparer.Ordinal)];
            if (found.Count == 0)
            {
                problems.Add(new Position(name, 1, 1), "the folder holds no description: no yaml file in it begins a line with pack:");
            }

            files.AddRange(found);
        }

        return files;
    }

    private static IEnumerable<string> Inside(string folder)
    {
        EnumerationOptions options = new() { RecurseSubdirectories = true, MaxRecursionDepth = 8, IgnoreInaccessible = true };
        return Directory.EnumerateFiles(folder, "*", options)
            .Where(f => Path.GetExtension(f) is ".yaml" or ".yml")
            .Select(f => f.Replace('\\', '/'));
    }

    private static bool IsDescription(string file)
    {
        try
        {
            return File.ReadLines(file).Take(LinesSearched).Any(l => l.StartsWith("pack:", StringComparison.Ordinal));
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>More lines than any description has before its title.</summary>
    private const int LinesSearched = 1000;
}
