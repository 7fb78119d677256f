using YamlDotNet.Core;

namespace WireCheck.Text;

/// <summary>Turns a parser's complaint into words for a builder.</summary>
internal static class YamlSyntaxWords
{
    /// <summary>What a file with bytes of nothing is.</summary>
    internal const string Binary = "this is not a text file: it holds binary data";

    /// <summary>What is told when the parser itself cannot say what is wrong.</summary>
    internal const string Unfinished = "this is not valid YAML: soon after this, something is not closed or not separated";

    /// <summary>
    /// A piece of the parser's complaint and what a builder reads instead; the first that fits is taken. A
    /// complaint that none fits is shown as it is: better the parser's words than none.
    /// </summary>
    private static readonly (string Complaint, string Words)[] Known =
    [
        ("found invalid mapping", "a second ': ' stands in this line; put a text that holds ': ' between quotes"),
        ("quoted scalar, found unexpected end of stream", "the quote that opens here is never closed"),
        ("quoted scalar, found unexpected document indicator", "the quote that opens here is never closed"),
        ("found unknown escape character", "between double quotes a backslash begins an escape, and this one is none; use single quotes, or write \\\\"),
        ("found character that cannot start any token", "a text cannot begin with @, `, % or a tab; put it between quotes"),
        ("block mapping, did not find expected key", "this line is indented unlike its neighbours, or the line before it is not finished"),
        ("block collection, did not find expected '-'", "this line is indented unlike its neighbours, or a '-' is missing before it"),
        ("could not find expected ':'", "a key stands here without ': ' after it"),
        ("While parsing a node, did not find expected node content", "a value is missing before this, or a '[' or '{' before it is never closed"),
        ("flow mapping", "a ',' or the closing '}' is missing before this"),
        ("flow sequence", "a ',' or the closing ']' is missing before this"),
        ("multi-line double-quoted scalar, found wrong indentation", "a text between quotes that goes on in the next line must be indented there"),
    ];

    internal static Problem For(string file, string text, YamlException error)
    {
        Position at = new(file, (int)Math.Max(1, error.Start.Line), (int)Math.Max(1, error.Start.Column));
        string reason = error.InnerException?.Message ?? error.Message;

        // The parser blames the mapping around the tab; the builder needs the line that has it.
        if (reason.Contains("tab", StringComparison.OrdinalIgnoreCase) && LineIndentedWithTab(text, at.Line) is int line)
        {
            return new Problem(new Position(file, line, 1), "this line is indented with a tab; YAML takes only spaces");
        }

        return new Problem(at, $"this is not valid YAML: {InWords(reason)}");
    }

    private static string InWords(string reason) =>
        Known.FirstOrDefault(k => reason.Contains(k.Complaint, StringComparison.Ordinal)).Words ?? reason.TrimEnd('.');

    private static int? LineIndentedWithTab(string text, int from)
    {
        int number = 0;
        foreach (ReadOnlySpan<char> line in text.AsSpan().EnumerateLines())
        {
            number++;
            if (number >= from && line.TrimStart(' ').StartsWith("\t", StringComparison.Ordinal))
            {
                return number;
            }
        }

        return null;
    }
}
