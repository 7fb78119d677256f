using WireCheck.Text;

namespace WireCheck.Cli.Commands;

/// <summary>Reads a description from the disk.</summary>
internal static class DescriptionFile
{
    /// <summary>The text, or null with one problem noted when the file cannot be read.</summary>
    internal static string? Read(string file, ProblemList problems) => SourceFile.Load(file, problems);

    /// <summary>The folder in which a description's own rule sets may lie.</summary>
    internal static string FolderOf(string file) => Path.GetDirectoryName(Path.GetFullPath(file)) ?? ".";
}
