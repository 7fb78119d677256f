using WireCheck.Reports.Text;
using WireCheck.Text;

namespace WireCheck.Cli.Commands;

/// <summary>Writes an answer to standard output or into a file.</summary>
internal static class Answer
{
    /// <summary>Writes it; false when the file cannot be written, which is told.</summary>
    /// <param name="file">The file, or null for standard output.</param>
    /// <param name="make">Makes the bytes in the style of where they go.</param>
    internal static bool TryWrite(string? file, Func<TextStyle, byte[]> make)
    {
        if (file is null)
        {
            Terminal.Write(make(Terminal.Style()));
            return true;
        }

        if (TryWriteFile(file, make(TextStyle.Piped)))
        {
            return true;
        }

        Terminal.Complain(new Problem(new Position(file, 1, 1), "the file cannot be written").ToString());
        return false;
    }

    /// <summary>Writes a file; false when it cannot be written.</summary>
    internal static bool TryWriteFile(string file, byte[] bytes)
    {
        try
        {
            File.WriteAllBytes(file, bytes);
            return true;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return false;
        }
    }
}
