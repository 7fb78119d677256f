using YamlDotNet.Core;

namespace WireCheck.Text;

/// <summary>Turns a parser's complaint into words for a builder.</summary>
internal static class YamlSyntaxWords
{
    internal static string For(string text, Position at, YamlException error)
    {
        if (text.AsSpan().IndexOfAnyInRange('\0', '\b') >= 0)
        {
            return "this is not a text file: it holds binary data";
        }

        string line = LineOf(text, at.Line);
        if (line.TrimStart(' ').StartsWith('\t'))
        {
            return "this line is indented with a tab; YAML takes only spaces";
        }

        string reason = error.InnerException?.Message ?? error.Message;
        return $"this is not valid YAML: {reason.TrimEnd('.')}";
    }

    private static string LineOf(string text, int line)
    {
        ReadOnlySpan<char> rest = text;
        foreach (ReadOnlySpan<char> current in rest.EnumerateLines())
        {
            if (--line == 0)
            {
                return current.ToString();
            }
        }

        return "";
    }
}
