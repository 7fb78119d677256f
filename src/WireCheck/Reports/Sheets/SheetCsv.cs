using System.Globalization;
using System.Text;
using WireCheck.Sheets;

namespace WireCheck.Reports.Sheets;

/// <summary>
/// Writes one sheet as comma-separated values after RFC 4180: a row of headings, then the rows; lines end in a carriage return
/// and a line feed.
/// </summary>
public static class SheetCsv
{
    /// <summary>What a spreadsheet takes for the beginning of a formula.</summary>
    private const string FormulaBeginnings = "=+-@\t\r";

    /// <summary>The sheet as text.</summary>
    public static string Write(Sheet sheet)
    {
        StringBuilder text = new();
        foreach (IReadOnlyList<string> row in sheet.Rows.Prepend(sheet.Headings))
        {
            text.AppendJoin(',', row.Select(Cell)).Append("\r\n");
        }

        return text.ToString();
    }

    /// <summary>
    /// A cell that a spreadsheet shows and does not run: one that begins like a formula and is no number gets an apostrophe
    /// before it. Invisible characters become visible; quotes are doubled.
    /// </summary>
    public static string Cell(string words)
    {
        string safe = PlainText.Escape(words);
        string shown = safe.TrimStart();
        if (shown.Length > 0 && FormulaBeginnings.Contains(shown[0], StringComparison.Ordinal)
            && !double.TryParse(shown, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _))
        {
            safe = $"'{safe}";
        }

        return safe.AsSpan().IndexOfAny(",\"\r\n") >= 0 || safe != safe.Trim()
            ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
            : safe;
    }
}
