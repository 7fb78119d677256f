namespace WireCheck.Bench;

/// <summary>What one run of a program gave.</summary>
/// <param name="Code">Exit code.</param>
/// <param name="Output">Standard output.</param>
/// <param name="Errors">Standard error.</param>
/// <param name="Took">From its start to its end, as the one who started it sees it.</param>
internal sealed record ProgramAnswer(int Code, string Output, string Errors, TimeSpan Took)
{
    /// <summary>Whether another run said the same, whatever time it took.</summary>
    internal bool SaysTheSameAs(ProgramAnswer other) => Code == other.Code && Output == other.Output && Errors == other.Errors;
}
