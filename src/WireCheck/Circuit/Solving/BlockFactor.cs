using System.Numerics;
using System.Runtime.InteropServices;

namespace WireCheck.Circuit.Solving;

/// <summary>
/// The factor of a large matrix, block by block from the left: a block takes the matrix's entries, then what each
/// earlier block with rows in its columns has to subtract, and is then factored by itself. Blocks are dense and lie
/// column by column, so that all heavy work runs along memory.
/// </summary>
internal sealed class BlockFactor : SymmetricFactor
{
    private readonly Supernodes _blocks;
    private readonly int[] _columnStart;
    private readonly int[] _columnRows;
    private readonly int[] _columnEntries;
    private readonly long[] _start;
    private readonly double[] _values;
    private readonly double[] _pivot;
    private readonly int[] _local;
    private readonly int[] _waiting;
    private readonly int[] _next;
    private readonly int[] _reached;
    private readonly double[] _update;
    private readonly double[] _gathered;

    internal BlockFactor(SparsePattern pattern)
    {
        _blocks = Supernodes.Of(pattern);
        (_columnStart, _columnRows, _columnEntries) = pattern.ByColumns();
        _start = new long[_blocks.Count + 1];
        int tallest = 0;
        for (int block = 0; block < _blocks.Count; block++)
        {
            int height = _blocks.Rows[block].Length;
            tallest = Math.Max(tallest, height);
            _start[block + 1] = _start[block] + ((long)height * Width(block));
        }

        _values = new double[_start[^1]];
        _pivot = new double[pattern.Size];
        _local = new int[pattern.Size];
        _waiting = new int[_blocks.Count];
        _next = new int[_blocks.Count];
        _reached = new int[_blocks.Count];
        _update = new double[tallest];
        _gathered = new double[tallest];
    }

    internal override void Factor(double[] diagonal, double[] entries)
    {
        NegativePivots = 0;
        Array.Clear(_values);
        Array.Fill(_waiting, -1);
        for (int block = 0; block < _blocks.Count; block++)
        {
            TakeEntries(block, diagonal, entries);
            int earlier = _waiting[block];
            while (earlier >= 0)
            {
                int after = _next[earlier];
                SubtractFrom(block, earlier);
                earlier = after;
            }

            FactorBlock(block, diagonal);
            _reached[block] = Width(block);
            Await(block);
        }
    }

    internal override void Solve(double[] right)
    {
        for (int block = 0; block < _blocks.Count; block++)
        {
            int[] rows = _blocks.Rows[block];
            Span<double> gathered = _gathered.AsSpan(0, rows.Length);
            gathered.Clear();
            for (int k = 0; k < Width(block); k++)
            {
                double value = right[rows[k]] + gathered[k];
                right[rows[k]] = value;
                AddMultiple(gathered[(k + 1)..], Column(block, k)[(k + 1)..], -value);
            }

            for (int i = Width(block); i < rows.Length; i++)
            {
                right[rows[i]] += gathered[i];
            }
        }

        for (int block = _blocks.Count - 1; block >= 0; block--)
        {
            int[] rows = _blocks.Rows[block];
            Span<double> gathered = _gathered.AsSpan(0, rows.Length);
            for (int i = 0; i < rows.Length; i++)
            {
                gathered[i] = right[rows[i]];
            }

            for (int k = Width(block) - 1; k >= 0; k--)
            {
                gathered[k] = (gathered[k] / _pivot[rows[k]]) - Product(gathered[(k + 1)..], Column(block, k)[(k + 1)..]);
                right[rows[k]] = gathered[k];
            }
        }
    }

    private int Width(int block) => _blocks.First[block + 1] - _blocks.First[block];

    private Span<double> Column(int block, int column)
    {
        int height = _blocks.Rows[block].Length;
        return _values.AsSpan((int)(_start[block] + ((long)column * height)), height);
    }

    private void TakeEntries(int block, double[] diagonal, double[] entries)
    {
        int[] rows = _blocks.Rows[block];
        for (int i = 0; i < rows.Length; i++)
        {
            _local[rows[i]] = i;
        }

        int first = _blocks.First[block];
        for (int column = first; column < _blocks.First[block + 1]; column++)
        {
            Span<double> values = Column(block, column - first);
            values[column - first] = diagonal[column];
            for (int p = _columnStart[column]; p < _columnStart[column + 1]; p++)
            {
                values[_local[_columnRows[p]]] = entries[_columnEntries[p]];
            }
        }
    }

