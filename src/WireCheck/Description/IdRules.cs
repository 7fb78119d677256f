namespace WireCheck.Description;

/// <summary>What an id may look like.</summary>
internal static class IdRules
{
    /// <summary>Most characters of an id.</summary>
    internal const int Longest = 64;

    /// <summary>Names that mean something else wherever an id may stand.</summary>
    internal static IReadOnlyList<string> Reserved { get; } = ["case", "earth", "vehicle", "pack"];

    /// <summary>Nodes that exist in every box without being drawn.</summary>
    internal static IReadOnlyList<string> FreeNodes { get; } = ["case", "earth", "vehicle"];

    /// <summary>States that are computed for every box.</summary>
    internal static IReadOnlyList<string> FixedModes { get; } = ["stored", "left-plugged", "idle", "everything"];

    /// <summary>Letters, digits, - and _, at least one letter so that no number is an id.</summary>
    internal static bool IsValid(string id) =>
        id.Length is > 0 and <= Longest
        && id.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_')
        && id.Any(char.IsAsciiLetter);
}
