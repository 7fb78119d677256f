using System.Globalization;

namespace WireCheck.Reports.Pages;

/// <summary>
/// Takes what a study writes for a terminal and keeps its tables as tables, so that a page has the same numbers as
/// the terminal without being written twice.
/// </summary>
internal sealed class PageWriter() : StringWriter(CultureInfo.InvariantCulture)
{
    private readonly List<PageBlock> _blocks = [];

    /// <summary>Keeps a table in its place.</summary>
    internal void Add(ReportTable table)
    {
        TakeWords();
        _blocks.Add(new PageBlock("", IsHeading: false, table));
    }

    /// <summary>Everything written, as a page.</summary>
    internal NumbersPage ToPage(string id, string title)
    {
        TakeWords();
        return new NumbersPage(id, title, _blocks);
    }

    /// <summary>Lines that begin at the margin head what is indented below them.</summary>
    private void TakeWords()
    {
        foreach (string line in ToString().Split('\n').Where(l => l.Trim().Length > 0))
        {
            _blocks.Add(new PageBlock(line.Trim(), IsHeading: !line.StartsWith(' '), null));
        }

        GetStringBuilder().Clear();
    }
}
