using System.CommandLine;
using System.CommandLine.Parsing;
using WireCheck.Cli.Commands;
using WireCheck.Reports;

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
        root.Add(ExplainCommand.Make());
        ParseResult parsed = root.Parse(arguments, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Errors.Count > 0)
        {
            foreach (ParseError error in parsed.Errors)
            {
                Terminal.Complain($"{Report.ToolName}: {error.Message}");
            }

            Terminal.Complain($"{Report.ToolName}: try --help");
            return ExitCode.WrongInput;
        }

        return (ExitCode)parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
    }
}
