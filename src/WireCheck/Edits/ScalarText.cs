using System.Buffers;
using System.Globalization;
using System.Text;

namespace WireCheck.Edits;

/// <summary>Writes a value as YAML, in the quotes that the old one had.</summary>
internal static class ScalarText
{
    private static readonly SearchValues<char> NotPlain = SearchValues.Create(",[]{}\u2028\u2029\ufeff");

    private const string NoFirst = "-?:,[]{}#&*!|>'\"%@` ";

    /// <summary>The value in the style of the one it replaces, or in quotes where it could not be read back without.</summary>
    /// <param name="value">The value.</param>
    /// <param name="old">The old one as it stands in the text; empty for none.</param>
    internal static string Write(string value, string old = "")
    {
        bool breaks = value.AsSpan().IndexOfAnyInRange('\0', '\u001f') >= 0 || value.AsSpan().IndexOfAnyInRange('\u007f', '\u009f') >= 0;
        return !breaks && old.StartsWith('\'') ? $"'{value.Replace("'", "''", StringComparison.Ordinal)}'"
            : !breaks && !old.StartsWith('"') && IsPlain(value) ? value
            : InDoubleQuotes(value);
    }

    /// <summary>True when the text means itself without quotes, in braces too.</summary>
    private static bool IsPlain(string value)
    {
        bool negative = value.Length > 1 && value[0] == '-' && char.IsAsciiDigit(value[1]);
        return value.Length > 0 && (negative || !NoFirst.Contains(value[0], StringComparison.Ordinal)) && value[^1] is not (' ' or ':')
            && value.AsSpan().IndexOfAny(NotPlain) < 0
            && !value.Contains(": ", StringComparison.Ordinal) && !value.Contains(" #", StringComparison.Ordinal);
    }

    private static string InDoubleQuotes(string value)
    {
        StringBuilder text = new(value.Length + 2);
        text.Append('"');
        foreach (char letter in value)
        {
            _ = letter switch
            {
                '"' => text.Append("\\\""),
                '\\' => text.Append("\\\\"),
                < ' ' or (>= '\u007f' and <= '\u009f') or '\u2028' or '\u2029' or '\ufeff' =>
                    text.Append(CultureInfo.InvariantCulture, $"\\u{(int)letter:X4}"),
                _ => text.Append(letter),
            };
        }

        return text.Append('"').ToString();
    }
}
