using WireCheck.Reports.Pages;

namespace WireCheck.Reports.Text;

/// <summary>A table whose columns are as wide as their widest entry; words stand left, numbers right.</summary>
internal sealed class TextTable(params string[] headings)
{
    private readonly List<string[]> _rows = [headings];

    internal void Add(params string[] cells) => _rows.Add([.. cells.Select(PlainText.Escape)]);

    /// <summary>Writes the table, indented by two; nothing when it has no rows. A page keeps it as a table.</summary>
    internal void Write(TextWriter output)
    {
        if (_rows.Count == 1)
        {
            return;
        }

        if (output is PageWriter page)
        {
            page.Add(new ReportTable(headings, [.. _rows.Skip(1)]));
            return;
        }

        int[] widths = [.. headings.Select((_, column) => _rows.Max(r => r[column].Length))];
        foreach (string[] row in _rows)
        {
            IEnumerable<string> cells = row.Select((cell, column) =>
                IsNumbers(column) ? cell.PadLeft(widths[column]) : cell.PadRight(widths[column]));
            output.Write(("  " + string.Join("  ", cells)).TrimEnd() + "\n");
        }
    }

    /// <summary>True when the column's first entry that is not empty begins with a digit.</summary>
    private bool IsNumbers(int column)
    {
        string entry = _rows.Skip(1).Select(r => r[column]).FirstOrDefault(c => c.Length > 0) ?? "";
        return column > 0 && entry.TrimStart('-') is { Length: > 0 } number && char.IsAsciiDigit(number[0]);
    }
}
