using WireCheck.Text;

namespace WireCheck.Edits;

/// <summary>Turns offsets into lines and columns.</summary>
internal sealed class LineIndex
{
    private readonly string _file;
    private readonly List<int> _starts = [0];

    internal LineIndex(string file, string text)
    {
        _file = file;
        for (int at = 0; at < text.Length; at++)
        {
            bool broken = text[at] is '\n' or '\u0085' or '\u2028' or '\u2029'
                || (text[at] == '\r' && !(at + 1 < text.Length && text[at + 1] == '\n'));
            if (broken)
            {
                _starts.Add(at + 1);
            }
        }
    }

    internal Position At(int offset)
    {
        int found = _starts.BinarySearch(offset);
        int line = found >= 0 ? found : ~found - 1;
        return new Position(_file, line + 1, offset - _starts[line] + 1);
    }
}
