using WireCheck.Findings;
using WireCheck.Rules;

namespace WireCheck.Sheets;

/// <summary>What the check says of the box that the sheets are for: whether it may be built from them.</summary>
internal static class VerdictSheet
{
    /// <summary>What stands on top of the sheets, a sentence or two each.</summary>
    internal static IReadOnlyList<string> Banner(FindingCounts counts) => counts.Verdict switch
    {
        Verdict.Dangerous or Verdict.Faulty =>
        [
            $"{(counts.Verdict == Verdict.Dangerous ? "DANGEROUS" : "FAULTY")}: {Counted(counts.Danger, "danger")}, {Counted(counts.Fault, "fault")}.",
            "Do not build from these sheets and do not connect the box until every danger and fault is mended and the check passes. They stand in the sheet Verdict.",
        ],
        Verdict.PassesWithAdvice => [$"The check passes, with {(counts.Advice == 1 ? "1 piece" : FormattableString.Invariant($"{counts.Advice} pieces"))} of advice; see the sheet Verdict."],
        _ => ["The check passes: nothing found. It judges the description, not the box that was built."],
    };

    /// <summary>Every finding that stands, the worst first; waived ones are not told.</summary>
    internal static Sheet Of(FindingList findings) => new(
        "verdict",
        "Verdict",
        [.. Banner(findings.Counts)],
        ["severity", "part", "line", "rule", "what is wrong", "what to do"],
        [.. findings.Findings.Where(f => f.Waived is null).Select(f => (IReadOnlyList<string>)
        [
            f.Severity.ToString().ToLowerInvariant(), f.Part, FormattableString.Invariant($"{f.At.Line}"), f.Rule, f.Message, f.Mend,
        ])]);

    private static string Counted(int count, string word) => FormattableString.Invariant($"{count} {word}{(count == 1 ? "" : "s")}");
}
