using System.Text;

namespace WireCheck.Text;

/// <summary>Reads a text file within bounds. Whatever is wrong with it is one problem at its first line.</summary>
public static class SourceFile
{
    /// <summary>A character takes at most four bytes.</summary>
    private const long BytesPerCharacter = 4;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of the file, or null with a problem noted when it cannot be read as text.</summary>
    public static string? Load(string path, ProblemList problems) => Load(path, YamlLimits.Default, problems);

    internal static string? Load(string path, YamlLimits limits, ProblemList problems)
    {
        string reason;
        try
        {
            if (Directory.Exists(path))
            {
                reason = "this is a folder, not a file";
            }
            else if (!File.Exists(path))
            {
                reason = "there is no such file";
            }
            else
            {
                using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
                return ReadText(path, stream, limits, problems);
            }
        }
        catch (UnauthorizedAccessException)
        {
            reason = "the file may not be read";
        }
        catch (Exception error) when (error is IOException or NotSupportedException or ArgumentException)
        {
            reason = "the file cannot be read";
        }

        problems.Add(new Position(path, 1, 1), reason);
        return null;
    }

    private static string? ReadText(string path, Stream stream, YamlLimits limits, ProblemList problems)
    {
        // A device tells no length, so that the reading itself is bounded too.
        long most = BytesPerCharacter * limits.Characters;
        if ((stream.CanSeek && stream.Length > most) || ReadBounded(stream, most) is not byte[] bytes)
        {
            problems.Add(new Position(path, 1, 1), $"the file is too large: at most {limits.Characters} characters are read");
            return null;
        }

        if (bytes.AsSpan().Contains((byte)0))
        {
            problems.Add(new Position(path, 1, 1), "this is not a text file: it holds binary data");
            return null;
        }

        try
        {
            ReadOnlySpan<byte> text = bytes;
            return Strict.GetString(text.StartsWith(Encoding.UTF8.Preamble) ? text[Encoding.UTF8.Preamble.Length..] : text);
        }
        catch (DecoderFallbackException error)
        {
            int line = 1 + bytes.AsSpan(0, Math.Max(0, error.Index)).Count((byte)'\n');
            problems.Add(new Position(path, line, 1), "this line is not UTF-8 text; save the file as UTF-8");
            return null;
        }
    }

    private static byte[]? ReadBounded(Stream stream, long most)
    {
        using MemoryStream whole = new();
        byte[] block = new byte[1 << 16];
        for (int read = stream.Read(block); read > 0; read = stream.Read(block))
        {
            whole.Write(block, 0, read);
            if (whole.Length > most)
            {
                return null;
            }
        }

        return whole.ToArray();
    }
}
