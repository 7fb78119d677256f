using System.Globalization;

namespace WireCheck.Quantities;

/// <summary>Splits a scalar into its number and what follows it.</summary>
public static class NumberScanner
{
    /// <summary>No part has more of anything in any unit; squares and products of such numbers stay finite.</summary>
    private const double Highest = 1e15;

    private static readonly HashSet<string> WordsWithoutValue = new(StringComparer.OrdinalIgnoreCase)
    {
        "nan", "inf", "infinity", "∞",
    };

    /// <summary>The number at the start of a text, and the rest without spaces around it.</summary>
    public static Parsed<(double Number, string After)> Split(string text)
    {
        string trimmed = text.Trim();
        int end = EndOfNumber(trimmed);
        if (end == 0)
        {
            string word = trimmed.TrimStart('+', '-', '.').Split(' ')[0];
            QuantityFaultKind kind = WordsWithoutValue.Contains(word) ? QuantityFaultKind.NotFinite : QuantityFaultKind.NotANumber;
            return new QuantityFault(kind, trimmed);
        }

        if (end + 1 < trimmed.Length && trimmed[end] == ',' && char.IsAsciiDigit(trimmed[end + 1]))
        {
            return new QuantityFault(QuantityFaultKind.DecimalComma, trimmed);
        }

        // A typographic minus is what a word processor makes of a hyphen.
        string digits = trimmed[..end].Replace('\u2212', '-');
        double number = double.Parse(digits, NumberStyles.Float, CultureInfo.InvariantCulture);
        return Math.Abs(number) <= Highest
            ? (number, trimmed[end..].Trim())
            : new QuantityFault(QuantityFaultKind.NotFinite, trimmed);
    }

    private static int EndOfNumber(string text)
    {
        int at = text.Length > 0 && text[0] is '+' or '-' or '\u2212' ? 1 : 0;
        int whole = Digits(text, at);
        int end = whole;
        if (end < text.Length && text[end] == '.' && !IsAt(text, end, ".."))
        {
            end = Digits(text, end + 1);
        }

        if (end - at == 0 || (whole == at && end - at < 2))
        {
            return 0;
        }

        return EndOfExponent(text, end);
    }

    private static int EndOfExponent(string text, int end)
    {
        if (end >= text.Length || text[end] is not ('e' or 'E'))
        {
            return end;
        }

        int digits = end + 1 < text.Length && text[end + 1] is '+' or '-' ? end + 2 : end + 1;
        int last = Digits(text, Math.Min(digits, text.Length));
        return last > digits ? last : end;
    }

    private static int Digits(string text, int from)
    {
        int at = from;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        return at;
    }

    private static bool IsAt(string text, int at, string what) =>
        string.CompareOrdinal(text, at, what, 0, what.Length) == 0;
}
