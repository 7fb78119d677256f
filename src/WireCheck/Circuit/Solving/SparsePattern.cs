namespace WireCheck.Circuit.Solving;

/// <summary>
/// The pattern of a symmetric matrix in its fill-reducing order, worked out once.
/// </summary>
internal sealed class SparsePattern
{
    private SparsePattern(int[] order, int[] rowStart, int[] rowColumns)
    {
        Size = order.Length;
        Order = order;
        RowStart = rowStart;
        RowColumns = rowColumns;
        Place = new int[Size];
        for (int i = 0; i < Size; i++)
        {
            Place[order[i]] = i;
        }
    }

    /// <summary>Number of unknowns.</summary>
    internal int Size { get; }

    /// <summary>Which unknown is eliminated when.</summary>
    internal int[] Order { get; }

    /// <summary>When an unknown is eliminated.</summary>
    internal int[] Place { get; }

    /// <summary>Start of each permuted row of the matrix's lower half in <see cref="RowColumns"/>.</summary>
    internal int[] RowStart { get; }

    /// <summary>Permuted columns of the lower half, diagonal left out.</summary>
    internal int[] RowColumns { get; }

    /// <summary>Works out the pattern of a matrix whose off-diagonal entries join the given pairs.</summary>
    /// <param name="size">Number of unknowns.</param>
    /// <param name="pairs">Pairs of unknowns; either order, repeats allowed, no unknown with itself.</param>
    internal static SparsePattern Of(int size, IReadOnlyList<(int Row, int Column)> pairs)
    {
        (int[] start, int[] adjacent) = Graph(size, pairs);
        int[] order = PostOrdered(MinimumDegree.Order(start, adjacent), start, adjacent);
        (int[] rowStart, int[] rowColumns) = Permuted(order, start, adjacent);
        return new SparsePattern(order, rowStart, rowColumns);
    }

    /// <summary>Number of the matrix entry between two unknowns, as counted by <see cref="RowColumns"/>.</summary>
    internal int Entry(int first, int second)
    {
        int row = Math.Max(Place[first], Place[second]);
        int column = Math.Min(Place[first], Place[second]);
        return Array.BinarySearch(RowColumns, RowStart[row], RowStart[row + 1] - RowStart[row], column);
    }

    /// <summary>Off-diagonal entries of each column of the factor.</summary>
    internal int[] ColumnCounts(int[] parent)
    {
        int[] mark = new int[Size];
        Array.Fill(mark, -1);
        int[] count = new int[Size];
        for (int row = 0; row < Size; row++)
        {
            mark[row] = row;
            for (int p = RowStart[row]; p < RowStart[row + 1]; p++)
            {
                for (int column = RowColumns[p]; mark[column] != row; column = parent[column])
                {
                    mark[column] = row;
                    count[column]++;
                }
            }
        }

        return count;
    }

    /// <summary>The lower half by columns: start of each, rows, and the number of each entry.</summary>
    internal (int[] Start, int[] Rows, int[] Entries) ByColumns()
    {
        int[] start = new int[Size + 1];
        Array.ForEach(RowColumns, column => start[column + 1]++);
        for (int i = 0; i < Size; i++)
        {
            start[i + 1] += start[i];
        }

        int[] next = start[..Size];
        int[] rows = new int[RowColumns.Length];
        int[] entries = new int[RowColumns.Length];
        for (int row = 0; row < Size; row++)
        {
            for (int p = RowStart[row]; p < RowStart[row + 1]; p++)
            {
                int place = next[RowColumns[p]]++;
                (rows[place], entries[place]) = (row, p);
            }
        }

        return (start, rows, entries);
    }

    private static (int[] Start, int[] Adjacent) Graph(int size, IReadOnlyList<(int Row, int Column)> pairs)
    {
        int[] start = new int[size + 1];
        foreach ((int row, int column) in pairs)
        {
            start[row + 1]++;
            start[column + 1]++;
        }

        for (int i = 0; i < size; i++)
        {
            start[i + 1] += start[i];
        }

        int[] next = start[..size];
        int[] all = new int[start[size]];
        foreach ((int row, int column) in pairs)
        {
            all[next[row]++] = column;
            all[next[column]++] = row;
        }

        return WithoutRepeats(size, start, all);
    }

    private static (int[] Start, int[] Adjacent) WithoutRepeats(int size, int[] start, int[] all)
    {
        int[] seen = new int[size];
        Array.Fill(seen, -1);
        int[] newStart = new int[size + 1];
        int write = 0;
        for (int i = 0; i < size; i++)
        {
            int from = start[i];
            newStart[i] = write;
            for (int p = from; p < start[i + 1]; p++)
            {
                if (seen[all[p]] != i)
                {
                    seen[all[p]] = i;
                    all[write++] = all[p];
                }
            }
        }

        newStart[size] = write;
        return (newStart, all[..write]);
    }

    /// <summary>The same elimination tree, numbered so that each subtree is one run: neighbours in memory.</summary>
    private static int[] PostOrdered(int[] order, int[] start, int[] adjacent)
    {
        (int[] rowStart, int[] rowColumns) = Permuted(order, start, adjacent);
        int[] post = EliminationTree.PostOrder(EliminationTree.Parents(rowStart, rowColumns));
        return [.. post.Select(p => order[p])];
    }

    private static (int[] RowStart, int[] RowColumns) Permuted(int[] order, int[] start, int[] adjacent)
    {
        int size = order.Length;
        int[] place = new int[size];
        for (int i = 0; i < size; i++)
        {
            place[order[i]] = i;
        }

        int[] rowStart = new int[size + 1];
        int[] rowColumns = new int[adjacent.Length / 2];
        int write = 0;
        for (int row = 0; row < size; row++)
        {
            rowStart[row] = write;
            int unknown = order[row];
            for (int p = start[unknown]; p < start[unknown + 1]; p++)
            {
                int column = place[adjacent[p]];
                if (column < row)
                {
                    rowColumns[write++] = column;
                }
            }

            Array.Sort(rowColumns, rowStart[row], write - rowStart[row]);
        }

        rowStart[size] = write;
        return (rowStart, rowColumns);
    }
}
