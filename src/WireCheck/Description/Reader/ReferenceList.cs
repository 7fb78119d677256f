namespace WireCheck.Description.Reader;

/// <summary>A place where a part's id is written.</summary>
/// <param name="Id">The id with its place.</param>
/// <param name="Subject">What holds the reference.</param>
/// <param name="Key">Under which key.</param>
/// <param name="Kinds">Kinds it may name, in the singular; empty for any kind, conductors too.</param>
internal sealed record PartUse(Given<string> Id, string Subject, string Key, IReadOnlyList<string> Kinds);

/// <summary>A place where a terminal is written.</summary>
internal sealed record TerminalUse(TerminalReference Terminal, string Subject, string Key);

/// <summary>All references of a file, resolved when every part is read.</summary>
internal sealed class ReferenceList
{
    internal List<PartUse> Parts { get; } = [];

    internal List<TerminalUse> Terminals { get; } = [];
}
