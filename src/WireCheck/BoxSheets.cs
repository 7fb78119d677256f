using WireCheck.Facts;
using WireCheck.Facts.Gather;
using WireCheck.Reports;
using WireCheck.Sheets;
using WireCheck.Text;

namespace WireCheck;

/// <summary>The front door of the sheets: text in, papers for the bench out, with what the check says of the box on top.</summary>
public static class BoxSheets
{
    /// <summary>The sheets of a description; null with its problems, and those of its rule sets, when something is wrong.</summary>
    /// <param name="file">Name of the file as messages print it.</param>
    /// <param name="text">Its text.</param>
    /// <param name="options">Folder and day of the check.</param>
    public static (SheetBook? Book, IReadOnlyList<Problem> Problems) Make(string file, string text, CheckOptions options)
    {
        GatherContext? box = null;
        CheckOutcome outcome = new PackCheck(pack => box = BoxFacts.Solve(pack)).Check(file, text, options);
        return outcome.Report is { } report && box is not null
            ? (SheetMaker.Make(file, box, report.Facts, report.Findings, report.Cautions), [])
            : (null, outcome.Problems);
    }
}
