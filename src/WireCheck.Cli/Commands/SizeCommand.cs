using System.CommandLine;
using System.Globalization;
using System.Text;
using WireCheck.Reports.Sizing;
using WireCheck.Rules;
using WireCheck.Text;

namespace WireCheck.Cli.Commands;

/// <summary><c>size</c>: the smallest values that pass every rule.</summary>
internal static class SizeCommand
{
    private static readonly Argument<string> File = new("FILE") { Description = "The description." };

    private static readonly Option<string> Format = new("--format")
    {
        Description = "How the answer is written.",
        DefaultValueFactory = _ => "text",
    };

    private static readonly Option<string[]> Keep = new("--keep")
    {
        Description = "Parts and conductors that stay as they are, such as w1,w2.",
        HelpName = "IDS",
        AllowMultipleArgumentsPerToken = false,
    };

    private static readonly Option<string> FailOn = new("--fail-on")
    {
        Description = "Least severity of what stands in the end that makes the program exit with 1.",
        DefaultValueFactory = _ => "fault",
    };

    internal static Command Make()
    {
        Format.AcceptOnlyFromAmong("text", "json");
        FailOn.AcceptOnlyFromAmong([.. SeverityWords.All]);
        Command command = new("size", "Choose the smallest wires, fuses and classes that pass every rule.") { File, Format, Keep, FailOn };
        command.SetAction(parsed => (int)Run(parsed));
        return command;
    }

    private static ExitCode Run(ParseResult parsed)
    {
        string file = parsed.GetRequiredValue(File);
        ProblemList unreadable = new();
        string? text = DescriptionFile.Read(file, unreadable);
        CheckOptions options = new(DescriptionFile.FolderOf(file), DateOnly.FromDateTime(DateTime.Today));
        SizingOutcome outcome = text is null
            ? new SizingOutcome(null, null, unreadable.InOrder())
            : PackSizing.Size(file, text, options, Kept(parsed.GetValue(Keep) ?? []));
        foreach (Problem problem in outcome.Problems)
        {
            Terminal.Complain(problem.ToString());
        }

        if (outcome is not { Pack: { } pack, Result: { } result })
        {
            return ExitCode.WrongInput;
        }

        using MemoryStream output = new();
        if (parsed.GetValue(Format) == "json")
        {
            SizingJson.Write(output, file, pack, result);
        }
        else
        {
            using StringWriter words = new(CultureInfo.InvariantCulture);
            SizingText.Write(words, pack, result);
            output.Write(Encoding.UTF8.GetBytes(words.ToString()));
        }

        Terminal.Write(output.ToArray());
        Severity threshold = SeverityWords.Find(parsed.GetValue(FailOn)!)!.Value;
        return result.After.Counts.AtLeast(threshold) > 0 ? ExitCode.Found : ExitCode.Clean;
    }

    private static HashSet<string> Kept(string[] lists)
    {
        HashSet<string> ids = new(StringComparer.Ordinal);
        foreach (string list in lists)
        {
            ids.UnionWith(list.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
        }

        return ids;
    }
}
