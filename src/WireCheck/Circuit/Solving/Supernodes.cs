namespace WireCheck.Circuit.Solving;

/// <summary>
/// Runs of columns of L that share their rows below, so that they can be worked on as one dense block (Ng and Peyton,
/// SIAM J. Sci. Comput. 14, 1993). Neighbours whose rows nearly agree are put together at the cost of a few zeros.
/// </summary>
internal sealed class Supernodes
{
    /// <summary>Widest block: at the heights that occur it still lies in the second-level cache.</summary>
    private const int MostColumns = 64;

    private Supernodes(int[] first, int[] ofColumn, int[][] rows)
    {
        First = first;
        OfColumn = ofColumn;
        Rows = rows;
    }

    /// <summary>First column of each block, and one more at the end.</summary>
    internal int[] First { get; }

    /// <summary>The block a column lies in.</summary>
    internal int[] OfColumn { get; }

    /// <summary>All rows of each block in ascending order, its own columns first.</summary>
    internal int[][] Rows { get; }

    internal int Count => Rows.Length;

    internal static Supernodes Of(SparsePattern pattern)
    {
        int[] parent = EliminationTree.Parents(pattern.RowStart, pattern.RowColumns);
        int[] first = Join(parent, pattern.ColumnCounts(parent));
        int[] ofColumn = new int[pattern.Size];
        for (int block = 0; block + 1 < first.Length; block++)
        {
            Array.Fill(ofColumn, block, first[block], first[block + 1] - first[block]);
        }

        return new Supernodes(first, ofColumn, FindRows(pattern, parent, first, ofColumn));
    }

    private static int[] Join(int[] parent, int[] count)
    {
        List<int> first = [];
        List<long> zeros = [];
        int size = parent.Length;
        for (int begin = 0; begin < size;)
        {
            int end = begin + 1;
            while (end < size && parent[end - 1] == end && count[end] == count[end - 1] - 1 && end - begin < MostColumns)
            {
                end++;
            }

            int from = begin;
            long added = 0;
            while (first.Count > 0 && parent[from - 1] == from)
            {
                int width = end - first[^1];
                long more = zeros[^1] + added + ((long)(from - first[^1]) * (count[end - 1] + (end - from) - count[from - 1]));
                double share = (double)more / (width * (long)(count[end - 1] + width));
                if (width > MostColumns || share > (width <= 8 ? 0.4 : width <= 24 ? 0.15 : 0.05))
                {
                    break;
                }

                (from, added) = (first[^1], more);
                first.RemoveAt(first.Count - 1);
                zeros.RemoveAt(zeros.Count - 1);
            }

            first.Add(from);
            zeros.Add(added);
            begin = end;
        }

        return [.. first, size];
    }

    /// <summary>A block's rows are those of the matrix in its columns and those of the blocks below it in the tree.</summary>
    private static int[][] FindRows(SparsePattern pattern, int[] parent, int[] first, int[] ofColumn)
    {
        (int[] columnStart, int[] columnRows, _) = pattern.ByColumns();
        int[][] rows = new int[first.Length - 1][];
        int[] lastChild = new int[rows.Length];
        int[] sibling = new int[rows.Length];
        Array.Fill(lastChild, -1);
        int[] mark = new int[pattern.Size];
        Array.Fill(mark, -1);
        List<int> found = [];
        for (int block = 0; block < rows.Length; block++)
        {
            found.Clear();
            (int begin, int end) = (first[block], first[block + 1]);
            void Take(ReadOnlySpan<int> candidates)
            {
                foreach (int row in candidates)
                {
                    if (row >= end && mark[row] != block)
                    {
                        mark[row] = block;
                        found.Add(row);
                    }
                }
            }

            Take(columnRows.AsSpan(columnStart[begin], columnStart[end] - columnStart[begin]));
            for (int child = lastChild[block]; child >= 0; child = sibling[child])
            {
                Take(rows[child]);
            }

            found.Sort();
            rows[block] = [.. Enumerable.Range(begin, end - begin), .. found];
            if (found.Count > 0)
            {
                int above = ofColumn[parent[end - 1]];
                sibling[block] = lastChild[above];
                lastChild[above] = block;
            }
        }

        return rows;
    }
}
