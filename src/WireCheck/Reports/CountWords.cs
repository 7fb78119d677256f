using WireCheck.Findings;

namespace WireCheck.Reports;

/// <summary>Counts of findings in words.</summary>
internal static class CountWords
{
    /// <summary>As a report writes it: <c>2 dangers, 1 piece of advice</c>, or <c>nothing found</c>.</summary>
    internal static string Of(Report report)
    {
        FindingCounts counts = report.Findings.Counts;
        List<string> parts = [];
        Add(parts, counts.Danger, "danger", "dangers");
        Add(parts, counts.Fault, "fault", "faults");
        Add(parts, counts.Advice, "piece of advice", "pieces of advice");
        Add(parts, counts.Waived, "finding waived", "findings waived");
        Add(parts, counts.Undecided, "question left open", "questions left open");
        Add(parts, report.Tolerance?.Lost.Count ?? 0, "margin lost within tolerances", "margins lost within tolerances");
        return parts.Count == 0 ? "nothing found" : string.Join(", ", parts);
    }

    private static void Add(List<string> parts, int count, string one, string many)
    {
        if (count > 0)
        {
            parts.Add($"{count} {(count == 1 ? one : many)}");
        }
    }
}
