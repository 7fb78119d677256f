using WireCheck.Findings;
using WireCheck.Rules;

namespace WireCheck.Comparing;

/// <summary>A number of a finding that moved.</summary>
/// <param name="Name">Name of the fact or setting.</param>
/// <param name="Unit">SI unit, "" when it has none.</param>
/// <param name="Old">Before.</param>
/// <param name="New">Now.</param>
public sealed record MovedValue(string Name, string Unit, double Old, double New);

/// <summary>A finding that only one of two boxes has, or that is not the same in both.</summary>
/// <param name="Change">Added: gained by the new box; removed: lost.</param>
/// <param name="Old">The finding of the old box; null when it is gained.</param>
/// <param name="New">The finding of the new box; null when it is lost.</param>
/// <param name="Moved">Numbers of one that both have and that moved.</param>
public sealed record FindingChange(ChangeKind Change, Finding? Old, Finding? New, IReadOnlyList<MovedValue> Moved)
{
    /// <summary>The finding as it stands now, or as it stood when it is lost.</summary>
    public Finding Finding => New ?? Old!;

    /// <summary>True when the new box is worse by it: gained or graver, and not waived.</summary>
    public bool IsWorse => New is { Waived: null } now && (Old is null || Old.Waived is not null || now.Severity > Old.Severity);

    /// <summary>Those gained first, then changed, then lost; within each worst first.</summary>
    /// <param name="old">Findings of the old box.</param>
    /// <param name="new">Findings of the new box.</param>
    /// <param name="tolerance">A number of a finding that moved by no more, as a part of the larger value, is the same.</param>
    public static IReadOnlyList<FindingChange> Between(IReadOnlyList<Finding> old, IReadOnlyList<Finding> @new, double tolerance)
    {
        List<Finding> left = [.. old];
        List<FindingChange> gained = [];
        List<FindingChange> changed = [];
        foreach (Finding now in @new)
        {
            int place = left.FindIndex(f => f.Rule == now.Rule && f.Part == now.Part && f.PartKind == now.PartKind);
            if (place < 0)
            {
                gained.Add(new FindingChange(ChangeKind.Added, null, now, []));
                continue;
            }

            Finding was = left[place];
            IReadOnlyList<MovedValue> moved = MovedOf(was, now, tolerance);
            if (moved.Count > 0 || was.Severity != now.Severity || was.Waived is null != now.Waived is null)
            {
                changed.Add(new FindingChange(ChangeKind.Changed, was, now, moved));
            }

            left.RemoveAt(place);
        }

        return [.. gained, .. changed, .. left.Select(f => new FindingChange(ChangeKind.Removed, f, null, []))];
    }

    private static List<MovedValue> MovedOf(Finding old, Finding now, double tolerance)
    {
        List<MovedValue> moved = [];
        foreach (JudgedValue value in now.Values)
        {
            if (value.Value is double number && old.Values.FirstOrDefault(v => v.Name == value.Name)?.Value is double before
                && Math.Abs(number - before) > tolerance * Math.Max(Math.Abs(number), Math.Abs(before)))
            {
                moved.Add(new MovedValue(value.Name, value.Unit, before, number));
            }
        }

        return moved;
    }
}
