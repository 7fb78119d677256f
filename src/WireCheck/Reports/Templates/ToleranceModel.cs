using Scriban.Runtime;
using WireCheck.Facts.Catalogue;
using WireCheck.Findings;
using WireCheck.Rules;
using WireCheck.Tolerances;

namespace WireCheck.Reports.Templates;

/// <summary>What becomes of a box within its tolerances, as templates see it.</summary>
internal static class ToleranceModel
{
    internal static ScriptObject? Make(ToleranceResult? result, Escape escape) => result is null ? null : ReportModel.Map(
        ("corners", result.Corners),
        ("of", escape(string.Join(", ", result.Tolerances.Varied.Select(Words)))),
        ("lost", new ScriptArray(result.Lost.Select(l => (object)OfLost(l, result.Corners, escape)))),
        ("thinnest", new ScriptArray(result.Thinnest.Select(m => (object)OfThin(m, escape)))));

    /// <summary>A tolerance with where it comes from: <c>length of conductors ± 5 % (declared)</c>.</summary>
    internal static string Words(Tolerance tolerance) =>
        $"{tolerance.Means} ± {NumberWords.Percent(tolerance.Share)} ({(tolerance.Source is { } source ? $"assumed, {Knowledge.StandingWords.For(source.Standing)}" : "declared")})";

    /// <summary>Where a margin is lost: what it takes, and at how many corners.</summary>
    internal static string Where(LostMargin lost, int corners)
    {
        string needs = string.Join(", ", lost.Needs.Select(n => $"{n.Name} {(n.High ? "high" : "low")}"));
        string count = FormattableString.Invariant($"{lost.Corners} of {corners} corners");
        return lost.Corners == corners ? "at every corner" : needs.Length == 0 ? $"at {count}" : $"with {needs} ({count})";
    }

    private static ScriptObject OfLost(LostMargin lost, int corners, Escape escape)
    {
        Finding finding = lost.Finding;
        return ReportModel.Map(
            ("severity", SeverityWords.For(finding.Severity)),
            ("where", finding.PartKind == FactCatalogue.PackKind ? "the box" : escape(finding.Part)),
            ("line", finding.At.Line),
            ("rule", escape(finding.Rule)),
            ("message", escape(finding.Message)),
            ("mend", escape(finding.Mend)),
            ("at", escape(Where(lost, corners))));
    }

    private static ScriptObject OfThin(ThinMargin margin, Escape escape) => ReportModel.Map(
        ("part", margin.Described.Subject.Kind == FactCatalogue.PackKind ? "the box" : escape(margin.Described.Subject.Id)),
        ("rule", escape(margin.Described.Rule.Id)),
        ("described", NumberWords.Percent(margin.Described.Share)),
        ("share", NumberWords.Percent(margin.Worst.Share)),
        ("used", NumberWords.Quantity(margin.Worst.Used, margin.Worst.Unit)),
        ("limit", NumberWords.Quantity(margin.Worst.Limit, margin.Worst.Unit)),
        ("corner", escape(margin.Corner)));
}
