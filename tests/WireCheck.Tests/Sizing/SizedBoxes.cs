using WireCheck.Sizing;

namespace WireCheck.Tests.Sizing;

/// <summary>Boxes to size, and what comes of it.</summary>
internal static class SizedBoxes
{
    private static readonly CheckOptions Today = new(null, new DateOnly(2026, 12, 1));

    internal static string Example(string name) => File.ReadAllText(Path.Combine(Golden.Root, "examples", name + ".yaml"));

    internal static SizingOutcome Size(string text, params string[] keep)
    {
        SizingOutcome outcome = PackSizing.Size("box.yaml", text, Today, keep);
        outcome.Problems.ShouldBeEmpty();
        return outcome;
    }

    /// <summary>Findings of a text, as rule and part.</summary>
    internal static IReadOnlyList<string> Check(string text) =>
        [.. PackCheck.Standard.Check("box.yaml", text, Today).Report!.Findings.Findings.Select(f => $"{f.Rule} {f.Part}")];

    internal static SizedChoice Choice(this SizingResult result, string id) => result.Choices.First(c => c.Value.Id == id);
}
