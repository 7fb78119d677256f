using System.CommandLine;
using System.Globalization;
using System.Text;
using WireCheck.Reports;
using WireCheck.Reports.Json;
using WireCheck.Reports.Text;
using WireCheck.Rules;
using WireCheck.Text;

namespace WireCheck.Cli.Commands;

/// <summary><c>check</c>: judges one or more descriptions.</summary>
internal static class CheckCommand
{
    private static readonly Argument<string[]> Files = new("FILE")
    {
        Description = "Descriptions to judge.",
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

    private static readonly Option<string?> Today = new("--today")
    {
        Description = "Day on which waivers are judged, as year-month-day; the present day when left out.",
        HelpName = "DATE",
    };

    /// <summary>The command, over a front door.</summary>
    internal static Command Make(PackCheck check)
    {
        Format.AcceptOnlyFromAmong("text", "json");
        FailOn.AcceptOnlyFromAmong([.. SeverityWords.All]);
        Today.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string?>() is { } day && !TryDay(day, out _))
            {
                result.AddError($"'{day}' is no day; write it as year-month-day, such as 2027-06-01");
            }
        });
        Command command = new("check", "Judge one or more descriptions.") { Files, Format, Out, FailOn, Today };
        command.SetAction(parsed => (int)Run(check, parsed));
        return command;
    }

    private static ExitCode Run(PackCheck check, ParseResult parsed)
    {
        if (ReadAndCheck(check, parsed) is not { } reports)
        {
            return ExitCode.WrongInput;
        }

        string? outFile = parsed.GetValue(Out);
        byte[] answer = parsed.GetValue(Format) == "json"
            ? Json(reports)
            : Text(reports, outFile is null ? Terminal.Style() : TextStyle.Piped);
        if (outFile is null)
        {
            Terminal.Write(answer);
        }
        else if (!TryWrite(outFile, answer))
        {
            Terminal.Complain($"{outFile}:1:1: the file cannot be written");
            return ExitCode.WrongInput;
        }

        Severity threshold = SeverityWords.Find(parsed.GetValue(FailOn)!)!.Value;
        return reports.Any(r => r.Findings.Counts.AtLeast(threshold) > 0) ? ExitCode.Found : ExitCode.Clean;
    }

    /// <summary>A report for each file, or null when one of them is wrong; every problem of every file is told.</summary>
    private static List<Report>? ReadAndCheck(PackCheck check, ParseResult parsed)
    {
        DateOnly today = TryDay(parsed.GetValue(Today), out DateOnly day) ? day : DateOnly.FromDateTime(DateTime.Today);
        List<Report> reports = [];
        bool wrong = false;
        foreach (string file in parsed.GetRequiredValue(Files))
        {
            ProblemList unreadable = new();
            string? text = DescriptionFile.Read(file, unreadable);
            CheckOutcome outcome = text is null
                ? new CheckOutcome(null, unreadable.InOrder())
                : check.Check(file, text, new CheckOptions(DescriptionFile.FolderOf(file), today));
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

        return wrong ? null : reports;
    }

    private static byte[] Text(List<Report> reports, TextStyle style)
    {
        using StringWriter output = new(CultureInfo.InvariantCulture);
        for (int i = 0; i < reports.Count; i++)
        {
            if (i > 0)
            {
                output.Write("\n\n");
            }

            TextReport.Write(output, reports[i], style);
        }

        return Encoding.UTF8.GetBytes(output.ToString());
    }

    private static byte[] Json(List<Report> reports)
    {
        using MemoryStream output = new();
        JsonReport.Write(output, reports);
        return output.ToArray();
    }

    private static bool TryWrite(string file, byte[] bytes)
    {
        try
        {
            File.WriteAllBytes(file, bytes);
            return true;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return false;
        }
    }

    private static bool TryDay(string? words, out DateOnly day) =>
        DateOnly.TryParseExact(words, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
}
