using System.CommandLine;
using System.Globalization;
using WireCheck.Numbers;
using WireCheck.Reports.Numbers;
using WireCheck.States;
using WireCheck.Text;

namespace WireCheck.Cli.Commands;

/// <summary><c>numbers</c>: what was computed, without judging.</summary>
internal static class NumbersCommand
{
    private static readonly Argument<string> What = new("WHAT") { Description = "modes or standby." };

    private static readonly Argument<string> File = new("FILE") { Description = "The description." };

    private static readonly Option<string> Format = new("--format")
    {
        Description = "How the answer is written.",
        DefaultValueFactory = _ => "text",
    };

    private static readonly Option<string?> OneMode = new("--mode")
    {
        Description = "Only this mode, described or added.",
        HelpName = "MODE",
    };

    internal static Command Make()
    {
        What.AcceptOnlyFromAmong("modes", "standby");
        Format.AcceptOnlyFromAmong("text", "json");
        Command command = new("numbers", "Tell what was computed, without judging it.") { What, File, Format, OneMode };
        command.SetAction(parsed => (int)Run(parsed));
        return command;
    }

    private static ExitCode Run(ParseResult parsed)
    {
        string file = parsed.GetRequiredValue(File);
        ProblemList unreadable = new();
        string? text = DescriptionFile.Read(file, unreadable);
        (SolvedBox? box, IReadOnlyList<Problem> problems) = text is null ? (null, unreadable.InOrder()) : PackNumbers.Solve(file, text);
        foreach (Problem problem in problems)
        {
            Terminal.Complain(problem.ToString());
        }

        if (box is null)
        {
            return ExitCode.WrongInput;
        }

        string? mode = parsed.GetValue(OneMode);
        if (mode is not null && box.Modes.All(m => m.Id != mode))
        {
            string? nearest = NearestName.Find(mode, box.Modes.Select(m => m.Id));
            Terminal.Complain($"'{mode}' is no mode of this box{(nearest is null ? "" : $"; did you mean '{nearest}'?")} Modes: {string.Join(", ", box.Modes)}");
            return ExitCode.WrongInput;
        }

        Terminal.Write(parsed.GetValue(Format) == "json" ? Json(parsed, file, box, mode) : Text(parsed, box, mode));
        return ExitCode.Clean;
    }

    private static byte[] Text(ParseResult parsed, SolvedBox box, string? mode)
    {
        using StringWriter output = new(CultureInfo.InvariantCulture);
        if (parsed.GetValue(What) == "modes")
        {
            NumbersText.WriteModes(output, box.Pack.Title.Value, ModeNumbers.Of(box, mode));
        }
        else
        {
            NumbersText.WriteStandby(output, box.Pack.Title.Value, StandbyNumbers.Of(box));
        }

        return System.Text.Encoding.UTF8.GetBytes(output.ToString());
    }

    private static byte[] Json(ParseResult parsed, string file, SolvedBox box, string? mode)
    {
        using MemoryStream output = new();
        if (parsed.GetValue(What) == "modes")
        {
            NumbersJson.WriteModes(output, file, box.Pack.Title.Value, ModeNumbers.Of(box, mode));
        }
        else
        {
            NumbersJson.WriteStandby(output, file, box.Pack.Title.Value, StandbyNumbers.Of(box));
        }

        return output.ToArray();
    }
}
