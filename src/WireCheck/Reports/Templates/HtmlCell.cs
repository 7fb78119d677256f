using System.Text.RegularExpressions;

namespace WireCheck.Reports.Templates;

/// <summary>
/// A cell of a table on a page. A number stays on one line with its unit, and a cell of many words may ask for room, so that a
/// full table scrolls before its columns become one word wide.
/// </summary>
internal static partial class HtmlCell
{
    private const int FewLetters = 30;

    /// <summary>The cell with its tags.</summary>
    /// <param name="words">Its words, safe for HTML already.</param>
    internal static string Of(string words) =>
        $"<td{(words.Length > FewLetters ? " class=\"long\"" : "")}>{Tied(words)}</td>";

    /// <summary>The words with a space that does not break between a number and its unit, and within a range.</summary>
    internal static string Tied(string words) => WithinRange().Replace(BeforeUnit().Replace(words, "\u00a0"), "\u00a0..\u00a0");

    [GeneratedRegex(@"(?<=[0-9]) (?=(?:[pnµmkMG]?(?:Ah|Wh|VA|Hz|[AVWΩFHJgms])[²³]?(?:/[A-Za-z]+[²³]?)?|°C|K|%|AWG|h|min|days?|Nm)(?![\p{L}\p{N}]))|(?<=[0-9]\u00a0A²) (?=s\b)", RegexOptions.CultureInvariant)]
    private static partial Regex BeforeUnit();

    [GeneratedRegex(@"(?<=[0-9]) \.\. (?=[-0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex WithinRange();
}
