using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.States;

namespace WireCheck.Charging;

/// <summary>The modes a charge is looked at in.</summary>
internal static class ChargingModes
{
    /// <summary>Those of the box in which something charges and no load runs: each source alone, then all together.</summary>
    internal static IReadOnlyList<BoxMode> In(SolvedBox box)
    {
        List<BoxMode> found = [];
        foreach (BoxMode mode in box.Modes)
        {
            if (IsCharging(mode))
            {
                found.Add(mode);
            }
        }

        return found;
    }

    /// <summary>True for an added mode in which a source gives power and no load runs.</summary>
    internal static bool IsCharging(BoxMode mode)
    {
        if (!mode.Added || mode.OutletsAtRatedPower)
        {
            return false;
        }

        foreach (KeyValuePair<string, SourceState> source in mode.Sources)
        {
            if (source.Value == SourceState.Powered)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A mode with the state of one source changed.</summary>
    internal static BoxMode With(BoxMode mode, string sourceId, SourceState state) => new()
    {
        Id = mode.Id,
        Words = mode.Words,
        Added = true,
        ClosedSwitches = mode.ClosedSwitches,
        Sources = new Dictionary<string, SourceState>(mode.Sources) { [sourceId] = state },
        Loads = mode.Loads,
    };

    /// <summary>No load runs; the switches all closed or all open; the sources as given.</summary>
    internal static BoxMode Quiet(SolvedBox box, string id, string words, bool closed, Dictionary<string, SourceState> sources)
    {
        HashSet<string> switches = [];
        if (closed)
        {
            foreach (Switch part in box.Pack.Of<Switch>())
            {
                if (part.Momentary?.Value != true)
                {
                    switches.Add(part.Id);
                }
            }
        }

        return new BoxMode
        {
            Id = id,
            Words = words,
            Added = true,
            ClosedSwitches = switches,
            Sources = sources,
            Loads = new Dictionary<string, LoadUse>(),
        };
    }
}
