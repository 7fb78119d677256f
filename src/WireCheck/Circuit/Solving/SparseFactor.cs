namespace WireCheck.Circuit.Solving;

/// <summary>
/// Factor L D Lᵀ of a symmetric matrix by rows, without exchange of pivots. A resistive network is positive
/// definite; constant-power parts make it at worst mildly indefinite, and <see cref="NegativePivots"/> then tells
/// that the state is not a stable one.
/// </summary>
internal sealed class SparseFactor
{
    private readonly SparsePattern _pattern;
    private readonly int[] _rows;
    private readonly double[] _values;
    private readonly double[] _inverse;
    private readonly double[] _work;
    private readonly int[] _filled;

    internal SparseFactor(SparsePattern pattern)
    {
        _pattern = pattern;
        _rows = new int[pattern.FactorEntries];
        _values = new double[pattern.FactorEntries];
        _inverse = new double[pattern.Size];
        _work = new double[pattern.Size];
        _filled = new int[pattern.Size];
        FindRows();
    }

    /// <summary>Pivots below zero in the last factoring.</summary>
    internal int NegativePivots { get; private set; }

    /// <summary>
    /// Factors a matrix. A pivot that rounding leaves without a significant digit is replaced by its own scale, which
    /// slows Newton's method and does not change where it ends.
    /// </summary>
    /// <param name="diagonal">Diagonal in elimination order.</param>
    /// <param name="entries">Off-diagonal entries in the order of <see cref="SparsePattern.RowColumns"/>.</param>
    internal void Factor(double[] diagonal, double[] entries)
    {
        int[] columnStart = _pattern.ColumnStart;
        int[] rowStart = _pattern.RowStart;
        int[] rowColumns = _pattern.RowColumns;
        int[] factorStart = _pattern.FactorRowStart;
        int[] factorColumns = _pattern.FactorRowColumns;
        double[] work = _work;
        double[] values = _values;
        int[] rows = _rows;
        NegativePivots = 0;
        Array.Copy(columnStart, _filled, _filled.Length);
        for (int row = 0; row < diagonal.Length; row++)
        {
            for (int p = rowStart[row]; p < rowStart[row + 1]; p++)
            {
                work[rowColumns[p]] = entries[p];
            }

            double pivot = diagonal[row];
            for (int p = factorStart[row]; p < factorStart[row + 1]; p++)
            {
                int column = factorColumns[p];
                double value = work[column];
                work[column] = 0;
                int end = _filled[column];
                for (int q = columnStart[column]; q < end; q++)
                {
                    work[rows[q]] -= values[q] * value;
                }

                double scaled = value * _inverse[column];
                pivot -= scaled * value;
                values[end] = scaled;
                _filled[column] = end + 1;
            }

            work[row] = 0;
            _inverse[row] = 1 / Usable(pivot, diagonal[row]);
        }
    }

    /// <summary>Solves in place; the right side and the answer are in elimination order.</summary>
    internal void Solve(double[] right)
    {
        int[] columnStart = _pattern.ColumnStart;
        int[] rows = _rows;
        double[] values = _values;
        for (int column = 0; column < right.Length; column++)
        {
            double value = right[column];
            if (value != 0)
            {
                for (int p = columnStart[column]; p < columnStart[column + 1]; p++)
                {
                    right[rows[p]] -= values[p] * value;
                }
            }
        }

        for (int column = right.Length - 1; column >= 0; column--)
        {
            double sum = right[column] * _inverse[column];
            for (int p = columnStart[column]; p < columnStart[column + 1]; p++)
            {
                sum -= values[p] * right[rows[p]];
            }

            right[column] = sum;
        }
    }

    private double Usable(double pivot, double diagonal)
    {
        double scale = Math.Max(Math.Abs(diagonal), 1e-12);
        if (Math.Abs(pivot) < 1e-14 * scale)
        {
            return scale;
        }

        if (pivot < 0)
        {
            NegativePivots++;
        }

        return pivot;
    }

    /// <summary>Row numbers of each column of L; they never change, so they are written once.</summary>
    private void FindRows()
    {
        int[] filled = _pattern.ColumnStart[.._pattern.Size];
        for (int row = 0; row < _pattern.Size; row++)
        {
            for (int p = _pattern.FactorRowStart[row]; p < _pattern.FactorRowStart[row + 1]; p++)
            {
                _rows[filled[_pattern.FactorRowColumns[p]]++] = row;
            }
        }
    }
}
