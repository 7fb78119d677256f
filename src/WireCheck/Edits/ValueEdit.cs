using System.Globalization;

namespace WireCheck.Edits;

/// <summary>One value of a description that is to be another one.</summary>
/// <param name="PartId">
/// Id of the part or of a conductor's leg (<c>w9/2</c>); empty for a value of the box itself, whose key then begins at the root of
/// the file.
/// </param>
/// <param name="Key">
/// Keys down to the value, joined by dots, as messages print them: <c>size</c>, <c>holder.rating</c>. A number takes that item of a
/// list, from 0.
/// </param>
/// <param name="NewText">The value as a builder would write it, without quotes: <c>6 AWG</c>.</param>
public sealed record ValueEdit(string PartId, string Key, string NewText)
{
    /// <summary>The id the builder wrote: that of the whole conductor for one of its legs.</summary>
    internal string WrittenId => LegAt < 0 ? PartId : PartId[..LegAt];

    /// <summary>The number of the leg, from 0; negative when it is no leg.</summary>
    internal int Leg =>
        LegAt >= 0 && int.TryParse(PartId[(LegAt + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out int leg) ? leg - 1 : -1;

    private int LegAt => PartId.IndexOf('/', StringComparison.Ordinal);
}
