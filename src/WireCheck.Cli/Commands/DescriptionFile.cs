using System.Text;
using WireCheck.Text;

namespace WireCheck.Cli.Commands;

/// <summary>Reads a description from the disk.</summary>
internal static class DescriptionFile
{
    /// <summary>The text, or null with one problem noted when the file cannot be read.</summary>
    internal static string? Read(string file, ProblemList problems)
    {
        string? reason = null;
        try
        {
            if (Directory.Exists(file))
            {
                reason = "this is a folder, not a file";
            }
            else if (!File.Exists(file))
            {
                reason = "there is no such file";
            }
            else if (new FileInfo(file).Length > 4L * YamlLimits.Default.Characters)
            {
                reason = $"the file is too large: at most {YamlLimits.Default.Characters} characters are read";
            }
            else
            {
                return File.ReadAllText(file, Encoding.UTF8);
            }
        }
        catch (UnauthorizedAccessException)
        {
            reason = "the file may not be read";
        }
        catch (IOException)
        {
            reason = "the file cannot be read";
        }

        problems.Add(new Position(file, 1, 1), reason);
        return null;
    }

    /// <summary>The folder in which a description's own rule sets may lie.</summary>
    internal static string FolderOf(string file) => Path.GetDirectoryName(Path.GetFullPath(file)) ?? ".";
}
