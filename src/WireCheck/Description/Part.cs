using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>One part of the box: its id, its place and the class that fills in what was left out.</summary>
public abstract class Part
{
    /// <summary>The user's id, unique in the file.</summary>
    public required string Id { get; init; }

    /// <summary>Where the part's id stands in the description.</summary>
    public required Position Position { get; init; }

    /// <summary>The part class named by <c>part:</c>, or null.</summary>
    public string? ClassName { get; init; }

    /// <summary>Trade name of the kind in the singular, as messages and rules use it: "fuse", "relay".</summary>
    public abstract string Kind { get; }

    /// <summary>Names of the terminals, in the order they are printed. Empty when the part's own id is its terminal.</summary>
    public abstract IReadOnlyList<string> Terminals { get; }
}

/// <summary>One end of a conductor: a terminal of a part, <c>part.terminal</c>, or a bare id.</summary>
/// <param name="PartId">Id of the part; or one of the nodes that exist everywhere: case, earth, vehicle.</param>
/// <param name="Terminal">Terminal name, or empty when only the id is written.</param>
/// <param name="Position">Where it stands.</param>
public sealed record TerminalReference(string PartId, string Terminal, Position Position)
{
    /// <summary>As written: <c>plus</c>, <c>k-inv.30</c>.</summary>
    public override string ToString() => Terminal.Length == 0 ? PartId : $"{PartId}.{Terminal}";
}
