using System.CommandLine;
using System.CommandLine.Parsing;
using WireCheck.Cli.Commands;
using WireCheck.Reports;
using WireCheck.Text;

namespace WireCheck.Cli;

/// <summary>The program: reads the command line, runs one command, and never ends in a stack trace.</summary>
internal static class Program
{
    private static int Main(string[] arguments)
    {
        try
        {
            return (int)Run(arguments);
        }
        catch (OutOfMemoryException)
        {
            Terminal.Complain($"{Report.ToolName}: the tool ran out of memory");
        }
        catch (Exception failure)
        {
            // The last resort: whatever was not foreseen is told in one line.
            Terminal.Complain($"{Report.ToolName}: the tool itself failed ({failure.GetType().Name}: {failure.Message})");
        }

        return (int)ExitCode.ToolFailed;
    }

    private static ExitCode Run(string[] arguments)
    {
        RootCommand root = new("Checks the wiring and protection of portable DC power boxes from a description.");
        root.Add(CheckCommand.Make(PackCheck.Standard));
        root.Add(NumbersCommand.Make());
        root.Add(CompareCommand.Make(PackCheck.Standard));
        root.Add(SheetsCommand.Make());
        root.Add(SizeCommand.Make());
        root.Add(ExplainCommand.Make());
        root.Add(NewCommand.Make(PackCheck.Standard));
        ParseResult parsed = root.Parse(arguments, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (root.Directives.Any(d => parsed.GetResult(d) is not null))
        {
            // A shell that completes a line asks with a directive; the unfinished line is no command to run.
            return (ExitCode)parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
        }

        if (arguments.Length == 0)
        {
            Terminal.Complain($"{Report.ToolName}: nothing was asked. Judge a description: {Report.ToolName} check box.yaml. All commands: {Report.ToolName} --help");
            return ExitCode.WrongInput;
        }

        List<string> errors = [.. UnknownOptions(parsed), .. parsed.Errors.Select(error => error.Message)];
        if (errors.Count > 0)
        {
            foreach (string error in errors)
            {
                Terminal.Complain($"{Report.ToolName}: {error}");
            }

            Terminal.Complain($"{Report.ToolName}: try --help");
            return ExitCode.WrongInput;
        }

        return (ExitCode)parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
    }

    /// <summary>
    /// Misspelt options, which would otherwise be taken for a file or a name. A file whose name begins with a
    /// dash is written <c>./-name</c>.
    /// </summary>
    private static IEnumerable<string> UnknownOptions(ParseResult parsed)
    {
        Command command = parsed.CommandResult.Command;
        foreach (Token token in parsed.CommandResult.Tokens.Where(t => t.Value.StartsWith('-')))
        {
            string? near = NearestName.Find(token.Value, command.Options.Select(option => option.Name));
            yield return $"'{token.Value}' is no option of {command.Name}" + (near is null ? "" : $"; did you mean '{near}'?");
        }
    }
}
