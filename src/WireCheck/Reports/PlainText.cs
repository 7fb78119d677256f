using System.Globalization;
using System.Text;

namespace WireCheck.Reports;

/// <summary>
/// Makes words from a description or a rule set safe to print: what could move the cursor, change colours,
/// reorder or hide text is written as its code.
/// </summary>
public static class PlainText
{
    /// <summary>
    /// The words with every control, format, and line-breaking character written as <c>\u{code}</c>.
    /// An unpaired surrogate becomes U+FFFD.
    /// </summary>
    public static string Escape(string words)
    {
        if (!NeedsEscape(words))
        {
            return words;
        }

        StringBuilder safe = new(words.Length + 8);
        foreach (Rune rune in words.EnumerateRunes())
        {
            if (IsSafe(rune))
            {
                safe.Append(rune.ToString());
            }
            else
            {
                safe.Append(CultureInfo.InvariantCulture, $"\\u{{{rune.Value:x}}}");
            }
        }

        return safe.ToString();
    }

    private static bool NeedsEscape(string words)
    {
        foreach (Rune rune in words.EnumerateRunes())
        {
            if (!IsSafe(rune) || rune == Rune.ReplacementChar)
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsSafe(Rune rune) => Rune.GetUnicodeCategory(rune) is not (
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator
        or UnicodeCategory.ParagraphSeparator or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned);
}
