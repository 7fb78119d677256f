using Scriban.Runtime;
using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using WireCheck.Findings;
using WireCheck.Knowledge;
using WireCheck.Quantities;
using WireCheck.Reports.Pages;
using WireCheck.Reports.Svg;
using WireCheck.Rules;

namespace WireCheck.Reports.Templates;

/// <summary>
/// A report as templates see it: nothing but words, numbers, lists and maps. Every word has been escaped for the
/// target, so that no template has to. README.md beside this file documents each name.
/// </summary>
internal sealed class ReportModel(Report report, int place, TemplateTarget target, Escape escape)
{
    /// <summary>Ends the names of places in a page, so that several reports on one page do not share them.</summary>
    private readonly string _suffix = place == 0 ? "" : FormattableString.Invariant($"-{place}");

    /// <summary>The model of one report.</summary>
    internal ScriptObject Make()
    {
        FindingCounts counts = report.Findings.Counts;
        LateMap model = new(
            ("parts", () => List(report.Facts.Subjects.Prepend(report.Facts.Pack).Select(OfPart))),
            ("lines", () => List(Lines(report.Source).Select(l => (object)escape(l)))),
            ("pages", () => List(report.Pages.Select(OfPage))),
            ("drawing", () => target == TemplateTarget.Html && report.Drawing is { } drawing
                ? DrawingSvg.Write(drawing.Value, report.PackTitle, report.Findings.Findings, _suffix, ownStyle: false)
                : null),
            ("plots", () => List(target == TemplateTarget.Html ? report.Plots.Select(OfPlot) : [])));
        return Fill(
            model,
            ("tool", Map(("name", Report.ToolName), ("version", Report.ToolVersion))),
            ("suffix", _suffix),
            ("file", escape(report.File)),
            ("title", escape(report.PackTitle)),
            ("verdict", VerdictWords.For(report.Verdict)),
            ("verdict_severity", report.Verdict switch
            {
                Verdict.Dangerous => "danger",
                Verdict.Faulty => "fault",
                Verdict.PassesWithAdvice => "advice",
                _ => "passes",
            }),
            ("summary", CountWords.Of(report)),
            ("mendable", report.Findings.Findings.Count(f => f.Waived is null && f.Edits.Count > 0)),
            ("counts", Map(
                ("danger", counts.Danger), ("fault", counts.Fault), ("advice", counts.Advice),
                ("waived", counts.Waived), ("undecided", counts.Undecided))),
            ("findings", List(report.Findings.Findings.Where(f => f.Waived is null).Select(OfFinding))),
            ("waived", List(report.Findings.Findings.Where(f => f.Waived is not null).Select(OfFinding))),
            ("undecided", List(report.Findings.Undecided.GroupBy(u => u.Rule.Id).Select(OfUndecided))),
            ("overrides", List(report.Overrides.Select(OfOverride))),
            ("margins", List(report.Findings.NearestMargins.Select(OfMargin))),
            ("rules", List(report.Findings.Findings.DistinctBy(f => f.Rule).OrderBy(f => f.Rule, StringComparer.Ordinal).Select(OfRule))),
            ("shelf", report.Facts.Pack.Find(PackFacts.TimeToCutOff.Name)?.Value is double seconds ? NumberWords.Days(seconds / Durations.SecondsPerDay) : null),
            ("drawing_style", target == TemplateTarget.Html ? DrawingSvg.Style + PlotSvg.Style : null),
            ("tolerance", ToleranceModel.Make(report.Tolerance, escape)),
            ("cautions", List(report.Cautions.Select(c => (object)escape(c)))));
    }

    /// <summary>A map whose entries stand in the order given.</summary>
    internal static ScriptObject Map(params (string Name, object? Value)[] entries) => Fill([], entries);

    private static ScriptObject Fill(ScriptObject map, params (string Name, object? Value)[] entries)
    {
        foreach ((string name, object? value) in entries)
        {
            map.SetValue(name, value, true);
        }

        return map;
    }

    private static ScriptArray List(IEnumerable<object> values) => new(values);

    private ScriptObject OfFinding(Finding finding) => Map(
        ("anchor", FindingAnchor.Of(finding) + _suffix),
        ("rule", escape(finding.Rule)),
        ("title", escape(finding.Title)),
        ("severity", SeverityWords.For(finding.Severity)),
        ("part", escape(finding.Part)),
        ("where", finding.PartKind == FactVocabulary.PackKind ? "the box" : escape(finding.Part)),
        ("is_part", finding.PartKind is not (FactVocabulary.PackKind or WaiverFacts.Kind)),
        ("kind", escape(finding.PartKind)),
        ("line", finding.At.Line),
        ("column", finding.At.Column),
        ("message", escape(finding.Message)),
        ("mend", escape(finding.Mend)),
        ("edits", finding.Edits.Count == 0 ? null : escape(EditWords.Of(finding))),
        ("why", escape(finding.Why)),
        ("mode", finding.Place is { } place ? escape(place.Mode) : null),
        ("corner", finding.Place is { } corner ? escape(corner.Corner) : null),
        ("values", List(finding.Values.Select(OfValue))),
        ("assumed", List(finding.Assumed.Select(a => (object)escape(a)))),
        ("source", escape(finding.Source.ToString())),
        ("standing", StandingWords.For(finding.Source.Standing)),
        ("because", finding.Waived is { } waived ? escape(waived.Because) : null),
        ("until", finding.Waived?.Until is { } day ? FormattableString.Invariant($"{day:yyyy-MM-dd}") : null));

