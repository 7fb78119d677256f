using System.CommandLine;
using WireCheck.Reports;
using WireCheck.Reports.Text;
using WireCheck.Rules;
using WireCheck.Text;

namespace WireCheck.Cli.Commands;

/// <summary><c>check</c>: judges one or more descriptions.</summary>
internal static class CheckCommand
{
    private static readonly Argument<string[]> Files = new("FILE")
    {
        Description = "Descriptions to judge; of a folder, every one in it and below.",
        Arity = ArgumentArity.OneOrMore,
    };

    private static readonly Option<string> Format = new("--format")
    {
        Description = "How the answer is written.",
        DefaultValueFactory = _ => "text",
    };

    private static readonly Option<string?> Out = new("--out")
    {
        Description = "File that receives the answer instead of standard output.",
        HelpName = "FILE",
    };

    private static readonly Option<string> FailOn = new("--fail-on")
    {
        Description = "Least severity that makes the program exit with 1.",
        DefaultValueFactory = _ => "fault",
    };

    private static readonly Option<string?> Today = TodayOption.Make();

    private static readonly Option<string?> Template = new("--template")
    {
        Description = "A template of your own for text, markdown or html.",
        HelpName = "FILE",
    };

    private static readonly Option<bool> Mend = new("--mend")
    {
        Description = "Write the values that findings offer into the descriptions, and judge what is left.",
    };

    private static readonly Option<bool> Tolerance = new("--tolerance")
    {
        Description = "Judge the box at every end of its tolerances too, and tell which margins do not survive.",
    };

    private static readonly Option<bool> Watch = new("--watch")
    {
        Description = "Stay, check again on each save, and tell what changed; ends on Ctrl-C with the last exit code.",
    };

    /// <summary>The command, over a front door.</summary>
    internal static Command Make(PackCheck check)
    {
        Format.AcceptOnlyFromAmong([.. ReportFormats.All]);
        FailOn.AcceptOnlyFromAmong([.. SeverityWords.All]);
        Command command = new("check", "Judge one or more descriptions.") { Files, Format, Template, Out, FailOn, Today, Tolerance, Watch, Mend };
        command.Validators.Add(result =>
        {
            if (result.GetValue(Watch) && (WrittenOption.Of(result, Format) is not (null or "text") || result.GetValue(Out) is not null || result.GetValue(Template) is not null))
            {
                result.AddError("--watch writes text to the terminal: leave out --format, --template and --out");
            }
        });
        command.Validators.Add(result =>
        {
            if (result.GetValue(Watch) && result.GetValue(Mend))
            {
                result.AddError("--watch and --mend do not go together: mend first, then watch");
            }
        });
        command.SetAction(parsed => (int)(parsed.GetValue(Watch)
            ? CheckWatch.Run(parsed.GetRequiredValue(Files), () => ReadAndCheck(check, parsed), (reports, wrong) => CodeOf(parsed, reports, wrong))
            : Run(check, parsed)));
        return command;
    }

    private static ExitCode Run(PackCheck check, ParseResult parsed)
    {
        (List<Report> reports, bool wrong) = ReadAndCheck(check, parsed);
        if (reports.Count > 0 && !TryAnswer(parsed, reports))
        {
            wrong = true;
        }

        return CodeOf(parsed, reports, wrong);
    }

    private static ExitCode CodeOf(ParseResult parsed, IReadOnlyList<Report> reports, bool wrong)
    {
        Severity threshold = SeverityWords.Find(parsed.GetValue(FailOn)!)!.Value;
        return wrong ? ExitCode.WrongInput
            : reports.Any(r => r.Findings.Counts.AtLeast(threshold) > 0 || r.Tolerance?.Loses(threshold) == true) ? ExitCode.Found : ExitCode.Clean;
    }

    /// <summary>Writes the reports; false when the template or the file to write to is wrong, which is told.</summary>
    private static bool TryAnswer(ParseResult parsed, IReadOnlyList<Report> reports)
    {
        string? outFile = parsed.GetValue(Out);
        ProblemList problems = new();
        byte[]? answer = ReportFormats.Write(
            parsed.GetValue(Format)!, parsed.GetValue(Template), reports, outFile is null ? Terminal.Style() : TextStyle.Piped, problems);
        if (answer is not null && outFile is not null && !Answer.TryWriteFile(outFile, answer))
        {
            problems.Add(new Position(outFile, 1, 1), "the file cannot be written");
        }

        foreach (Problem problem in problems.InOrder())
        {
            Terminal.Complain(problem.ToString());
        }

        if (answer is not null && outFile is null)
        {
            Terminal.Write(answer);
        }

        return problems.IsEmpty;
    }

    /// <summary>A report for each description that is right; every problem of every other is told.</summary>
    private static (List<Report> Reports, bool Wrong) ReadAndCheck(PackCheck check, ParseResult parsed)
    {
        DateOnly today = TodayOption.Of(parsed.GetValue(Today));
        List<Report> reports = [];
        ProblemList unreadable = new();
        IReadOnlyList<string> files = DescriptionFile.Expand(parsed.GetRequiredValue(Files), unreadable);
        bool wrong = !unreadable.IsEmpty;
        foreach (string file in files)
        {
            string? text = DescriptionFile.Read(file, unreadable);
            if (text is null)
            {
                wrong = true;
                continue;
            }

            CheckOptions options = new(DescriptionFile.FolderOf(file), today);
            CheckOutcome outcome = parsed.GetValue(Mend)
                ? Mended.Write(new PackMending(check).Mend(file, text, options), file, text, unreadable)
                : check.Check(file, text, options);
            outcome = parsed.GetValue(Tolerance) ? PackCheck.WithTolerances(outcome, options) : outcome;
            foreach (Problem problem in outcome.Problems)
            {
                Terminal.Complain(problem.ToString());
            }

            wrong |= outcome.Report is null;
            if (outcome.Report is not null)
            {
                reports.Add(outcome.Report);
            }
        }

        foreach (Problem problem in unreadable.InOrder())
        {
            Terminal.Complain(problem.ToString());
        }

        return (reports, wrong || !unreadable.IsEmpty);
    }
}
