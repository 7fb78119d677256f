namespace WireCheck.Description.Reader;

/// <summary>How a name of the program is written in a file.</summary>
public static class KebabCase
{
    /// <summary><c>NormallyOpen</c> becomes <c>normally-open</c>.</summary>
    public static string Of(string name) => string.Concat(
        name.Select((c, i) => char.IsUpper(c) ? (i > 0 ? "-" : "") + char.ToLowerInvariant(c) : c.ToString()));
}
