namespace WireCheck.Circuit.Solving;

/// <summary>The pattern of a factor by rows, each row's columns after those that change them.</summary>
/// <param name="ColumnStart">Start of each column of L.</param>
/// <param name="Start">Start of each row of L in <paramref name="Columns"/>.</param>
/// <param name="Columns">Columns of each row.</param>
internal sealed record FactorRows(int[] ColumnStart, int[] Start, int[] Columns)
{
    internal static FactorRows Of(SparsePattern pattern)
    {
        int[] parent = EliminationTree.Parents(pattern.RowStart, pattern.RowColumns);
        int[] mark = new int[pattern.Size];
        Array.Fill(mark, -1);
        int[] start = new int[pattern.Size + 1];
        List<int> columns = new(pattern.RowColumns.Length * 4);
        for (int row = 0; row < pattern.Size; row++)
        {
            int begin = columns.Count;
            mark[row] = row;
            for (int p = pattern.RowStart[row]; p < pattern.RowStart[row + 1]; p++)
            {
                for (int column = pattern.RowColumns[p]; mark[column] != row; column = parent[column])
                {
                    mark[column] = row;
                    columns.Add(column);
                }
            }

            // In a post-ordered tree a column never changes one with a smaller number.
            columns.Sort(begin, columns.Count - begin, null);
            start[row + 1] = columns.Count;
        }

        int[] columnStart = new int[pattern.Size + 1];
        columns.ForEach(column => columnStart[column + 1]++);
        for (int i = 0; i < pattern.Size; i++)
        {
            columnStart[i + 1] += columnStart[i];
        }

        return new FactorRows(columnStart, start, [.. columns]);
    }
}
