using WireCheck.Findings;

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

    /// <summary>Chooses.</summary>
    internal Sized Choose()
    {
        int[] start = new int[_search.Values.Count];
        for (int i = 0; i < start.Length; i++)
        {
            start[i] = _search.Values[i].Start;
        }

        Allowance allowed = new();
        (int[] choice, IReadOnlyList<Finding>[] forbids) = Settle(start, allowed);

        // What was taken from the box as it is written may have hidden something.
        _search.Whole = true;
        if (!_search.Try(choice).Passes(allowed))
        {
            (choice, forbids) = Settle(choice, allowed);
        }

        Trial whole = _search.Try(choice);
        _search.Whole = false;
        List<Conflict> conflicts = new ConflictFinder(_search, _blame, _growth, allowed).Find(choice, whole);
        return new Sized(choice, forbids, whole, conflicts);
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
}

/// <summary>What <see cref="Sizer"/> chose.</summary>
/// <param name="Choice">Place of an option for each value.</param>
/// <param name="Forbids">What forbids the next smaller option of each.</param>
/// <param name="Whole">What a whole check says.</param>
/// <param name="Conflicts">What stands, and why.</param>
internal sealed record Sized(int[] Choice, IReadOnlyList<Finding>[] Forbids, Trial Whole, IReadOnlyList<Conflict> Conflicts);
