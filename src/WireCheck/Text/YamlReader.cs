using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace WireCheck.Text;

/// <summary>
/// Reads YAML into nodes that keep their places, within <see cref="YamlLimits"/>. Every duplicate key is
/// reported; a syntax error is reported once, since nothing after it can be trusted.
/// </summary>
public static class YamlReader
{
    /// <summary>
    /// Reads a whole file. Returns null, with at least one problem noted, when the text is no YAML mapping.
    /// </summary>
    public static YamlMap? ReadMap(string file, string text, YamlLimits limits, ProblemList problems)
    {
        YamlNode? node = Read(file, text, limits, problems);
        if (node is null or YamlMap)
        {
            return node as YamlMap;
        }

        problems.Add(node.Position, $"the file must be a mapping of keys to values; it is {node.InWords}");
        return null;
    }

    /// <summary>Reads a whole file into its root node, or null with a problem noted.</summary>
    public static YamlNode? Read(string file, string text, YamlLimits limits, ProblemList problems)
    {
        Position start = new(file, 1, 1);
        if (text.Length > limits.Characters)
        {
            problems.Add(start, $"the file is too large: {text.Length} characters, at most {limits.Characters} are read");
            return null;
        }

        if (text.Contains('\0', StringComparison.Ordinal))
        {
            problems.Add(start, YamlSyntaxWords.Binary);
            return null;
        }

        YamlTreeBuilder builder = new(file, text, limits, problems);
        try
        {
            return builder.Build();
        }
        catch (YamlLimitException limit)
        {
            problems.Add(limit.Position, limit.Message);
        }
        catch (YamlException error)
        {
            problems.Add(YamlSyntaxWords.For(file, text, error));
        }
        catch (Exception error) when (error is InvalidOperationException or ArgumentException or IndexOutOfRangeException)
        {
            // The parser meets a few kinds of broken text in a state it does not expect.
            problems.Add(builder.LastPlace, YamlSyntaxWords.Unfinished);
        }

        return null;
    }
}
