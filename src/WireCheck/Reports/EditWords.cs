using WireCheck.Findings;

namespace WireCheck.Reports;

/// <summary>The values that a finding offers to write, in words.</summary>
internal static class EditWords
{
    /// <summary><c>w3 size 6 AWG</c>, several joined by <c>and</c>; empty when it offers none.</summary>
    internal static string Of(Finding finding) =>
        string.Join(" and ", finding.Edits.Select(e => $"{(e.Part.Length == 0 ? "" : e.Part + " ")}{e.Key.Replace('.', ' ').Replace('_', ' ')} {e.Value}"));
}
