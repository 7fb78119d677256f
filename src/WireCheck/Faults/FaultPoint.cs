namespace WireCheck.Faults;

/// <summary>A place that is shorted.</summary>
public sealed class FaultPoint
{
    /// <summary>The part or conductor leg it belongs to.</summary>
    public required string PartId { get; init; }

    /// <summary>The terminal, as <c>main.2</c>; the inner and the outer side of a port's contact are two places.</summary>
    public required string Place { get; init; }

    /// <summary>Its node.</summary>
    public required int Node { get; init; }

    /// <summary>The node of its own return: the negative beside it, else the nearest return busbar.</summary>
    public required int ReturnNode { get; init; }

    /// <summary>What the return is called.</summary>
    public required string ReturnName { get; init; }

    public override string ToString() => $"{PartId} at {Place}";
}
