using System.Numerics;

namespace WireCheck.Switching;

/// <summary>The states of a box's switches that are looked at, one bit per switch, a set bit being closed.</summary>
public static class SwitchStates
{
    /// <summary>Switches up to which every combination is taken.</summary>
    public const int MostForAll = 12;

    /// <summary>Switches that fit; any beyond stay open, and the table says so.</summary>
    public const int MostSwitches = 60;

    /// <summary>
    /// All combinations of up to twelve switches in Gray's order, in which each state differs from the one before by one
    /// switch. Of more: none, each and each pair closed, and all that stay closed by themselves, all but one, all but two and
    /// these with one momentary switch held.
    /// </summary>
    /// <param name="switches">Number of switches.</param>
    /// <param name="momentary">Switches that open when let go, one bit each.</param>
    public static ulong[] For(int switches, ulong momentary = 0)
    {
        int count = Math.Min(switches, MostSwitches);
        if (count <= MostForAll)
        {
            ulong[] states = new ulong[1UL << count];
            for (ulong i = 0; i < (ulong)states.Length; i++)
            {
                states[i] = i ^ (i >> 1);
            }

            return states;
        }

        ulong all = ((1UL << count) - 1) & ~momentary;
        HashSet<ulong> few = [0, all];
        for (int a = 0; a < count; a++)
        {
            few.Add(1UL << a);
            few.Add(all ^ (1UL << a));
            for (int b = a + 1; b < count; b++)
            {
                few.Add((1UL << a) | (1UL << b));
                few.Add(all ^ ((1UL << a) | (1UL << b)));
            }
        }

        ulong[] sorted = [.. few];
        Array.Sort(sorted);
        return sorted;
    }

    /// <summary>Place of a state in the list of <see cref="For"/>; -1 when it is not looked at.</summary>
    internal static int IndexOf(ulong[] states, ulong state, int switches)
    {
        if (switches > MostForAll)
        {
            return Math.Max(-1, Array.BinarySearch(states, state));
        }

        ulong index = state;
        for (int shift = 1; shift < 64; shift <<= 1)
        {
            index ^= index >> shift;
        }

        return (int)index;
    }

    /// <summary>Switches closed in a state.</summary>
    internal static int Closed(ulong state) => BitOperations.PopCount(state);
}
