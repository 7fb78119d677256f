namespace WireCheck.Text;

/// <summary>Finds the name a builder probably meant.</summary>
public static class NearestName
{
    /// <summary>
    /// The candidate with the fewest single-letter edits (insertion, deletion, replacement, swap of
    /// neighbours) from <paramref name="written"/>, case ignored; null when none is within a third of its
    /// length (at least 2). Of two, the one whose letters lie nearer in the alphabet (87 before 85 for 88),
    /// then the first.
    /// </summary>
    public static string? Find(string written, IEnumerable<string> candidates)
    {
        string? best = null;
        int limit = Math.Max(2, written.Length / 3);
        int gap = int.MaxValue;
        foreach (string candidate in candidates)
        {
            if (Math.Abs(candidate.Length - written.Length) > limit)
            {
                continue;
            }

            int distance = Distance(written.ToLowerInvariant(), candidate.ToLowerInvariant());
            if (distance < limit || (distance == limit && Gap(written, candidate) < gap))
            {
                best = candidate;
                limit = distance;
                gap = Gap(written, candidate);
            }
        }

        return best;
    }

    /// <summary>Damerau's distance (optimal string alignment): the number of single-letter edits between two words.</summary>
    internal static int Distance(string left, string right)
    {
        int[,] cost = new int[left.Length + 1, right.Length + 1];
        for (int i = 0; i <= left.Length; i++)
        {
            for (int j = 0; j <= right.Length; j++)
            {
                cost[i, j] = i == 0 || j == 0 ? i + j : CellCost(cost, left, right, i, j);
            }
        }

        return cost[left.Length, right.Length];
    }

    private static int Gap(string left, string right) =>
        left.Zip(right, (l, r) => Math.Abs(l - r)).Sum() + (100 * Math.Abs(left.Length - right.Length));

    private static int CellCost(int[,] cost, string left, string right, int i, int j)
    {
        int replace = left[i - 1] == right[j - 1] ? 0 : 1;
        int best = Math.Min(Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1, cost[i - 1, j - 1] + replace);
        bool swapped = i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1];
        return swapped ? Math.Min(best, cost[i - 2, j - 2] + 1) : best;
    }
}
