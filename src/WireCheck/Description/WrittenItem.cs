namespace WireCheck.Description;

/// <summary>
/// One thing of a description as it is written: a part, a conductor, a mode, a path, a waiver, or what stands at the top.
/// </summary>
/// <param name="Kind">Its kind in the singular: "fuse", "conductor", "mode"; "description" for the top of the file.</param>
/// <param name="Id">Its id; of a thing without one, such as a waiver, its words.</param>
/// <param name="Line">Line of the file, from 1.</param>
/// <param name="Values">
/// Its values as written, nested keys joined by a point (<c>coil.resistance</c>), in the order they are first found; those of
/// its defaults and its part class included.
/// </param>
/// <param name="Own">Keys of the values that are written at the thing itself.</param>
public sealed record WrittenItem(
    string Kind, string Id, int Line, IReadOnlyDictionary<string, string> Values, IReadOnlySet<string> Own);
