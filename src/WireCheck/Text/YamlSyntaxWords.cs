using YamlDotNet.Core;

namespace WireCheck.Text;

/// <summary>Turns a parser's complaint into words for a builder.</summary>
internal static class YamlSyntaxWords
{
    internal static Problem For(string text, Position at, YamlException error)
    {
        if (text.AsSpan().IndexOfAnyInRange('\0', '\b') >= 0)
        {
            return new Problem(at, "this is not a text file: it holds binary data");
        }

        string reason = error.InnerException?.Message ?? error.Message;
        bool aboutTabs = reason.Contains("tab", StringComparison.OrdinalIgnoreCase) || IsIndentedWithTab(LineOf(text, at.Line));
        if (aboutTabs && FirstTabbedLine(text, at.Line) is int line)
        {
            return new Problem(at with { Line = line, Column = 1 }, "this line is indented with a tab; YAML takes only spaces");
        }

        return new Problem(at, $"this is not valid YAML: {reason.TrimEnd('.')}");
    }

    private static bool IsIndentedWithTab(ReadOnlySpan<char> line) => line.TrimStart(' ').StartsWith('\t');

    /// <summary>
    /// The first line from a place on that is indented with a tab; the parser tells only where the mapping began.
    /// </summary>
    private static int? FirstTabbedLine(string text, int from)
    {
        int number = 0;
        foreach (ReadOnlySpan<char> line in text.AsSpan().EnumerateLines())
        {
            if (++number >= from && IsIndentedWithTab(line))
            {
                return number;
            }
        }

        return null;
    }

    private static string LineOf(string text, int line)
    {
        foreach (ReadOnlySpan<char> current in text.AsSpan().EnumerateLines())
        {
            if (--line == 0)
            {
                return current.ToString();
            }
        }

        return "";
    }
}
