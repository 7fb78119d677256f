using WireCheck.Circuit.Solving;

namespace WireCheck.Tests.Circuit.Solving;

/// <summary>The update against a factor of the changed matrix itself.</summary>
public class LowRankUpdateTests
{
    private const int Size = 30;

    [Theory]
    [InlineData(11)]
    [InlineData(12)]
    [InlineData(13)]
    public void Added_conductances_give_what_a_new_factor_gives(int seed)
    {
        Random random = new(seed);
        (SparsePattern pattern, double[] diagonal, double[] entries) = Ladder(random);
        SparseFactor factor = new(pattern);
        factor.Factor(diagonal, entries);
        double[] right = [.. Enumerable.Range(0, Size).Select(_ => random.NextDouble())];
        BranchPair[] pairs = [new(3, 4), new(10, -1), new(-1, 20)];
        double[] siemens = [5, 0, 0.25];
        LowRankUpdate update = new(factor, Size, pairs, pairs);
        update.Prepare(siemens).ShouldBeTrue();
        double[] updated = [.. right];
        update.Solve(updated);

        Residual(diagonal, entries, pattern, pairs, pairs, siemens, updated, right).ShouldBeLessThan(1e-10);
    }

    [Fact]
    public void A_current_steered_from_elsewhere_is_solved_though_the_matrix_is_not_symmetric()
    {
        Random random = new(5);
        (SparsePattern pattern, double[] diagonal, double[] entries) = Ladder(random);
        SparseFactor factor = new(pattern);
        factor.Factor(diagonal, entries);
        double[] right = [.. Enumerable.Range(0, Size).Select(_ => random.NextDouble())];
        BranchPair[] into = [new(2, 7), new(0, 1)];
        BranchPair[] from = [new(25, 26), new(14, -1)];
        double[] siemens = [-0.4, 3];
        LowRankUpdate update = new(factor, Size, into, from);
        update.Prepare(siemens).ShouldBeTrue();
        double[] updated = [.. right];
        update.Solve(updated);
        Residual(diagonal, entries, pattern, into, from, siemens, updated, right).ShouldBeLessThan(1e-10);
    }

    [Fact]
    public void A_change_that_leaves_nothing_to_solve_is_refused()
    {
        // One unknown held by 2 S; taking the 2 S away leaves it loose.
        SparsePattern pattern = SparsePattern.Of(1, []);
        SparseFactor factor = new(pattern);
        factor.Factor([2], []);
        BranchPair[] pair = [new(0, -1)];
        LowRankUpdate update = new(factor, 1, pair, pair);
        update.Prepare([-2]).ShouldBeFalse();
        double[] right = [4];
        update.Solve(right);
        right[0].ShouldBe(2);
    }

    private static (SparsePattern Pattern, double[] Diagonal, double[] Entries) Ladder(Random random)
    {
        List<(int, int)> pairs = [.. Enumerable.Range(1, Size - 1).Select(i => (i - 1, i)), (0, 9), (5, 22), (12, 29)];
        SparsePattern pattern = SparsePattern.Of(Size, pairs);
        double[] diagonal = new double[Size];
        double[] entries = new double[pattern.RowColumns.Length];
        Array.Fill(diagonal, 0.1);
        foreach ((int a, int b) in pairs)
        {
            double siemens = 0.5 + random.NextDouble();
            entries[pattern.Entry(a, b)] -= siemens;
            diagonal[pattern.Place[a]] += siemens;
            diagonal[pattern.Place[b]] += siemens;
        }

        return (pattern, diagonal, entries);
    }

    /// <summary>What is left over of the changed equations, worked out entry by entry.</summary>
    private static double Residual(
        double[] diagonal,
        double[] entries,
        SparsePattern pattern,
        BranchPair[] into,
        BranchPair[] from,
        double[] siemens,
        double[] answer,
        double[] right)
    {
        double[] left = [.. right.Select((value, i) => (diagonal[i] * answer[i]) - value)];
        for (int row = 0; row < Size; row++)
        {
            for (int p = pattern.RowStart[row]; p < pattern.RowStart[row + 1]; p++)
            {
                left[row] += entries[p] * answer[pattern.RowColumns[p]];
                left[pattern.RowColumns[p]] += entries[p] * answer[row];
            }
        }

        for (int k = 0; k < siemens.Length; k++)
        {
            into[k].AddTo(left, siemens[k] * from[k].Times(answer));
        }

        return left.Max(Math.Abs);
    }
}
