using WireCheck.Findings;
using WireCheck.Rules;

namespace WireCheck.Sizing;

/// <summary>
/// Chooses the smallest values that pass every rule. Values begin where they just bear their currents, rise until no rule that
/// sizes can meet is broken, then fall again where one rose in vain; limits that several wires share are solved together. The
/// judge is the check itself: each rejection rests on a rule that fails, and the last check judges everything anew.
/// </summary>
internal sealed class Sizer
{
    private readonly SizeSearch _search;
    private readonly Blame _blame;
    private readonly SharedBudgets _budgets;
    private readonly Growth _growth;

    internal Sizer(IReadOnlyList<SizedValue> values, IBoxJudge judge)
    {
        _search = new SizeSearch(values, judge);
        _blame = new Blame(_search);
        _budgets = new SharedBudgets(_search);
        _growth = new Growth(_search, _blame, _budgets);
    }

    /// <summary>How often the box has been judged.</summary>
    internal int Checks => _search.Checks;

    /// <summary>
    /// Chooses; and where something cannot be mended, chooses again without regard to it. Until it is given up it has raised wires and
    /// fuses in vain, and such a fuse may be too large for its wires.
    /// </summary>
    internal Sized Choose()
    {
        Allowance allowed = new();
        Settled best = Settle(allowed);
        Settled latest = best;
        SetAside aside = new(_search, _blame);
        for (int again = 0; again < MostAgain && aside.Add(latest.Whole, latest.Forbids); again++)
        {
            Allowance more = aside.Allowance();
            latest = Settle(more);
            if (IsBetter(latest, best))
            {
                (best, allowed) = (latest, more);
            }
        }

        List<Conflict> conflicts = new ConflictFinder(_search, _blame, _growth, allowed).Find(best.Choice, best.Whole);
        return new Sized(best.Choice, best.Forbids, best.Whole, conflicts);
    }

    /// <summary>So often it is chosen again at most; each takes as long as the first.</summary>
    private const int MostAgain = 4;

    /// <summary>Fewer of the gravest findings; with as many of each severity, less wire.</summary>
    private bool IsBetter(Settled one, Settled other)
    {
        for (Severity severity = Severity.Danger; severity >= Severity.Advice; severity--)
        {
            int few = one.Whole.Standing.Count(f => f.Severity == severity);
            int many = other.Whole.Standing.Count(f => f.Severity == severity);
            if (few != many)
            {
                return few < many;
            }
        }

        return Wire(one.Choice) < Wire(other.Choice);
    }

    private double Wire(int[] choice) =>
        choice.Select((option, value) => _search.Values[value].IsWire ? _search.Values[value].Options[option].Weight : 0).Sum();

    private Settled Settle(Allowance allowed)
    {
        int[] start = new int[_search.Values.Count];
        for (int i = 0; i < start.Length; i++)
        {
            start[i] = _search.Values[i].Start;
        }

        (int[] choice, IReadOnlyList<Finding>[] forbids) = Settle(start, allowed);

        // What was taken from the box as it is written may have hidden something.
        _search.Whole = true;
        if (!_search.Try(choice).Passes(allowed))
        {
            (choice, forbids) = Settle(choice, allowed);
        }

        Trial whole = _search.Try(choice);
        _search.Whole = false;
        return new Settled(choice, forbids, whole);
    }

    private (int[] Choice, IReadOnlyList<Finding>[] Forbids) Settle(int[] start, Allowance allowed)
    {
        Shrinking shrinking = new(_search, allowed);
        int[] choice = shrinking.Shrink(_growth.Grow(start, allowed));
        int[] together = _budgets.Optimise(choice, allowed, shrinking.Forbids);
        while (!Growth.Same(together, choice))
        {
            choice = shrinking.Shrink(together);
            together = _budgets.Optimise(choice, allowed, shrinking.Forbids);
        }

        return (choice, shrinking.Forbids);
    }

    private sealed record Settled(int[] Choice, IReadOnlyList<Finding>[] Forbids, Trial Whole);
}

/// <summary>What <see cref="Sizer"/> chose.</summary>
/// <param name="Choice">Place of an option for each value.</param>
/// <param name="Forbids">What forbids the next smaller option of each.</param>
/// <param name="Whole">What a whole check says.</param>
/// <param name="Conflicts">What stands, and why.</param>
internal sealed record Sized(int[] Choice, IReadOnlyList<Finding>[] Forbids, Trial Whole, IReadOnlyList<Conflict> Conflicts);
