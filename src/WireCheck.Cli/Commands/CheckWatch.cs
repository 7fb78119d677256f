using System.Globalization;
using System.Runtime.InteropServices;
using WireCheck.Comparing;
using WireCheck.Findings;
using WireCheck.Reports;
using WireCheck.Reports.Comparisons;
using WireCheck.Reports.Text;

namespace WireCheck.Cli.Commands;

/// <summary>
/// <c>check --watch</c>: checks again whenever a yaml file in the folder of a description, or below it, is saved: the
/// description itself or a rule set beside it.
/// </summary>
internal static class CheckWatch
{
    /// <summary>
    /// Milliseconds between two looks at the files. A save counts when two looks find the same, so that an editor that writes
    /// in pieces is waited for. Looking, unlike a notice of the system, also works on network drives.
    /// </summary>
    private const int Pause = 150;

    /// <summary>Folders below a description that are looked into.</summary>
    private const int Deepest = 4;

    /// <summary>Stays until Ctrl-C.</summary>
    /// <param name="files">What the user named: descriptions or folders of them.</param>
    /// <param name="check">Reads and checks all of them; what is wrong is told.</param>
    /// <param name="codeOf">Exit code of what came of it.</param>
    internal static ExitCode Run(
        IReadOnlyList<string> files, Func<(List<Report> Reports, bool Wrong)> check, Func<IReadOnlyList<Report>, bool, ExitCode> codeOf)
    {
        using ManualResetEventSlim stop = new(false);
        void End(PosixSignalContext context)
        {
            context.Cancel = true;
            stop.Set();
        }

        using PosixSignalRegistration interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, End);
        using PosixSignalRegistration terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, End);
        string seen = Look(files);
        (List<Report> reports, bool wrong) = check();
        using (StringWriter words = new(CultureInfo.InvariantCulture))
        {
            TextReport.Write(words, reports, Terminal.Style());
            Terminal.Write(words.ToString());
        }

        Terminal.Write("\nWatching for saves; Ctrl-C ends.\n");
        string last = seen;
        Dictionary<string, Report> known = reports.ToDictionary(r => r.File, StringComparer.Ordinal);
        while (!stop.Wait(Pause))
        {
            string now = Look(files);
            if (now != seen && now == last)
            {
                seen = now;
                (reports, wrong) = check();
                Terminal.Write(Changes(known, reports, wrong));
                foreach (Report report in reports)
                {
                    // A save that cannot be read leaves the last good one to compare the next with.
                    known[report.File] = report;
                }
            }

            last = now;
        }

        return codeOf(reports, wrong);
    }

    private static string Changes(Dictionary<string, Report> before, IReadOnlyList<Report> now, bool wrong)
    {
        using StringWriter words = new(CultureInfo.InvariantCulture);
        foreach (Report report in now)
        {
            Report? old = before.GetValueOrDefault(report.File);
            IReadOnlyList<Finding> known = old?.Findings.Findings ?? [];
            ChangesText.Write(
                words, report, old, FindingChange.Between(known, report.Findings.Findings, BoxComparison.DefaultTolerance), Terminal.Style());
        }

        if (wrong && now.Count == 0)
        {
            words.Write("\nNot checked: what is wrong stands above.\n");
        }

        return words.ToString();
    }

    /// <summary>Names, times and sizes of the files that matter.</summary>
    private static string Look(IReadOnlyList<string> files)
    {
        EnumerationOptions options = new() { RecurseSubdirectories = true, MaxRecursionDepth = Deepest, IgnoreInaccessible = true };
        SortedSet<string> found = new(StringComparer.Ordinal);
        foreach (string folder in files.Select(f => Directory.Exists(f) ? f : DescriptionFile.FolderOf(f)).Distinct().Where(Directory.Exists))
        {
            foreach (string file in Directory.EnumerateFiles(folder, "*", options).Where(f => Path.GetExtension(f) is ".yaml" or ".yml"))
            {
                FileInfo info = new(file);
                found.Add(info.Exists ? FormattableString.Invariant($"{file} {info.LastWriteTimeUtc.Ticks} {info.Length}") : file);
            }
        }

        return string.Join('\n', found);
    }
}
