using System.CommandLine;
using System.CommandLine.Parsing;
using WireCheck.Text;

namespace WireCheck.Cli.Commands;

/// <summary>Refuses a misspelt option, which would otherwise be taken for a file or a name.</summary>
internal static class OptionCheck
{
    /// <summary>Adds the check to an argument of a command; a file whose name begins with a dash is written <c>./-name</c>.</summary>
    internal static void RefuseUnknownOptions(this Argument argument, Command command) =>
        argument.Validators.Add(result =>
        {
            foreach (Token token in result.Tokens.Where(t => t.Value.StartsWith('-')))
            {
                string? near = NearestName.Find(token.Value, command.Options.Select(o => o.Name));
                result.AddError($"'{token.Value}' is no option of {command.Name}" + (near is null ? "" : $"; did you mean '{near}'?"));
            }
        });
}
