using WireCheck.Text;

namespace WireCheck.Rules;

/// <summary>Reads the files of a user's own rule set, and nothing outside the description's folder.</summary>
internal static class RuleSetFiles
{
    /// <summary>The files in the order of their names, or null with a problem noted.</summary>
    internal static IReadOnlyList<RuleFile>? Read(string path, string folder, int mostFiles, Position at, ProblemList problems)
    {
        string root = Path.GetFullPath(folder);
        string full = Path.GetFullPath(Path.Combine(root, path));
        if (!IsWithin(full, root))
        {
            problems.Add(at, RuleProblemWords.OutsideFolder(path));
            return null;
        }

        List<string> found = FilesAt(full);
        if (found.Count == 0)
        {
            problems.Add(at, RuleProblemWords.NoSuchPath(path));
            return null;
        }

        if (found.Count > mostFiles)
        {
            problems.Add(at, RuleProblemWords.TooManyFiles(path, mostFiles));
            return null;
        }

        List<RuleFile> files = [];
        foreach (string file in found)
        {
            string name = Path.GetRelativePath(root, file).Replace('\\', '/');
            if (LeadsOutside(file, root))
            {
                problems.Add(at, RuleProblemWords.OutsideFolder(name));
            }
            else if (new FileInfo(file).Length > 4L * RuleSetReader.Limits.Characters)
            {
                problems.Add(new Position(name, 1, 1), RuleProblemWords.TooLarge(RuleSetReader.Limits.Characters));
            }
            else
            {
                files.Add(new RuleFile(name, File.ReadAllText(file)));
            }
        }

        return files.Count == found.Count ? files : null;
    }

    private static List<string> FilesAt(string full)
    {
        if (File.Exists(full))
        {
            return [full];
        }

        if (!Directory.Exists(full))
        {
            return [];
        }

        return
        [
            .. Directory.EnumerateFiles(full)
                .Where(f => f.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || f.EndsWith(".yml", StringComparison.OrdinalIgnoreCase))
                .Order(StringComparer.Ordinal),
        ];
    }

    private static bool IsWithin(string full, string root)
    {
        string prefix = root.EndsWith(Path.DirectorySeparatorChar) ? root : root + Path.DirectorySeparatorChar;
        return full.StartsWith(prefix, StringComparison.Ordinal);
    }

    /// <summary>True when the file, or a folder between it and the root, is a link to somewhere outside.</summary>
    private static bool LeadsOutside(string file, string root)
    {
        FileSystemInfo current = new FileInfo(file);
        while (IsWithin(current.FullName, root))
        {
            if (current.ResolveLinkTarget(returnFinalTarget: true) is { } target && !IsWithin(Path.GetFullPath(target.FullName), root))
            {
                return true;
            }

            current = new DirectoryInfo(Path.GetDirectoryName(current.FullName)!);
        }

        return false;
    }
}
