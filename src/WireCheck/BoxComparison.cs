using WireCheck.Comparing;
using WireCheck.Description;
using WireCheck.Knowledge;
using WireCheck.Text;

namespace WireCheck;

/// <summary>A description as it was read from somewhere.</summary>
/// <param name="File">Its name as messages print it.</param>
/// <param name="Text">Its text.</param>
/// <param name="Folder">The folder in which its own rule sets may lie; null when it has none.</param>
public sealed record DescriptionText(string File, string Text, string? Folder);

/// <summary>The front door of a comparison: two texts in, what differs out.</summary>
public static class BoxComparison
{
    /// <summary>The move of a number, as a part of the larger value, up to which it is not told unless the user chooses.</summary>
    public static double DefaultTolerance => Library.Embedded.Assumptions["told_change"].Value;

    /// <summary>Checks both and compares them; null with every problem of both when one is wrong.</summary>
    /// <param name="check">The check of one description.</param>
    /// <param name="old">The old description.</param>
    /// <param name="new">The new one.</param>
    /// <param name="today">The day on which waivers are judged.</param>
    /// <param name="tolerance">Moves of a number up to this part of the larger value count as none, 0 or more.</param>
    public static (BoxDifference? Difference, IReadOnlyList<Problem> Problems) Compare(
        PackCheck check, DescriptionText old, DescriptionText @new, DateOnly today, double tolerance)
    {
        CheckOutcome before = check.Check(old.File, old.Text, new CheckOptions(old.Folder, today));
        CheckOutcome after = check.Check(@new.File, @new.Text, new CheckOptions(@new.Folder, today));
        return before.Judged is { } oldBox && after.Judged is { } newBox
            ? (BoxDifference.Of(
                (old.File, oldBox, WrittenItems.Read(old.File, old.Text)),
                (@new.File, newBox, WrittenItems.Read(@new.File, @new.Text)), tolerance,
                edits => check.CheckEdited(@new, edits, today).Judged?.Findings.Findings ?? []), [])
            : (null, [.. before.Problems, .. after.Problems]);
    }
}
