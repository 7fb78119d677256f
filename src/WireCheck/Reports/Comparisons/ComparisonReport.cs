using WireCheck.Comparing;
using WireCheck.Reports.Templates;
using WireCheck.Reports.Text;

namespace WireCheck.Reports.Comparisons;

/// <summary>Writes what differs between two boxes as text or Markdown, by the tool's own templates.</summary>
public static class ComparisonReport
{
    /// <summary>The whole answer.</summary>
    /// <param name="difference">What differs.</param>
    /// <param name="target">Text or Markdown.</param>
    /// <param name="style">Width and colour of a text.</param>
    public static string Write(BoxDifference difference, TemplateTarget target, TextStyle style) =>
        PageTemplate.Own(target == TemplateTarget.Markdown ? "comparison.md" : "comparison.txt")
            .Write("comparison", new ComparisonModel(difference, PageTemplate.EscapeFor(target)).Make(), style);
}
