using YamlDotNet.Core;

namespace WireCheck.Text;

/// <summary>Turns a parser's complaint into words for a builder.</summary>
internal static class YamlSyntaxWords
{
    /// <summary>What a file with bytes of nothing is.</summary>
    internal const string Binary = "this is not a text file: it holds binary data";

    /// <summary>What is told when the parser itself cannot say what is wrong.</summary>
    internal const string Unfinished = "this is not valid YAML: soon after this, something is not closed or not separated";

    internal static Problem For(string file, string text, YamlException error)
    {
        Position at = new(file, (int)Math.Max(1, error.Start.Line), (int)Math.Max(1, error.Start.Column));
        string reason = error.InnerException?.Message ?? error.Message;

        // The parser blames the mapping around the tab; the builder needs the line that has it.
        if (reason.Contains("tab", StringComparison.OrdinalIgnoreCase) && LineIndentedWithTab(text, at.Line) is int line)
        {
            return new Problem(new Position(file, line, 1), "this line is indented with a tab; YAML takes only spaces");
        }

        return new Problem(at, $"this is not valid YAML: {reason.TrimEnd('.')}");
    }

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
