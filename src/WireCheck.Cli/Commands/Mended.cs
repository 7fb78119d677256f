using WireCheck.Text;

namespace WireCheck.Cli.Commands;

/// <summary>Puts a mended description on the disk and tells each change on standard error.</summary>
internal static class Mended
{
    /// <summary>The check of what stands in the file afterwards. A file that cannot be written is a problem.</summary>
    internal static CheckOutcome Write(MendOutcome outcome, string file, string before, ProblemList problems)
    {
        bool kept = outcome.Text == before || DescriptionFile.Rewrite(file, outcome.Text);
        if (!kept)
        {
            problems.Add(new Position(file, 1, 1), "the file cannot be written; nothing in it was changed");
        }

        foreach (string line in kept ? outcome.Told : [])
        {
            Terminal.Complain(line);
        }

        if (kept && outcome.Check.Report is { } report)
        {
            int left = report.Findings.Findings.Count(f => f.Waived is null);
            Terminal.Complain($"{file}: {Count(outcome.Changes, "value")} written, {Count(left, "finding")} left");
        }

        return outcome.Check;
    }

    private static string Count(int number, string noun) => FormattableString.Invariant($"{number} {noun}{(number == 1 ? "" : "s")}");
}
