using System.Text.RegularExpressions;

namespace WireCheck.Fuzz;

/// <summary>Changes of words, numbers, marks and indents: what a slip of the keyboard or of copying makes.</summary>
internal static partial class TokenMutation
{
    private static readonly string[] Nasty =
    [
        "[", "]", "{", "}", ":", ": ", ",", "\n", "\n  ", "- ", "&a ", "*a", "'", "\"", "#", "|\n", ">\n", "? ", "!!int ", "!!binary ", "\t", "%", "@", "`",
        "---\n", "...\n", "<<: ", "~", "null", "true", "no", "0", "-1", "1e999", "-0", "NaN", "∞", "9999999999999999999", "1e-300", "0x10", "0 .. 0", "10 .. 1",
        "\u2028", "\u00a0", "\ud83d\ude00", "\u202e", "\0", "{{", "}}", "{{ end }}", "{{ for i in 1..9 }}", "??", "&&", "||", "==", "(", ")", "| amps", ".", "it.", "-",
    ];

    /// <summary>The text with one token gone, doubled, moved or another.</summary>
    internal static string Change(string text, IReadOnlyList<string> words, Random random)
    {
        List<string> tokens = [.. Token().Matches(text).Select(m => m.Value)];
        int at = random.Next(tokens.Count + 1);
        string piece = random.Next(2) == 0 ? Nasty[random.Next(Nasty.Length)] : words[random.Next(words.Count)];
        switch (random.Next(5))
        {
            case 0 when at < tokens.Count:
                tokens.RemoveRange(at, Math.Min(random.Next(1, 6), tokens.Count - at));
                break;
            case 1 when at < tokens.Count:
                tokens.InsertRange(at, tokens.GetRange(at, Math.Min(random.Next(1, 12), tokens.Count - at)));
                break;
            case 2 when at < tokens.Count:
                int other = random.Next(tokens.Count);
                (tokens[at], tokens[other]) = (tokens[other], tokens[at]);
                break;
            case 3 when at < tokens.Count:
                tokens[at] = piece;
                break;
            default:
                tokens.Insert(at, piece);
                break;
        }

        return string.Concat(tokens);
    }

    [GeneratedRegex(@"\s+|[\p{L}\p{N}_]+|.", RegexOptions.Singleline)]
    private static partial Regex Token();
}
