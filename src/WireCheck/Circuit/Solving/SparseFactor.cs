namespace WireCheck.Circuit.Solving;

/// <summary>The factor of a small matrix, row by row.</summary>
internal sealed class SparseFactor : SymmetricFactor
{
    private readonly SparsePattern _pattern;
    private readonly FactorRows _factorRows;
    private readonly int[] _rows;
    private readonly double[] _values;
    private readonly double[] _inverse;
    private readonly double[] _work;
    private readonly int[] _filled;

    internal SparseFactor(SparsePattern pattern)
    {
        _pattern = pattern;
        _factorRows = FactorRows.Of(pattern);
        _rows = new int[_factorRows.Columns.Length];
        _values = new double[_factorRows.Columns.Length];
        _inverse = new double[pattern.Size];
        _work = new double[pattern.Size];
        _filled = new int[pattern.Size];
        FindRows();
    }

    internal override void Factor(double[] diagonal, double[] entries)
    {
        int[] columnStart = _factorRows.ColumnStart;
        int[] rowStart = _pattern.RowStart;
        int[] rowColumns = _pattern.RowColumns;
        int[] factorStart = _factorRows.Start;
        int[] factorColumns = _factorRows.Columns;
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

    internal override void Solve(double[] right)
    {
        int[] columnStart = _factorRows.ColumnStart;
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

    /// <summary>Row numbers of each column of L; they never change, so they are written once.</summary>
    private void FindRows()
    {
        int[] filled = _factorRows.ColumnStart[.._pattern.Size];
        for (int row = 0; row < _pattern.Size; row++)
        {
            for (int p = _factorRows.Start[row]; p < _factorRows.Start[row + 1]; p++)
            {
                _rows[filled[_factorRows.Columns[p]]++] = row;
            }
        }
    }
}
