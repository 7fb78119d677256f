namespace WireCheck.Circuit.Solving;

/// <summary>
/// The pattern of a symmetric matrix and of its factor, worked out once: fill-reducing order, elimination tree,
/// and for each row of L its columns in an order in which they can be eliminated.
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

        ColumnStart = [];
        FactorRowStart = [];
        FactorRowColumns = [];
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

    /// <summary>Start of each column of L.</summary>
    internal int[] ColumnStart { get; private set; }

    /// <summary>Start of each row of L in <see cref="FactorRowColumns"/>.</summary>
    internal int[] FactorRowStart { get; private set; }

    /// <summary>Columns of each row of L, every column after those that change it.</summary>
    internal int[] FactorRowColumns { get; private set; }

    /// <summary>Off-diagonal entries of the factor.</summary>
    internal int FactorEntries => FactorRowColumns.Length;

    /// <summary>Works out the pattern of a matrix whose off-diagonal entries join the given pairs.</summary>
    /// <param name="size">Number of unknowns.</param>
    /// <param name="pairs">Pairs of unknowns; either order, repeats allowed, no unknown with itself.</param>
    internal static SparsePattern Of(int size, IReadOnlyList<(int Row, int Column)> pairs)
    {
        (int[] start, int[] adjacent) = Graph(size, pairs);
        int[] order = PostOrdered(MinimumDegree.Order(start, adjacent), start, adjacent);
        (int[] rowStart, int[] rowColumns) = Permuted(order, start, adjacent);
        SparsePattern pattern = new(order, rowStart, rowColumns);
        pattern.FindFactor();
        return pattern;
    }

    /// <summary>Number of the matrix entry between two unknowns, as counted by <see cref="RowColumns"/>.</summary>
    internal int Entry(int first, int second)
    {
        int row = Math.Max(Place[first], Place[second]);
        int column = Math.Min(Place[first], Place[second]);
        return Array.BinarySearch(RowColumns, RowStart[row], RowStart[row + 1] - RowStart[row], column);
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

    private void FindFactor()
    {
        int[] parent = EliminationTree.Parents(RowStart, RowColumns);
        int[] mark = new int[Size];
        Array.Fill(mark, -1);
        int[] columnCount = new int[Size + 1];
        FactorRowStart = new int[Size + 1];
        List<int> columns = new(RowColumns.Length * 4);
        for (int row = 0; row < Size; row++)
        {
            int begin = columns.Count;
            mark[row] = row;
            for (int p = RowStart[row]; p < RowStart[row + 1]; p++)
            {
                for (int column = RowColumns[p]; mark[column] != row; column = parent[column])
                {
                    mark[column] = row;
                    columns.Add(column);
                    columnCount[column + 1]++;
                }
            }

            // In a post-ordered tree a column never changes one with a smaller number.
            columns.Sort(begin, columns.Count - begin, null);
            FactorRowStart[row + 1] = columns.Count;
        }

        for (int i = 0; i < Size; i++)
        {
            columnCount[i + 1] += columnCount[i];
        }

        ColumnStart = columnCount;
        FactorRowColumns = [.. columns];
    }
}
