namespace WireCheck.Starting;

/// <summary>
/// How much larger than its first choice each thing is taken: one step is the next size, rating or class in the
/// tables. A round of the check that finds something adds a step to the part that it names.
/// </summary>
internal sealed class Steps
{
    /// <summary>Parts that have the size of another, and the other.</summary>
    private static readonly Dictionary<string, string> Same = new(StringComparer.Ordinal)
    {
        ["inverter"] = "trunk",
        ["phones"] = "usb",
        ["r-precharge"] = "precharge",
    };

    private readonly Dictionary<string, int> _steps = new(StringComparer.Ordinal);

    /// <summary>Steps to take from the first choice; 0 at the start.</summary>
    internal int Of(string key) => _steps.GetValueOrDefault(key);

    /// <summary>One step more for what a finding names.</summary>
    /// <param name="part">Id of a part: a wire <c>trunk-3</c> has the key <c>trunk</c>.</param>
    internal void Grow(string part)
    {
        string key = KeyOf(part);
        _steps[key] = Of(key) + 1;
    }

    /// <summary>One step towards a kind of fuse that breaks more.</summary>
    internal void GrowKind(string fuse) => _steps[KindOf(fuse)] = Of(KindOf(fuse)) + 1;

    /// <summary>The key of the kind of a fuse, beside that of its rating.</summary>
    internal static string KindOf(string fuse) => $"{fuse} kind";

    /// <summary>The key of a part: its id without the number of the wire.</summary>
    internal static string KeyOf(string part)
    {
        int dash = part.LastIndexOf('-');
        string stem = dash > 0 && part.AsSpan(dash + 1).IndexOfAnyExceptInRange('0', '9') < 0 ? part[..dash] : part;
        return Same.GetValueOrDefault(stem, stem);
    }
}
