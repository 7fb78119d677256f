namespace WireCheck.Edits;

/// <summary>Where keys go into a mapping, and with what around them, so that they read as if the builder had added them.</summary>
/// <param name="Offset">Offset in the text.</param>
/// <param name="Before">What is written before the keys.</param>
/// <param name="Between">What is written between two keys.</param>
/// <param name="After">What is written after them.</param>
internal sealed record KeyInsertion(int Offset, string Before, string Between, string After)
{
    private const string Breaks = "\r\n\u0085\u2028\u2029";

    /// <summary>The place in a mapping.</summary>
    internal static KeyInsertion Into(string text, SpannedMap map) => map.Flow ? IntoBraces(text, map) : IntoLines(text, map);

    /// <summary>The place after a key that nothing follows, or null when no colon follows it either.</summary>
    internal static int? AfterColon(string text, SpannedNode key)
    {
        int at = key.End;
        while (at < text.Length && text[at] is ' ' or '\t')
        {
            at++;
        }

        return at < text.Length && text[at] == ':' ? at + 1 : null;
    }

    /// <summary>The end of the line that holds a place, its break not counted.</summary>
    private static int LineEnd(string text, int at)
    {
        int length = text.AsSpan(at).IndexOfAny(Breaks);
        return length < 0 ? text.Length : at + length;
    }

    private static KeyInsertion IntoBraces(string text, SpannedMap map)
    {
        if (map.Entries.Count == 0)
        {
            return new KeyInsertion(text.IndexOf('{', map.Start) + 1, "", ", ", "");
        }

        return map.Entries[^1].Value is SpannedScalar { Plain: true, Text: "" }
            ? new KeyInsertion(map.Entries[0].Key.Start, "", ", ", ", ")
            : new KeyInsertion(map.Entries[^1].Value.End, ", ", ", ", "");
    }

    private static KeyInsertion IntoLines(string text, SpannedMap map)
    {
        int first = map.Entries[0].Key.Start;
        int lineStart = text.AsSpan(0, first).LastIndexOfAny(Breaks) + 1;
        string indent = new(' ', first - lineStart);
        string lineBreak = LineBreak(text, first);
        for (int index = map.Entries.Count - 1; index >= 0; index--)
        {
            SpannedEntry entry = map.Entries[index];
            if (EndsOnItsLine(text, entry))
            {
                string separator = lineBreak + indent;
                return new KeyInsertion(LineEnd(text, entry.Value.End), separator, separator, "");
            }
        }

        return new KeyInsertion(first, "", lineBreak + indent, lineBreak + indent);
    }

    /// <summary>A value whose end is certain: a word, something in braces or an alias; no lines below it.</summary>
    private static bool EndsOnItsLine(string text, SpannedEntry entry) => entry.Value switch
    {
        SpannedScalar scalar => scalar.Text.Length > 0 && scalar.End > scalar.Start && !Breaks.Contains(text[scalar.End - 1], StringComparison.Ordinal)
            && text.AsSpan(entry.Key.Start, scalar.End - entry.Key.Start).IndexOfAny(Breaks) < 0,
        SpannedMap map => map.Flow,
        SpannedList list => list.Flow,
        _ => true,
    };

    /// <summary>The break of the line that a place stands in, else that of the file's first line.</summary>
    private static string LineBreak(string text, int at)
    {
        int end = LineEnd(text, at);
        if (end == text.Length)
        {
            end = LineEnd(text, 0);
        }

        return end == text.Length ? "\n"
            : text[end] == '\r' && end + 1 < text.Length && text[end + 1] == '\n' ? "\r\n"
            : text[end].ToString();
    }
}
