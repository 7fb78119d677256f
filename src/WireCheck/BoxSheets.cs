using WireCheck.Description;
using WireCheck.Facts;
using WireCheck.Facts.Gather;
using WireCheck.Rules;
using WireCheck.Sheets;
using WireCheck.Text;

namespace WireCheck;

/// <summary>The front door of the sheets: text in, papers for the bench out.</summary>
public static class BoxSheets
{
    /// <summary>The sheets of a description; null with its problems when it is wrong.</summary>
    /// <param name="file">Name of the file as messages print it.</param>
    /// <param name="text">Its text.</param>
    public static (SheetBook? Book, IReadOnlyList<Problem> Problems) Make(string file, string text)
    {
        ReadResult description = PackReader.Read(file, text, LibraryClasses.Embedded);
        return description.Pack is { } pack ? (SheetMaker.Make(file, BoxFacts.Solve(pack), Cautions.Read()), []) : (null, description.Problems);
    }
}
