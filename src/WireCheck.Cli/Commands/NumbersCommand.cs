using System.CommandLine;
using System.Globalization;
using WireCheck.Cli.Commands.Numbers;
using WireCheck.States;
using WireCheck.Text;

namespace WireCheck.Cli.Commands;

/// <summary><c>numbers</c>: what was computed, without judging.</summary>
internal static class NumbersCommand
{
    private static readonly Argument<string> What = new("WHAT") { Description = $"{string.Join(", ", NumbersAnswer.All.Take(NumbersAnswer.All.Count - 1).Select(a => a.Name))} or {NumbersAnswer.All[^1].Name}." };

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
        What.AcceptOnlyFromAmong([.. NumbersAnswer.All.Select(a => a.Name)]);
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

        string what = parsed.GetRequiredValue(What);
        NumbersAnswer answer = NumbersAnswer.All.First(a => a.Name == what);
        Terminal.Write(Bytes(answer, new NumbersRequest(file, box, mode), parsed.GetValue(Format) == "json"));
        return ExitCode.Clean;
    }

    private static byte[] Bytes(NumbersAnswer answer, NumbersRequest request, bool json)
    {
        using MemoryStream output = new();
        if (json)
        {
            answer.WriteJson(output, request);
            return output.ToArray();
        }

        using StringWriter words = new(CultureInfo.InvariantCulture);
        answer.WriteText(words, request);
        return System.Text.Encoding.UTF8.GetBytes(words.ToString());
    }
}
