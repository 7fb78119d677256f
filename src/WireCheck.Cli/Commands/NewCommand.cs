using System.CommandLine;
using System.Text;
using WireCheck.Quantities;
using WireCheck.Reports;
using WireCheck.Starting;

namespace WireCheck.Cli.Commands;

/// <summary><c>new</c>: a first description from a few answers, checked before it is written.</summary>
internal static class NewCommand
{
    private static readonly Argument<string?> File = new("FILE")
    {
        Description = "File to write; standard output when left out.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private static readonly Option<bool> Overwrite = new("--overwrite") { Description = "Write over a file that is there." };

    private static readonly Option<string?> Title = new("--title") { Description = "Title of the box.", HelpName = "WORDS" };

    private static readonly Option<string?> Voltage = new("--voltage") { Description = "Voltage of the bank: 12, 24 or 48 V.", HelpName = "VOLTS" };

    private static readonly Option<string?> Capacity = new("--capacity") { Description = "Its capacity, such as 100Ah.", HelpName = "AH" };

    private static readonly Option<string[]> Load = new("--load")
    {
        Description = "What runs at 12 V, such as coolbox=45W, or coolbox=45W@vehicle-socket to choose its socket; once for each.",
        HelpName = "NAME=POWER",
    };

    private static readonly Option<bool> Usb = new("--usb") { Description = "A supply for telephones." };

    private static readonly Option<string?> Inverter = new("--inverter") { Description = "Power of an inverter, such as 500W.", HelpName = "POWER" };

    private static readonly Option<string[]> MainsLoad = new("--mains-load")
    {
        Description = "What runs at the inverter, such as urn=450W; once for each.",
        HelpName = "NAME=POWER",
    };

    private static readonly Option<string[]> Charge = new("--charge")
    {
        Description = "Charged from mains, solar or vehicle; several with commas.",
        HelpName = "WAYS",
    };

    private static readonly Option<string?> Panel = new("--panel") { Description = "Power of the panel, such as 100W.", HelpName = "POWER" };

    private static readonly Option<string> Wire = new("--wire")
    {
        Description = "Whether wire is bought by gauge or by section.",
        DefaultValueFactory = _ => "awg",
    };

    /// <summary>The command, over a front door.</summary>
    internal static Command Make(PackCheck check)
    {
        Wire.AcceptOnlyFromAmong("awg", "metric");
        Command command = new("new", "Write a first description from a few answers; asks for them on a terminal.")
        {
            File, Voltage, Capacity, Load, Usb, Inverter, MainsLoad, Charge, Panel, Title, Wire, Overwrite,
        };
        command.SetAction(parsed => (int)Run(check, parsed));
        return command;
    }

    private static ExitCode Run(PackCheck check, ParseResult parsed)
    {
        string? file = parsed.GetValue(File);
        if (file is not null && !parsed.GetValue(Overwrite) && System.IO.File.Exists(file))
        {
            return Wrong([$"'{file}' is there already; choose another name, or say --overwrite"]);
        }

        List<string> mistakes = [];
        if (Answers(parsed, mistakes) is not { } answers)
        {
            return Wrong(mistakes);
        }

        SizeSystem wires = parsed.GetValue(Wire) == "metric" ? SizeSystem.Metric : SizeSystem.Awg;
        StartedBox box = new StartingBox(check).Make(answers, wires);
        if (box.Text is null)
        {
            Terminal.Complain($"{Report.ToolName}: no box of the parts in the library does this; nothing is written");
            Tell(box.Left);
            return ExitCode.Found;
        }

        return Write(file, box, parsed.GetValue(Overwrite));
    }

    private static StartingAnswers? Answers(ParseResult parsed, List<string> mistakes)
    {
        AnswerWords words = new()
        {
            Title = parsed.GetValue(Title),
            Volts = parsed.GetValue(Voltage),
            Capacity = parsed.GetValue(Capacity),
            Loads = parsed.GetValue(Load) ?? [],
            Usb = parsed.GetValue(Usb),
            Inverter = parsed.GetValue(Inverter),
            MainsLoads = parsed.GetValue(MainsLoad) ?? [],
            Charging = parsed.GetValue(Charge) ?? [],
            Panel = parsed.GetValue(Panel),
        };
        if (words.Volts is null || words.Capacity is null)
        {
            if (Console.IsInputRedirected)
            {
                mistakes.Add("say at least --voltage and --capacity, and what it feeds; on a terminal they are asked for");
                return null;
            }

            if (new Interview(Console.In, Console.Error).Complete(words) is not { } complete)
            {
                mistakes.Add("the answers ended before the questions");
                return null;
            }

            words = complete;
        }

        return AnswerReader.Read(words, mistakes);
    }

    private static ExitCode Write(string? file, StartedBox box, bool overwrite)
    {
        if (file is null)
        {
            Terminal.Write(box.Text!);
        }
        else if (!TryWrite(file, box.Text!, overwrite))
        {
            return Wrong([$"'{file}' cannot be written"]);
        }

        if (box.Left.Count > 0)
        {
            Terminal.Complain($"{Report.ToolName}: no larger part ends this advice:");
            Tell(box.Left);
        }

        if (file is not null)
        {
            Terminal.Write($"Wrote {PlainText.Escape(file)}. Read it through, change what is not as you build it, then: {Report.ToolName} check {PlainText.Escape(file)}\n");
        }

        return ExitCode.Clean;
    }

    private static ExitCode Wrong(IEnumerable<string> mistakes)
    {
        foreach (string mistake in mistakes)
        {
            Terminal.Complain($"{Report.ToolName}: {mistake}");
        }

        return ExitCode.WrongInput;
    }

    private static void Tell(IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            Terminal.Complain($"  {line}");
        }
    }

    private static bool TryWrite(string file, string text, bool overwrite)
    {
        try
        {
            using FileStream stream = new(file, overwrite ? FileMode.Create : FileMode.CreateNew, FileAccess.Write);
            stream.Write(Encoding.UTF8.GetBytes(text));
            return true;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return false;
        }
    }
}