    /// <summary>Subtracts what an earlier block contributes, then leaves it waiting for the next block it reaches.</summary>
    private void SubtractFrom(int block, int earlier)
    {
        int[] rows = _blocks.Rows[earlier];
        int begin = _reached[earlier];
        int end = begin;
        int limit = _blocks.First[block + 1];
        while (end < rows.Length && rows[end] < limit)
        {
            end++;
        }

        int first = _blocks.First[block];
        for (int j = begin; j < end; j++)
        {
            Span<double> update = _update.AsSpan(0, rows.Length - j);
            update.Clear();
            Accumulate(update, earlier, Width(earlier), j);
            Span<double> target = Column(block, rows[j] - first);
            for (int i = 0; i < update.Length; i++)
            {
                target[_local[rows[j + i]]] += update[i];
            }
        }

        _reached[earlier] = end;
        Await(earlier);
    }

    private void Await(int block)
    {
        int[] rows = _blocks.Rows[block];
        if (_reached[block] < rows.Length)
        {
            int target = _blocks.OfColumn[rows[_reached[block]]];
            _next[block] = _waiting[target];
            _waiting[target] = block;
        }
    }

    private void FactorBlock(int block, double[] diagonal)
    {
        int first = _blocks.First[block];
        for (int column = 0; column < Width(block); column++)
        {
            Span<double> values = Column(block, column)[column..];
            Accumulate(values, block, column, column);
            double pivot = Usable(values[0], diagonal[first + column]);
            _pivot[first + column] = pivot;
            double inverse = 1 / pivot;
            for (int i = 1; i < values.Length; i++)
            {
                values[i] *= inverse;
            }
        }
    }

    /// <summary>Adds -Σ L[i,k] d_k L[j,k] over the first columns k of a block to the rows from j on, four columns at once.</summary>
    private void Accumulate(Span<double> sum, int block, int columns, int j)
    {
        int height = _blocks.Rows[block].Length;
        ReadOnlySpan<double> values = _values.AsSpan((int)_start[block], columns * height);
        ReadOnlySpan<double> pivots = _pivot.AsSpan(_blocks.First[block], columns);
        int k = 0;
        for (; k + 4 <= columns; k += 4)
        {
            int at = (k * height) + j;
            (double f0, double f1) = (-pivots[k] * values[at], -pivots[k + 1] * values[at + height]);
            (double f2, double f3) = (-pivots[k + 2] * values[at + (2 * height)], -pivots[k + 3] * values[at + (3 * height)]);
            ReadOnlySpan<double> c0 = values.Slice(at, sum.Length);
            ReadOnlySpan<double> c1 = values.Slice(at + height, sum.Length);
            ReadOnlySpan<double> c2 = values.Slice(at + (2 * height), sum.Length);
            ReadOnlySpan<double> c3 = values.Slice(at + (3 * height), sum.Length);
            Span<Vector<double>> s = Vectors(sum);
            int i = s.Length * Vector<double>.Count;
            ReadOnlySpan<Vector<double>> v0 = Vectors(c0);
            ReadOnlySpan<Vector<double>> v1 = Vectors(c1);
            ReadOnlySpan<Vector<double>> v2 = Vectors(c2);
            ReadOnlySpan<Vector<double>> v3 = Vectors(c3);
            for (int v = 0; v < s.Length; v++)
            {
                s[v] += (v0[v] * f0) + (v1[v] * f1) + ((v2[v] * f2) + (v3[v] * f3));
            }

            for (; i < sum.Length; i++)
            {
                sum[i] += (c0[i] * f0) + (c1[i] * f1) + ((c2[i] * f2) + (c3[i] * f3));
            }
        }

        for (; k < columns; k++)
        {
            int at = (k * height) + j;
            AddMultiple(sum, values.Slice(at, sum.Length), -pivots[k] * values[at]);
        }
    }

    private static void AddMultiple(Span<double> sum, ReadOnlySpan<double> values, double factor)
    {
        Span<Vector<double>> s = Vectors(sum);
        ReadOnlySpan<Vector<double>> v = Vectors(values);
        for (int i = 0; i < s.Length; i++)
        {
            s[i] += v[i] * factor;
        }

        for (int i = s.Length * Vector<double>.Count; i < sum.Length; i++)
        {
            sum[i] += values[i] * factor;
        }
    }

    private static double Product(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        double sum = 0;
        for (int i = 0; i < left.Length; i++)
        {
            sum += left[i] * right[i];
        }

        return sum;
    }

    private static Span<Vector<double>> Vectors(Span<double> values) => MemoryMarshal.Cast<double, Vector<double>>(values);

    private static ReadOnlySpan<Vector<double>> Vectors(ReadOnlySpan<double> values) => MemoryMarshal.Cast<double, Vector<double>>(values);
}
