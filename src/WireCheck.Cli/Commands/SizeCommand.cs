using System.CommandLine;
using System.Globalization;
using System.Text;
using WireCheck.Edits;
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

    private static readonly Option<bool> Write = new("--write")
    {
        Description = "Change the values in the file itself, and nothing else in it.",
    };

    private static readonly Option<string?> Today = TodayOption.Make();

    internal static Command Make()
    {
        Format.AcceptOnlyFromAmong("text", "json");
        FailOn.AcceptOnlyFromAmong([.. SeverityWords.All]);
        Command command = new("size", "Choose the smallest wires, fuses and classes that pass every rule.") 
        {
            File, Format, Keep, Write, FailOn, Today,
        };
        command.SetAction(parsed => (int)Run(parsed));
        return command;
    }

    private static ExitCode Run(ParseResult parsed)
    {
        string file = parsed.GetRequiredValue(File);
        ProblemList unreadable = new();
        string? text = DescriptionFile.Read(file, unreadable);
        CheckOptions options = new(DescriptionFile.FolderOf(file), TodayOption.Of(parsed.GetValue(Today)));
        SizingOutcome outcome = text is null
            ? new SizingOutcome(null, null, null, unreadable.InOrder())
            : PackSizing.Size(file, text, options, Kept(parsed.GetValue(Keep) ?? []));
        Terminal.Complain(outcome.Problems);
        if (outcome is not { Pack: { } pack, Result: { } result, Edits: { } edits })
        {
            return ExitCode.WrongInput;
        }

        foreach (EditRefusal refused in edits.Refused)
        {
            Position place = refused.Place ?? new Position(file, 1, 1);
            Terminal.Complain(new Problem(place, $"{refused.Edit.Key} of {refused.Edit.PartId} is not changed: {refused.Reason}").ToString());
        }

        bool write = parsed.GetValue(Write) && edits.Changes.Count > 0;
        if (write && result.Worsens is { Count: > 0 } worse)
        {
            Terminal.Complain(new Problem(
                new Position(file, 1, 1),
                $"nothing is written: no choice passes every rule, and this one would bring {string.Join(", ", worse.Select(f => $"{f.Rule} at {f.Part}"))}; "
                + "mend what no size takes away, then size again").ToString());
            write = false;
        }

        if (write && !DescriptionFile.Rewrite(file, edits.NewText()))
        {
            Terminal.Complain(new Problem(new Position(file, 1, 1), "the file cannot be written").ToString());
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
