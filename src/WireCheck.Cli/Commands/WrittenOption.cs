using System.CommandLine;
using System.CommandLine.Parsing;

namespace WireCheck.Cli.Commands;

/// <summary>What was written for an option, as a validator of its command may read it.</summary>
internal static class WrittenOption
{
    /// <summary>
    /// The last word written for the option; null when there is none. Asking for the option's value instead throws when the
    /// word is not one that the option takes, before that is told.
    /// </summary>
    /// <param name="command">The command as it was read.</param>
    /// <param name="option">The option.</param>
    internal static string? Of(SymbolResult command, Option option) => command.GetResult(option) is { Tokens: [.., { Value: var word }] } ? word : null;
}
