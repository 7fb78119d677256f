namespace WireCheck.Reports.Text;

/// <summary>How a text report is laid out.</summary>
/// <param name="Width">Longest line in characters, 40 or more; a word that is longer is not broken.</param>
/// <param name="Colour">Whether severities and headings are coloured with ANSI codes.</param>
public sealed record TextStyle(int Width, bool Colour)
{
    /// <summary>100 characters without colour: what is written to a file or a pipe.</summary>
    public static TextStyle Piped { get; } = new(100, false);
}
