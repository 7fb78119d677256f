using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Physics;

namespace WireCheck.States;

/// <summary>
/// The states that a mode goes through while loads with a duty come and go, and which part of the heat each counts for. The first has
/// all of them on; in each further one the next has paused, the least duty first. A body of some time constant sees each load
/// with its share (<see cref="CyclicHeating"/>). Spells are taken to fall together as often as they can, which is the hottest they can do.
/// A load that does not tell how long its spells are counts as always on.
/// </summary>
internal sealed class DutyStates
{
    private readonly List<Load> _loads;

    private DutyStates(IReadOnlyList<BoxMode> modes, List<Load> loads)
    {
        Modes = modes;
        _loads = loads;
    }

    /// <summary>The states; only the mode itself where nothing pauses.</summary>
    internal IReadOnlyList<BoxMode> Modes { get; }

    internal static DutyStates Of(BoxMode mode, Pack pack)
    {
        List<Load> pausing = [];
        foreach (Load load in pack.Of<Load>())
        {
            bool draws = mode.Watts.TryGetValue(load.Id, out double watts) ? watts > 0 : mode.Load(load.Id) == LoadUse.Full;
            if (draws && load.OnFor is not null && load.Duty is not null)
            {
                pausing.Add(load);
            }
        }

        pausing.Sort((a, b) => DutyOf(a) != DutyOf(b) ? DutyOf(a).CompareTo(DutyOf(b)) : string.CompareOrdinal(a.Id, b.Id));
        List<BoxMode> modes = [mode];
        foreach (Load load in pausing)
        {
            modes.Add(modes[^1].Without(load.Id));
        }

        return new DutyStates(modes, pausing);
    }

    private static double DutyOf(Load load) => load.Duty!.Value.DecimalFractions;

    /// <summary>What part of the time each state counts for to a body of a time constant, by its highest temperature; they add up to 1.</summary>
    /// <param name="timeConstant">s, above 0.</param>
    internal double[] Parts(double timeConstant)
    {
        double[] parts = new double[Modes.Count];
        double counted = 0;
        for (int i = 0; i < _loads.Count; i++)
        {
            double share = CyclicHeating.Share(
                _loads[i].OnFor!.Value.Seconds, DutyOf(_loads[i]), timeConstant);
            parts[i] = Math.Max(0, share - counted);
            counted += parts[i];
        }

        parts[^1] = 1 - counted;
        return parts;
    }
}
