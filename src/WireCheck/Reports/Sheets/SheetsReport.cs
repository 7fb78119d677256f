using Scriban.Runtime;
using WireCheck.Reports.Templates;
using WireCheck.Reports.Text;
using WireCheck.Sheets;

namespace WireCheck.Reports.Sheets;

/// <summary>Writes the sheets of a box as Markdown or as one HTML page, by the tool's own templates.</summary>
public static class SheetsReport
{
    /// <summary>The whole book, or the sheets that are left in it.</summary>
    /// <param name="book">The sheets.</param>
    /// <param name="target">Markdown or HTML.</param>
    public static string Write(SheetBook book, TemplateTarget target)
    {
        Escape escape = PageTemplate.EscapeFor(target);
        Escape cell = target == TemplateTarget.Markdown ? Escaping.MarkdownCell : escape;
        return PageTemplate.Own(target == TemplateTarget.Html ? "sheets.html" : "sheets.md").Write("book", Model(book, escape, cell), TextStyle.Piped);
    }

    private static ScriptObject Model(SheetBook book, Escape escape, Escape cell) => ReportModel.Map(
        ("tool", ReportModel.Map(("name", Report.ToolName), ("version", Report.ToolVersion))),
        ("file", escape(book.File)),
        ("title", escape(book.Title)),
        ("banner", List(book.Banner.Select(b => (object)escape(b)))),
        ("not_to_be_built", book.NotToBeBuilt),
        ("chapters", List(new[] { ("building", "To build from", book.Building), ("commissioning", "Commissioning", book.Commissioning) }
            .Where(c => c.Item3.Count > 0)
            .Select(c => ReportModel.Map(("id", c.Item1), ("title", c.Item2), ("sheets", List(c.Item3.Select(s => Model(s, escape, cell)))))))));

    private static ScriptObject Model(Sheet sheet, Escape escape, Escape cell) => ReportModel.Map(
        ("name", sheet.Name),
        ("title", sheet.Title),
        ("notes", List(sheet.Notes.Select(n => (object)escape(n)))),
        ("headings", List(sheet.Headings.Select(h => (object)cell(h)))),
        ("rows", List(sheet.Rows.Select(row => (object)List(row.Select(words => (object)cell(words)))))));

    private static ScriptArray List(IEnumerable<object> values) => new(values);
}
