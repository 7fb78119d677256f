using WireCheck.Text;

namespace WireCheck.Edits;

/// <summary>A stretch of a text that is replaced by another; nothing outside it changes.</summary>
/// <param name="Offset">Where it begins, in UTF-16 characters from 0.</param>
/// <param name="Length">Its length in characters; 0 where something is put in.</param>
/// <param name="Start">Where it begins, as a place.</param>
/// <param name="End">The place after its last character.</param>
/// <param name="NewText">What stands there afterwards, with quotes, keys and line breaks as they are needed.</param>
/// <param name="OldValue">The value that is replaced, without quotes; null where the key is put in.</param>
/// <param name="Edits">The values it sets: one, or all that go into the same mapping.</param>
public sealed record TextChange(
    int Offset, int Length, Position Start, Position End, string NewText, string? OldValue, IReadOnlyList<ValueEdit> Edits);

/// <summary>A value that is not changed, and why.</summary>
/// <param name="Edit">What was wanted.</param>
/// <param name="Place">Where it would have been; null when nothing of that name stands in the file.</param>
/// <param name="Reason">Why not, in words that follow a colon.</param>
public sealed record EditRefusal(ValueEdit Edit, Position? Place, string Reason);
