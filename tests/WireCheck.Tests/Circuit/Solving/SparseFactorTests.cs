using WireCheck.Circuit.Solving;

namespace WireCheck.Tests.Circuit.Solving;

/// <summary>The sparse factor against dense elimination, and its order against the natural one.</summary>
public class SparseFactorTests
{
    [Theory]
    [InlineData(1, 40, false)]
    [InlineData(2, 120, false)]
    [InlineData(3, 300, false)]
    [InlineData(4, 40, true)]
    [InlineData(5, 120, true)]
    [InlineData(6, 300, true)]
    [InlineData(7, 1, true)]
    public void Its_answer_leaves_nothing_over_in_the_dense_matrix(int seed, int size, bool inBlocks)
    {
        Random random = new(seed);
        List<(int, int)> pairs = [];
        double[,] dense = new double[size, size];
        for (int i = 0; i < size; i++)
        {
            dense[i, i] += 0.01;
        }

        for (int k = 0; k < size * 3; k++)
        {
            (int a, int b) = (random.Next(size), random.Next(size));
            if (a != b)
            {
                double g = random.NextDouble() + 0.1;
                pairs.Add((a, b));
                dense[a, a] += g;
                dense[b, b] += g;
                dense[a, b] -= g;
                dense[b, a] -= g;
            }
        }

        SparsePattern pattern = SparsePattern.Of(size, pairs);
        pattern.Order.Order().ShouldBe(Enumerable.Range(0, size));
        double[] diagonal = new double[size];
        double[] entries = new double[pattern.RowColumns.Length];
        for (int i = 0; i < size; i++)
        {
            diagonal[pattern.Place[i]] = dense[i, i];
        }

        foreach ((int a, int b) in pairs)
        {
            entries[pattern.Entry(a, b)] = dense[a, b];
        }

        SymmetricFactor factor = inBlocks ? new BlockFactor(pattern) : new SparseFactor(pattern);
        factor.Factor(diagonal, entries);
        double[] right = [.. Enumerable.Range(0, size).Select(_ => random.NextDouble())];
        double[] step = [.. pattern.Order.Select(unknown => right[unknown])];
        factor.Solve(step);
        for (int row = 0; row < size; row++)
        {
            double sum = 0;
            for (int column = 0; column < size; column++)
            {
                sum += dense[row, column] * step[pattern.Place[column]];
            }

            sum.ShouldBe(right[row], 1e-9);
        }

        factor.NegativePivots.ShouldBe(0);
    }

    [Fact]
    public void On_a_grid_the_order_fills_in_far_less_than_the_rows_of_the_grid_do()
    {
        // A banded factor of an n by n grid holds about n³ entries: 64,000 for n = 40.
        const int Side = 40;
        List<(int, int)> pairs = [];
        for (int y = 0; y < Side; y++)
        {
            for (int x = 0; x < Side; x++)
            {
                if (x > 0)
                {
                    pairs.Add(((y * Side) + x, (y * Side) + x - 1));
                }

                if (y > 0)
                {
                    pairs.Add(((y * Side) + x, ((y - 1) * Side) + x));
                }
            }
        }

        FactorRows.Of(SparsePattern.Of(Side * Side, pairs)).Columns.Length.ShouldBeLessThan(Side * Side * Side / 3);
    }
}
