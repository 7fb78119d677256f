using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.States;

namespace WireCheck.Switching;

/// <summary>Which chargers, vehicles and panels are plugged, and whether they give power.</summary>
/// <param name="Id">Short name, such as "unplugged" or "mains giving power".</param>
/// <param name="Sources">State of each source that is not absent.</param>
public sealed record PlugCase(string Id, IReadOnlyDictionary<string, SourceState> Sources)
{
    /// <summary>Name of the case with every plug out and every panel gone.</summary>
    public const string Unplugged = "unplugged";

    /// <summary>
    /// All unplugged; each source alone, giving power and without power (no mains, engine off, dark); where there are
    /// several, everything giving power and everything without.
    /// </summary>
    public static IReadOnlyList<PlugCase> For(Pack pack)
    {
        List<PlugCase> cases = [new PlugCase(Unplugged, new Dictionary<string, SourceState>())];
        List<(string Id, Dictionary<string, SourceState> Sources)> groups = Modes.ChargingGroups(pack);
        foreach ((string id, Dictionary<string, SourceState> sources) in groups)
        {
            cases.Add(new PlugCase($"{id} giving power", sources));
            cases.Add(new PlugCase($"{id} without power", AllIn(sources.Keys, SourceState.Unpowered)));
        }

        if (groups.Count > 1)
        {
            cases.Add(new PlugCase("everything giving power", AllIn(Modes.AllSources(pack), SourceState.Powered)));
            cases.Add(new PlugCase("everything without power", AllIn(Modes.AllSources(pack), SourceState.Unpowered)));
        }

        return cases;
    }

    public override string ToString() => Id;

    private static Dictionary<string, SourceState> AllIn(IEnumerable<string> ids, SourceState state)
    {
        Dictionary<string, SourceState> states = new(StringComparer.Ordinal);
        foreach (string id in ids)
        {
            states[id] = state;
        }

        return states;
    }
}
