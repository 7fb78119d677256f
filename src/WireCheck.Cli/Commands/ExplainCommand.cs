using System.CommandLine;
using System.Globalization;
using WireCheck.Explaining;
using WireCheck.Reports;

namespace WireCheck.Cli.Commands;

/// <summary><c>explain</c>: what a rule asks and why, what a fact is, what a part class gives.</summary>
internal static class ExplainCommand
{
    private static readonly Argument<string?> Name = new("NAME")
    {
        Description = "A rule, a fact (name or kind.name) or a part class.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private static readonly Option<bool> List = new("--list") { Description = "List all rules with their severity and title." };

    private static readonly Option<bool> Facts = new("--facts") { Description = "List all facts by kind of part." };

    internal static Command Make()
    {
        Command command = new("explain", "Explain a rule, a fact or a part class.") { Name, List, Facts };
        command.Validators.Add(result =>
        {
            int asked = (result.GetValue(Name) is null ? 0 : 1) + (result.GetValue(List) ? 1 : 0) + (result.GetValue(Facts) ? 1 : 0);
            if (asked != 1)
            {
                result.AddError("give one of a name, --list or --facts");
            }
        });
        command.SetAction(parsed => (int)Run(parsed));
        return command;
    }

    private static ExitCode Run(ParseResult parsed)
    {
        using StringWriter output = new(CultureInfo.InvariantCulture);
        if (parsed.GetValue(List))
        {
            Explainer.WriteRules(output, Terminal.Style());
        }
        else if (parsed.GetValue(Facts))
        {
            Explainer.WriteFacts(output, Terminal.Style());
        }
        else if (!Explainer.TryExplain(parsed.GetValue(Name)!, output, Terminal.Style(), out string? nearest))
        {
            string hint = nearest is null
                ? $"; {Report.ToolName} explain --list names the rules, explain --facts the facts, and a part class has the name that part: gives"
                : $"; did you mean '{nearest}'?";
            Terminal.Complain($"{Report.ToolName}: '{parsed.GetValue(Name)}' is no rule, fact or part class{hint}");
            return ExitCode.WrongInput;
        }

        Terminal.Write(output.ToString());
        return ExitCode.Clean;
    }
}
