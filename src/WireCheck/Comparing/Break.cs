using WireCheck.Findings;
using WireCheck.Rules;

namespace WireCheck.Comparing;

/// <summary>Something that gives way as the load grows from the old box's to the new one's.</summary>
/// <param name="Finding">The danger or fault that the new box has and the old one has not.</param>
/// <param name="At">
/// Part of the way from the old load to the new one at which it is found, above 0 to 1; null when it does not come with the load.
/// </param>
/// <param name="Used">Part of its limit that the new box uses, above 1; null when the rule compares no numbers.</param>
public sealed record Break(Finding Finding, double? At, double? Used);

/// <summary>
/// Puts what a new box breaks in the order in which it gives way: the new box is solved and judged with loads on the way from
/// the old ones to its own, and what is found first breaks first.
/// </summary>
internal static class BreakOrder
{
    /// <summary>Steps of the way; and how often the step with the first break is halved.</summary>
    private const int Steps = 16;
    private const int Halvings = 4;

    /// <summary>Finer than this, wires of one path would stand in the order of the solver's last digits.</summary>
    private const int DigitsOrdered = 6;

    /// <summary>
    /// First what comes with the load, the earliest first, then what is there whatever the load, worst first; ties go to the
    /// graver, then to what is further beyond its limit.
    /// </summary>
    /// <param name="new">The new box.</param>
    /// <param name="changes">Findings gained, changed and lost.</param>
    /// <param name="walk">Findings of the new box at a part of the way, 0 to 1; null when no load differs.</param>
    internal static IReadOnlyList<Break> Of(
        JudgedBox @new, IReadOnlyList<FindingChange> changes, Func<double, IReadOnlyList<Finding>>? walk)
    {
        List<Finding> broken = [.. changes.Where(c => c.IsWorse && c.Finding.Severity > Severity.Advice && !Broke(c.Old)).Select(c => c.Finding)];
        double?[] at = new double?[broken.Count];
        if (walk is not null && broken.Count > 0)
        {
            Walk(broken, walk, at);
        }

        return
        [
            .. broken.Select((f, i) => new Break(f, at[i], UsedBy(@new, f)))
                .OrderBy(b => b.At ?? double.PositiveInfinity)
                .ThenByDescending(b => b.Finding.Severity)
                .ThenByDescending(b => Math.Round(b.Used ?? 0, DigitsOrdered)),
        ];
    }

    private static void Walk(List<Finding> broken, Func<double, IReadOnlyList<Finding>> walk, double?[] at)
    {
        bool[] atOnce = Found(broken, walk(0));
        int firstStep = 0;
        for (int step = 1; step <= Steps; step++)
        {
            double share = (double)step / Steps;
            bool[] found = step == Steps ? [.. broken.Select(_ => true)] : Found(broken, walk(share));
            if (Note(found, atOnce, share, at) && firstStep == 0)
            {
                firstStep = step;
            }
        }

        if (firstStep > 0)
        {
            Refine(broken, walk, atOnce, (firstStep - 1.0) / Steps, (double)firstStep / Steps, at);
        }
    }

    /// <summary>Halves the step in which the first break is, so that what breaks in it stands in its order too.</summary>
    private static void Refine(
        List<Finding> broken, Func<double, IReadOnlyList<Finding>> walk, bool[] atOnce, double from, double to, double?[] at)
    {
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (from + to) / 2;
            bool[] found = Found(broken, walk(middle));
            bool any = false;
            for (int f = 0; f < found.Length; f++)
            {
                if (found[f] && !atOnce[f] && at[f] >= middle)
                {
                    at[f] = middle;
                    any = true;
                }
            }

            (from, to) = any ? (from, middle) : (middle, to);
        }
    }

    private static bool Note(bool[] found, bool[] atOnce, double share, double?[] at)
    {
        bool any = false;
        for (int i = 0; i < found.Length; i++)
        {
            if (found[i] && !atOnce[i] && at[i] is null)
            {
                at[i] = share;
                any = true;
            }
        }

        return any;
    }

    private static bool[] Found(List<Finding> broken, IReadOnlyList<Finding> findings) =>
        [.. broken.Select(b => findings.Any(f => f.Rule == b.Rule && f.Part == b.Part && f.Severity > Severity.Advice && f.Waived is null))];

    private static double? UsedBy(JudgedBox box, Finding finding)
    {
        foreach (Judgement judgement in box.Judgements.Found)
        {
            if (judgement.Rule.Id == finding.Rule && judgement.Subject.Id == finding.Part && judgement.Failed is { } failed)
            {
                return failed.Share;
            }
        }

        return null;
    }

    /// <summary>It broke before, too: a fault that became a danger, or one that was waived.</summary>
    private static bool Broke(Finding? old) => old is { Severity: > Severity.Advice };
}
