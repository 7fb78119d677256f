using WireCheck.Description;
using WireCheck.Findings;
using WireCheck.Rules;

namespace WireCheck.Comparing;

/// <summary>What differs between two judged boxes.</summary>
/// <param name="OldFile">The old description's name as the user gave it.</param>
/// <param name="NewFile">The new one's.</param>
/// <param name="Old">The old box.</param>
/// <param name="New">The new box.</param>
/// <param name="Tolerance">Moves of a number up to this part of the larger value count as none.</param>
/// <param name="Items">Parts and whatever else is written otherwise.</param>
/// <param name="Numbers">Judged numbers that moved, the furthest first.</param>
/// <param name="Findings">Findings gained, changed and lost.</param>
/// <param name="Breaks">What gives way in the new box, in the order of giving way; empty when nothing does.</param>
/// <param name="Growth">The loads and sources with other figures, whose growth that order follows.</param>
public sealed record BoxDifference(
    string OldFile,
    string NewFile,
    JudgedBox Old,
    JudgedBox New,
    double Tolerance,
    IReadOnlyList<ItemChange> Items,
    IReadOnlyList<MovedNumber> Numbers,
    IReadOnlyList<FindingChange> Findings,
    IReadOnlyList<Break> Breaks,
    LoadGrowth Growth)
{
    /// <summary>True when a finding of at least that severity was gained, or became so grave.</summary>
    public bool IsWorse(Severity threshold) => Findings.Any(f => f.IsWorse && f.Finding.Severity >= threshold);

    /// <summary>True when nothing differs that this tells.</summary>
    public bool IsNone => Items.Count == 0 && Numbers.Count == 0 && Findings.Count == 0;

    /// <summary>Compares two judged boxes and what is written of them.</summary>
    /// <param name="old">The old box.</param>
    /// <param name="new">The new box.</param>
    /// <param name="tolerance">Moves of a number up to this part of the larger value count as none, 0 or more.</param>
    /// <param name="judge">Findings of the new box with values set to others.</param>
    public static BoxDifference Of(
        (string File, JudgedBox Box, IReadOnlyList<WrittenItem> Written) old,
        (string File, JudgedBox Box, IReadOnlyList<WrittenItem> Written) @new,
        double tolerance,
        Func<IReadOnlyList<TreeEdit>, IReadOnlyList<Finding>> judge)
    {
        IReadOnlyList<ItemChange> items = ItemChange.Between(old.Written, @new.Written);
        IReadOnlyList<FindingChange> findings = FindingChange.Between(old.Box.Findings.Findings, @new.Box.Findings.Findings, tolerance);
        LoadGrowth growth = LoadGrowth.In(items);
        return new BoxDifference(
            old.File, @new.File, old.Box, @new.Box, tolerance, items,
            MovedNumber.Between(old.Box, @new.Box, tolerance), findings,
            BreakOrder.Of(@new.Box, findings, growth.Numbers.Count == 0 ? null : share => judge(growth.At(share))), growth);
    }
}
