using System.CommandLine;
using System.Text;
using WireCheck.Reports;
using WireCheck.Reports.Sheets;
using WireCheck.Reports.Templates;
using WireCheck.Sheets;
using WireCheck.Text;

namespace WireCheck.Cli.Commands;

/// <summary><c>sheets</c>: papers to build a box from and to bring it to life by.</summary>
internal static class SheetsCommand
{
    private const string Csv = "csv";

    private static readonly Argument<string> File = new("FILE") { Description = "The description." };

    private static readonly Option<string> Format = new("--format")
    {
        Description = "How the sheets are written.",
        DefaultValueFactory = _ => "markdown",
    };

    private static readonly Option<string?> Out = new("--out")
    {
        Description = "File that receives the sheets instead of standard output; with csv, a folder that receives a file for each.",
        HelpName = "PATH",
    };

    private static readonly Option<string?> One = new("--sheet")
    {
        Description = "Only this sheet, such as cut-list.",
        HelpName = "NAME",
    };

    private static readonly Option<string?> Today = TodayOption.Make();

    internal static Command Make()
    {
        Format.AcceptOnlyFromAmong("markdown", "html", Csv);
        Command command = new("sheets", "Write the papers to build a box from and to bring it to life by.") { File, Format, One, Out, Today };
        command.Validators.Add(result =>
        {
            if (WrittenOption.Of(result, Format) == Csv && result.GetValue(One) is null && result.GetValue(Out) is null)
            {
                result.AddError("csv holds one table: name a sheet with --sheet, or a folder for all of them with --out");
            }
        });
        command.SetAction(parsed => (int)Run(parsed));
        return command;
    }

    private static ExitCode Run(ParseResult parsed)
    {
        string file = parsed.GetRequiredValue(File);
        CheckOptions options = new(DescriptionFile.FolderOf(file), TodayOption.Of(parsed.GetValue(Today)));
        ProblemList unreadable = new();
        string? text = DescriptionFile.Read(file, unreadable);
        (SheetBook? book, IReadOnlyList<Problem> problems) = text is null ? (null, unreadable.InOrder()) : BoxSheets.Make(file, text, options);
        Terminal.Complain(problems);
        if (book is null)
        {
            return ExitCode.WrongInput;
        }

        if (book.NotToBeBuilt)
        {
            // A single sheet as csv has no place for it, and a file is not looked at while it is written.
            Terminal.Complain($"{file}: {string.Join(" ", book.Banner)}");
        }

        if (parsed.GetValue(One) is { } name)
        {
            SheetBook only = book with { Building = Named(book.Building, name), Commissioning = Named(book.Commissioning, name) };
            if (!only.All.Any())
            {
                string? nearest = NearestName.Find(name, book.All.Select(s => s.Name));
                Terminal.Complain($"{Report.ToolName}: '{name}' is no sheet{(nearest is null ? "" : $"; did you mean '{nearest}'?")} Sheets: {string.Join(", ", book.All.Select(s => s.Name))}");
                return ExitCode.WrongInput;
            }

            book = only;
        }

        return TryWrite(book, parsed.GetValue(Format)!, parsed.GetValue(Out), parsed.GetValue(One) is not null) ? ExitCode.Clean : ExitCode.WrongInput;
    }

    private static Sheet[] Named(IReadOnlyList<Sheet> sheets, string name) => [.. sheets.Where(s => s.Name == name)];

    private static bool TryWrite(SheetBook book, string format, string? outPath, bool one)
    {
        if (format != Csv)
        {
            TemplateTarget target = format == "html" ? TemplateTarget.Html : TemplateTarget.Markdown;
            return Answer.TryWrite(outPath, _ => Encoding.UTF8.GetBytes(SheetsReport.Write(book, target)));
        }

        if (outPath is null || (one && !Directory.Exists(outPath)))
        {
            return Answer.TryWrite(outPath, _ => Encoding.UTF8.GetBytes(SheetCsv.Write(book.All.Single())));
        }

        return TryMakeFolder(outPath)
            && book.All.All(s => Answer.TryWrite(Path.Combine(outPath, $"{s.Name}.csv"), _ => Encoding.UTF8.GetBytes(SheetCsv.Write(s))));
    }

    private static bool TryMakeFolder(string folder)
    {
        try
        {
            Directory.CreateDirectory(folder);
            return true;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException)
        {
            Terminal.Complain(new Problem(new Position(folder, 1, 1), "the folder cannot be made").ToString());
            return false;
        }
    }
}