    private ScriptObject OfValue(JudgedValue value) => Map(
        ("name", escape(value.Name.Replace('_', ' '))),
        ("words", escape(Words(value.Value, value.Unit))),
        ("place", value.Place is { } place ? escape($"{place.Mode}, {place.Corner}") : null));

    private ScriptObject OfUndecided(IGrouping<string, Undecided> ofRule) => Map(
        ("rule", escape(ofRule.Key)),
        ("title", escape(ofRule.First().Rule.Title)),
        ("parts", escape(string.Join(", ", ofRule.Select(u => u.Subject.Id)))),
        ("missing", escape(string.Join(", ", ofRule.SelectMany(u => u.Missing).Distinct().Select(m => m.Replace('_', ' '))))));

    private ScriptObject OfMargin(Margin margin) => Map(
        ("share", NumberWords.Percent(margin.Share)),
        ("part", escape(margin.Subject.Id)),
        ("where", margin.Subject.Kind == FactVocabulary.PackKind ? "the box" : escape(margin.Subject.Id)),
        ("used", NumberWords.Quantity(margin.Used, margin.Unit)),
        ("limit", NumberWords.Quantity(margin.Limit, margin.Unit)),
        ("value", NumberWords.Quantity(margin.Value, margin.Unit)),
        ("bound", (margin.Floor ? "at least " : "at most ") + NumberWords.Quantity(margin.Bound, margin.Unit)),
        ("rule", escape(margin.Rule.Id)),
        ("title", escape(margin.Rule.Title)));

    private ScriptObject OfOverride(SettingOverride changed) => Map(
        ("name", escape(changed.Name)),
        ("written", escape(changed.Written)),
        ("usual", escape(changed.Usual)),
        ("means", escape(changed.Means)),
        ("because", escape(changed.Because ?? "no reason is given")));

    private ScriptObject OfRule(Finding finding) => Map(
        ("id", escape(finding.Rule)),
        ("title", escape(finding.Title)),
        ("why", escape(finding.Why)),
        ("source", escape(finding.Source.ToString())));

    private ScriptObject OfPart(FactSubject subject) => Map(
        ("id", escape(subject.Id)),
        ("kind", escape(subject.Kind)),
        ("line", subject.Position.Line),
        ("assumed", List(subject.Assumed.Select(a => (object)escape(a.Words)))),
        ("facts", List(subject.Values.OrderBy(f => f.Key, StringComparer.Ordinal).Select(f => OfFact(f.Value)))));

    private ScriptObject OfFact(FactValue fact) => Map(
        ("name", escape(fact.Definition.Name.Replace('_', ' '))),
        ("words", escape(Words(fact.Value, fact.Definition.Unit))),
        ("place", fact.Place is { } place ? escape($"{place.Mode}, {place.Corner}") : null),
        ("means", escape(fact.Definition.Sentence)));

    private ScriptObject OfPlot(ReportPlot plot, int number) => Map(
        ("title", escape(plot.Title)),
        ("svg", plot.Draw(FormattableString.Invariant($"plot-{number}{_suffix}"))));

    private ScriptObject OfPage(NumbersPage page) => Map(
        ("id", escape(page.Id)),
        ("title", escape(page.Title)),
        ("blocks", List(page.Blocks.Select(OfBlock))));

    private ScriptObject OfBlock(PageBlock block) => Map(
        ("words", escape(block.Words)),
        ("is_heading", block.IsHeading),
        ("headings", block.Table is null ? null : List(block.Table.Headings.Select(h => (object)escape(h)))),
        ("rows", block.Table is null ? null : List(block.Table.Rows.Select(row => (object)List(row.Select(cell => (object)escape(cell)))))));

    /// <summary>The lines of a description as its reader counts them; what follows the last line end is a line when it holds anything.</summary>
    private static IEnumerable<string> Lines(string text)
    {
        string[] lines = text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        return lines[^1].Length == 0 ? lines.SkipLast(1) : lines;
    }

    private static string Words(object value, string unit) => value switch
    {
        double number => NumberWords.Quantity(number, unit),
        bool yes => yes ? "yes" : "no",
        IEnumerable<string> names => string.Join(", ", names),
        _ => (string)value,
    };
}
