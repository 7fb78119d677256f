namespace WireCheck.Edits;

/// <summary>Where a value stands or is missing; or why it cannot be changed.</summary>
internal abstract record EditPlace;

/// <summary>It stands there.</summary>
/// <param name="Value">The value.</param>
/// <param name="Keys">Its place from the root, with items of lists by number.</param>
internal sealed record ValueThere(SpannedScalar Value, IReadOnlyList<string> Keys) : EditPlace;

/// <summary>A key has nothing after it: there is a colon, or nothing at all, and then the end of the line.</summary>
/// <param name="Key">The key.</param>
/// <param name="Missing">Keys still to come below it; none when it is itself the one.</param>
/// <param name="Keys">Its place from the root.</param>
internal sealed record NothingAfterKey(SpannedNode Key, IReadOnlyList<string> Missing, IReadOnlyList<string> Keys) : EditPlace;

/// <summary>A mapping lacks the key.</summary>
/// <param name="Map">The mapping.</param>
/// <param name="Missing">The keys it lacks, the last with the value.</param>
/// <param name="Keys">Place of the value from the root.</param>
internal sealed record KeyMissing(SpannedMap Map, IReadOnlyList<string> Missing, IReadOnlyList<string> Keys) : EditPlace;

/// <summary>It cannot be changed.</summary>
/// <param name="Node">The piece in the way; null when there is none.</param>
/// <param name="Reason">Why not.</param>
internal sealed record NoPlace(SpannedNode? Node, string Reason) : EditPlace;
