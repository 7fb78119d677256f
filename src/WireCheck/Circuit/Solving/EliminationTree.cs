namespace WireCheck.Circuit.Solving;

/// <summary>The elimination tree of a symmetric matrix (Liu, SIAM J. Matrix Anal. Appl. 11, 1990).</summary>
internal static class EliminationTree
{
    /// <summary>Parent of each column, -1 at a root; the lower half of the matrix given row by row.</summary>
    internal static int[] Parents(int[] rowStart, int[] rowColumns)
    {
        int size = rowStart.Length - 1;
        int[] parent = new int[size];
        int[] ancestor = new int[size];
        for (int row = 0; row < size; row++)
        {
            parent[row] = -1;
            ancestor[row] = -1;
            for (int p = rowStart[row]; p < rowStart[row + 1]; p++)
            {
                int column = rowColumns[p];
                while (column >= 0 && column < row)
                {
                    int next = ancestor[column];
                    ancestor[column] = row;
                    if (next < 0)
                    {
                        parent[column] = row;
                    }

                    column = next;
                }
            }
        }

        return parent;
    }

    /// <summary>The nodes of a tree, each after all its children.</summary>
    internal static int[] PostOrder(int[] parent)
    {
        int size = parent.Length;
        int[] firstChild = new int[size];
        int[] sibling = new int[size];
        Array.Fill(firstChild, -1);
        for (int node = size - 1; node >= 0; node--)
        {
            if (parent[node] >= 0)
            {
                sibling[node] = firstChild[parent[node]];
                firstChild[parent[node]] = node;
            }
        }

        int[] order = new int[size];
        int count = 0;
        Stack<int> open = new();
        for (int root = 0; root < size; root++)
        {
            if (parent[root] >= 0)
            {
                continue;
            }

            open.Push(root);
            while (open.TryPeek(out int node))
            {
                int child = firstChild[node];
                if (child >= 0)
                {
                    firstChild[node] = sibling[child];
                    open.Push(child);
                }
                else
                {
                    order[count++] = open.Pop();
                }
            }
        }

        return order;
    }
}
