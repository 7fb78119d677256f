using WireCheck.States;

namespace WireCheck.Cli.Commands.Numbers;

/// <summary>What one run of <c>numbers</c> is asked.</summary>
/// <param name="File">Name of the description as it was given.</param>
/// <param name="Box">The solved box.</param>
/// <param name="Mode">Only this mode, or null for all.</param>
internal sealed record NumbersRequest(string File, SolvedBox Box, string? Mode)
{
    /// <summary>The title of the box.</summary>
    internal string Title => Box.Pack.Title.Value;
}

/// <summary>One WHAT of <c>numbers</c>: its name and how it is written.</summary>
internal abstract class NumbersAnswer
{
    /// <summary>Every WHAT, in the order of the help.</summary>
    internal static IReadOnlyList<NumbersAnswer> All { get; } = [new ModesAnswer(), new FaultsAnswer(), new StandbyAnswer(), new ChargingAnswer(), new StatesAnswer(), new HeatAnswer(), new EnergyAnswer()];

    /// <summary>The word on the command line.</summary>
    internal abstract string Name { get; }

    /// <summary>Writes it for a reader.</summary>
    internal abstract void WriteText(TextWriter output, NumbersRequest request);

    /// <summary>Writes it for another program.</summary>
    internal abstract void WriteJson(Stream output, NumbersRequest request);
}
