namespace WireCheck.Fuzz;

/// <summary>Damage below the characters: what a broken disk or a wrong encoding makes.</summary>
internal static class ByteMutation
{
    /// <summary>Longest piece that is taken out, repeated or put in, bytes.</summary>
    private const int LongestPiece = 64;

    /// <summary>The text with one change.</summary>
    /// <param name="text">The bytes; may be empty.</param>
    /// <param name="other">A text from which a piece may come.</param>
    /// <param name="random">Decides.</param>
    internal static byte[] Change(byte[] text, byte[] other, Random random)
    {
        int at = random.Next(text.Length + 1);
        int length = Math.Min(random.Next(1, LongestPiece), text.Length - at);
        switch (random.Next(7))
        {
            case 0 when at < text.Length:
                byte[] flipped = [.. text];
                flipped[at] ^= (byte)(1 << random.Next(8));
                return flipped;
            case 1 when at < text.Length:
                byte[] replaced = [.. text];
                replaced[at] = (byte)random.Next(256);
                return replaced;
            case 2:
                return [.. text[..at], .. text[(at + length)..]];
            case 3:
                return [.. text[..at], .. text[at..(at + length)], .. text[at..]];
            case 4:
                byte[] noise = new byte[random.Next(1, 9)];
                random.NextBytes(noise);
                return [.. text[..at], .. noise, .. text[at..]];
            case 5:
                return text[..at];
            default:
                int from = random.Next(other.Length + 1);
                return [.. text[..at], .. other[from..Math.Min(from + length, other.Length)], .. text[at..]];
        }
    }
}
