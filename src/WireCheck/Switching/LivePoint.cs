namespace WireCheck.Switching;

/// <summary>What kind of thing is live or dead.</summary>
public enum LivePointKind
{
    /// <summary>A load, a port, a meter, a converter, an inverter, a lamp: live between its two poles.</summary>
    Part,

    /// <summary>A load at an inverter's outlet: live when the inverter runs.</summary>
    Outlet,

    /// <summary>Terminals that hang together whatever the switches do: live against the bank's negative.</summary>
    Rail,
}

/// <summary>Something that a switch is expected to make live or dead.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Id">Id of the part; of a rail, the name of its first terminal.</param>
/// <param name="PartKind">Kind of the part, such as "load"; "rail" for a rail.</param>
/// <param name="Plus">Positive node; of a rail, one of its nodes.</param>
/// <param name="Minus">Negative node; of a rail, the bank's negative.</param>
/// <param name="Terminals">Terminals of a rail, in the order of the description; empty for a part.</param>
public sealed record LivePoint(
    LivePointKind Kind, string Id, string PartKind, int Plus, int Minus, IReadOnlyList<string> Terminals)
{
    /// <summary>Number of the inverter that must run, in the order of the description; -1 for anything else.</summary>
    internal int Inverter { get; init; } = -1;
}
