namespace WireCheck.Text;

/// <summary>
/// A place in a text file. Lines and columns count from 1; the column counts UTF-16 characters.
/// </summary>
/// <param name="File">The name the user gave for the file, as it is printed.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1.</param>
public readonly record struct Position(string File, int Line, int Column) : IComparable<Position>
{
    /// <summary>Compares by file name (ordinal), then line, then column.</summary>
    public int CompareTo(Position other)
    {
        int byFile = string.CompareOrdinal(File, other.File);
        if (byFile != 0)
        {
            return byFile;
        }

        return Line != other.Line ? Line.CompareTo(other.Line) : Column.CompareTo(other.Column);
    }

    /// <summary>The form every message uses: <c>file:line:column</c>.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}";

    public static bool operator <(Position left, Position right) => left.CompareTo(right) < 0;

    public static bool operator >(Position left, Position right) => left.CompareTo(right) > 0;

    public static bool operator <=(Position left, Position right) => left.CompareTo(right) <= 0;

    public static bool operator >=(Position left, Position right) => left.CompareTo(right) >= 0;
}
