namespace WireCheck.Starting;

/// <summary>A kind of branch fuse for 12 V.</summary>
/// <param name="Part">Class of part.</param>
/// <param name="Marked">Standard printed on it.</param>
/// <param name="End">What the wire behind it ends in.</param>
internal sealed record BranchFuse(string Part, string Marked, string End)
{
    /// <summary>The kinds, the cheapest first; each breaks more than the one before.</summary>
    internal static IReadOnlyList<BranchFuse> All { get; } =
    [
        new("blade", "ISO 8820-3", "crimped-spade"),
        new("class-t", "UL 248-15", "crimped-ring"),
    ];
}
