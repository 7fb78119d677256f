namespace WireCheck.Switching;

/// <summary>Switches that together make something live: those that must be closed and those that must be open.</summary>
/// <param name="Closed">Ids of switches that must be closed.</param>
/// <param name="Open">Ids of switches that must be open; empty but where a change-over or a rest contact is in the way.</param>
public sealed record LiveTerm(IReadOnlyList<string> Closed, IReadOnlyList<string> Open);

/// <summary>Tells in the fewest words in which states something is live.</summary>
internal static class LiveFunction
{
    /// <summary>More ways than this are not told one by one.</summary>
    private const int MostTerms = 24;

    /// <summary>
    /// The ways to make it live, each as short as it can be; one empty way for "always", none for "never", null when there
    /// are too many or when not every state was looked at.
    /// </summary>
    /// <param name="isLive">Whether it is live, by the bits of the closed switches.</param>
    /// <param name="switches">Ids, bit by bit.</param>
    internal static IReadOnlyList<LiveTerm>? Of(bool[] isLive, IReadOnlyList<string> switches)
    {
        int all = isLive.Length - 1;
        int matters = Support(isLive, all);
        List<(int Care, int Closed)> cubes = [];

        // States of few closed switches come first, so that the shortest ways are found first.
        foreach (int state in Enumerable.Range(0, isLive.Length).OrderBy(s => System.Numerics.BitOperations.PopCount((uint)s)))
        {
            if (!isLive[state] || (state & ~matters) != 0 || cubes.Exists(c => (state & c.Care) == c.Closed))
            {
                continue;
            }

            cubes.Add(Widen(isLive, state, matters, all));
            if (cubes.Count > MostTerms)
            {
                return null;
            }
        }

        return [.. cubes.Select(c => new LiveTerm(Ids(c.Closed, switches), Ids(c.Care & ~c.Closed, switches)))];
    }

    /// <summary>The switches that make a difference anywhere.</summary>
    private static int Support(bool[] isLive, int all)
    {
        int matters = 0;
        for (int bit = 1; bit <= all; bit <<= 1)
        {
            for (int state = 0; state < isLive.Length; state++)
            {
                if (isLive[state] != isLive[state ^ bit])
                {
                    matters |= bit;
                    break;
                }
            }
        }

        return matters;
    }

    /// <summary>Leaves out one switch after the other as long as it stays live; first those that stand open.</summary>
    private static (int Care, int Closed) Widen(bool[] isLive, int state, int matters, int all)
    {
        int care = matters;
        foreach (int part in new[] { matters & ~state, matters & state })
        {
            for (int bit = 1; bit <= all; bit <<= 1)
            {
                if ((part & bit) != 0 && Holds(isLive, state, care & ~bit, matters))
                {
                    care &= ~bit;
                }
            }
        }

        return (care, state & care);
    }

    /// <summary>Live in every state that agrees with this one on the cared-for switches.</summary>
    private static bool Holds(bool[] isLive, int state, int care, int matters)
    {
        int free = matters & ~care;
        int subset = free;
        while (true)
        {
            if (!isLive[(state & care) | subset])
            {
                return false;
            }

            if (subset == 0)
            {
                return true;
            }

            subset = (subset - 1) & free;
        }
    }

    private static List<string> Ids(int bits, IReadOnlyList<string> switches)
    {
        List<string> ids = [];
        for (int i = 0; i < switches.Count; i++)
        {
            if ((bits & (1 << i)) != 0)
            {
                ids.Add(switches[i]);
            }
        }

        return ids;
    }
}
