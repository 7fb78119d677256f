using System.Globalization;
using System.Text;

namespace WireCheck.Reports;

/// <summary>Makes words from a description, a rule set or a class harmless where they are written.</summary>
/// <param name="words">The words.</param>
/// <returns>The words so that the target shows them and does nothing with them.</returns>
public delegate string Escape(string words);

/// <summary>The ways of escaping, one for each target. All first make invisible characters visible.</summary>
public static class Escaping
{
    /// <summary>For a terminal or a plain file.</summary>
    public static string Plain(string words) => PlainText.Escape(words);

    /// <summary>For HTML and SVG, between tags and in quoted attributes.</summary>
    public static string Html(string words)
    {
        StringBuilder safe = new(words.Length + 8);
        foreach (char letter in PlainText.Escape(words))
        {
            safe.Append(letter switch
            {
                '&' => "&amp;",
                '<' => "&lt;",
                '>' => "&gt;",
                '"' => "&quot;",
                '\'' => "&#39;",
                _ => letter.ToString(),
            });
        }

        return safe.ToString();
    }

    /// <summary>
    /// For Markdown: what could begin a link, a picture, emphasis, code, HTML, a table cell, a heading or a list is
    /// written with a backslash or as an entity.
    /// </summary>
    public static string Markdown(string words)
    {
        StringBuilder safe = new(words.Length + 8);
        string plain = PlainText.Escape(words);
        for (int i = 0; i < plain.Length; i++)
        {
            char letter = plain[i];
            switch (letter)
            {
                case '&':
                    safe.Append("&amp;");
                    break;
                case '<':
                    safe.Append("&lt;");
                    break;
                case '>':
                    safe.Append("&gt;");
                    break;
                case '@':
                    // A name after an at sign would call somebody in a pull request.
                    safe.Append("&#64;");
                    break;
                case '\\' or '`' or '*' or '_' or '[' or ']' or '|' or '~' or '#' or '!' or '$':
                    safe.Append('\\').Append(letter);
                    break;
                case '+' or '-' or '=' when i == 0:
                    safe.Append('\\').Append(letter);
                    break;
                case '.' or ')' when IsListNumber(plain, i):
                    safe.Append('\\').Append(letter);
                    break;
                case ':' when plain.AsSpan(i).StartsWith("://", StringComparison.Ordinal):
                    safe.Append("&#58;");
                    break;
                default:
                    safe.Append(letter);
                    break;
            }
        }

        return safe.ToString();
    }

    /// <summary>For a cell of a Markdown table, where nothing can begin a list or a heading.</summary>
    public static string MarkdownCell(string words) => Markdown("x" + words)[1..];

    private static bool IsListNumber(string words, int place)
    {
        for (int i = 0; i < place; i++)
        {
            if (!char.IsAsciiDigit(words[i]))
            {
                return false;
            }
        }

        return place > 0;
    }

    /// <summary>A whole number as text.</summary>
    internal static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
