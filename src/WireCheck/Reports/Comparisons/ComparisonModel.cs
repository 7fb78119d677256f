using Scriban.Runtime;
using WireCheck.Comparing;
using WireCheck.Findings;
using WireCheck.Quantities;
using WireCheck.Reports.Templates;
using WireCheck.Rules;

namespace WireCheck.Reports.Comparisons;

/// <summary>What differs between two boxes as the templates see it: words that are escaped for the target.</summary>
internal sealed class ComparisonModel(BoxDifference difference, Escape escape)
{
    private const string Nothing = "nothing";

    /// <summary>Rows of moved numbers that a page for people holds; JSON has them all.</summary>
    private const int RowsShown = 30;

    internal ScriptObject Make() => ReportModel.Map(
        ("old", OfBox(difference.OldFile, difference.Old)),
        ("new", OfBox(difference.NewFile, difference.New)),
        ("worse", difference.IsWorse(Severity.Advice)),
        ("same", difference.IsNone),
        ("summary", ComparisonWords.Summary(difference)),
        ("tolerance", NumberWords.Percent(difference.Tolerance)),
        ("breaks", List(difference.Breaks.GroupBy(b => (b.Finding.Rule, b.At)).Select(OfBreaks))),
        ("how_chosen", escape(ComparisonWords.HowChosen(difference))),
        ("parts", List(difference.Items.Select(OfItem))),
        ("numbers", List(Rows().Take(RowsShown))),
        ("more_numbers", Math.Max(0, Rows().Count() - RowsShown)),
        ("gained", List(Changes(ChangeKind.Added))),
        ("changed", List(Changes(ChangeKind.Changed))),
        ("lost", List(Changes(ChangeKind.Removed))));

    private static ScriptArray List(IEnumerable<object> values) => new(values);

    private ScriptObject OfBox(string file, JudgedBox box) => ReportModel.Map(
        ("file", escape(file)),
        ("title", escape(box.Title)),
        ("verdict", VerdictWords.For(box.Findings.Counts.Verdict)));

    /// <summary>What gives way at several parts by the same rule at the same step.</summary>
    private ScriptObject OfBreaks(IEnumerable<Break> alike)
    {
        List<Break> breaks = [.. alike];
        Finding first = breaks[0].Finding;
        return ReportModel.Map(
            ("severity", SeverityWords.For(first.Severity)),
            ("where", escape(string.Join(", ", breaks.Select(b => ComparisonWords.Where(b.Finding))))),
            ("rule", escape(first.Rule)),
            ("message", escape(first.Message)),
            ("at", escape(ComparisonWords.At(breaks[0], difference.Growth))));
    }

    private ScriptObject OfItem(ItemChange item) => ReportModel.Map(
        ("change", ComparisonWords.Change(item.Change)),
        ("what", escape(ComparisonWords.What(item))),
        ("line", item.NewLine ?? item.OldLine),
        ("values", escape(ComparisonWords.Values(item))));

    /// <summary>The same finding at several parts, told once with the message of the first.</summary>
    private ScriptObject OfFindings(IEnumerable<FindingChange> alike)
    {
        List<FindingChange> changes = [.. alike];
        Finding first = changes[0].Finding;
        return ReportModel.Map(
            ("severity", SeverityWords.For(first.Severity)),
            ("where", escape(string.Join(", ", changes.Select(c => ComparisonWords.Where(c.Finding))))),
            ("line", string.Join(", ", changes.Select(c => Escaping.Number(c.Finding.At.Line)).Distinct())),
            ("lines", changes.Count == 1 ? "line" : "lines"),
            ("rule", escape(first.Rule)),
            ("title", escape(first.Title)),
            ("message", escape(first.Message)),
            ("alike", changes.Count > 1),
            ("mend", escape(first.Mend)),
            ("waived", first.Waived is not null),
            ("what", escape(ComparisonWords.Differences(changes[0]))));
    }

    private IEnumerable<object> Changes(ChangeKind kind) => difference.Findings.Where(f => f.Change == kind)
        .GroupBy(f => (f.Finding.Rule, f.Finding.Severity, f.Finding.Waived, Alone: kind == ChangeKind.Changed ? f.Finding.Part : ""))
        .Select(OfFindings);

    /// <summary>Parts in which the same number moved alike stand on one row: the wires of one path carry one current.</summary>
    private IEnumerable<object> Rows() => difference.Numbers
        .GroupBy(n => (n.Fact.Name, Old: NumberWords.Quantity(n.Old, n.Fact.Unit), New: NumberWords.Quantity(n.New, n.Fact.Unit)))
        .Select(row => (object)ReportModel.Map(
            ("name", escape(row.Key.Name.Replace('_', ' '))),
            ("parts", escape(string.Join(", ", row.Select(n => n.Kind == FactVocabulary.PackKind ? "the box" : n.Id)))),
            ("old", row.Key.Old),
            ("new", row.Key.New),
            ("change", Moved(row.First())),
            ("means", escape(row.First().Fact.Sentence))));

    /// <summary>The move in words; of a temperature, whose zero means nothing, the difference.</summary>
    private static string Moved(MovedNumber number) => number.Fact.Unit == "°C" ? FormattableString.Invariant($"{number.New - number.Old:+0.#;-0.#} K")
        : number.Old == 0 ? $"from {Nothing}"
        : number.New == 0 ? $"to {Nothing}"
        : number.New / number.Old is > 2 and double times ? $"times {QuantityText.Plain(times, 2)}"
        : FormattableString.Invariant($"{(number.New > number.Old ? "+" : "-")}{Math.Abs(number.New - number.Old) / Math.Abs(number.Old) * 100:0} %");
}
