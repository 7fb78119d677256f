using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Quantities;

namespace WireCheck.States;

/// <summary>The modes a box is solved in: those of its description and those that are always looked at.</summary>
public static class Modes
{
    /// <summary>All switches open, nothing plugged.</summary>
    public const string Stored = "stored";

    /// <summary>All switches open, everything plugged in and without power.</summary>
    public const string LeftPlugged = "left-plugged";

    /// <summary>All switches closed, loads at standby.</summary>
    public const string Idle = "idle";

    /// <summary>All switches closed, all loads at once.</summary>
    public const string Everything = "everything";

    /// <summary>All switches closed, every source giving power at once.</summary>
    public const string ChargingAll = "charging-all";

    /// <summary>What the name of a mode begins with in which one source charges and no load runs; its id follows.</summary>
    public const string ChargingPrefix = "charging-";

    /// <summary>What the name of a surge mode begins with; the id of the load or inverter follows.</summary>
    public const string SurgePrefix = "surge-";

    /// <summary>Described modes first, then the added ones in a fixed order.</summary>
    public static IReadOnlyList<BoxMode> For(Pack pack)
    {
        HashSet<string> closed = [.. pack.Of<Switch>().Where(s => s.Momentary?.Value != true).Select(s => s.Id)];
        HashSet<string> none = [];
        List<BoxMode> modes = [.. pack.Modes.Select(m => Described(m, pack))];
        modes.Add(Added(Stored, "all switches open, nothing plugged in", none, pack, LoadUse.Absent, []));
        modes.Add(Added(
            LeftPlugged, "all switches open, everything plugged in but without power", none, pack, LoadUse.Standby,
            AllSources(pack).ToDictionary(id => id, _ => SourceState.Unpowered)));
        modes.Add(Added(Idle, "all switches closed, loads at standby", closed, pack, LoadUse.Standby, []));
        modes.Add(Added(Everything, "all switches closed, all loads at once", closed, pack, LoadUse.Full, []));
        modes.AddRange(Surges(pack, closed));
        IReadOnlyList<(string Id, Dictionary<string, SourceState> Sources)> charging = ChargingGroups(pack);
        foreach ((string id, Dictionary<string, SourceState> sources) in charging)
        {
            modes.Add(Added(ChargingPrefix + id, $"all switches closed, only {id} charging, no loads", closed, pack, LoadUse.Absent, sources));
            modes.Add(Added(
                $"{ChargingPrefix}{id}-in-use", $"all switches closed, {id} charging, all loads at once", closed, pack, LoadUse.Full, sources));
        }

        if (charging.Count > 1)
        {
            modes.Add(Added(
                ChargingAll, "all switches closed, every charger at once, no loads", closed, pack, LoadUse.Absent,
                AllSources(pack).ToDictionary(id => id, _ => SourceState.Powered)));
        }

        // A described mode may carry the name of an added one; the description wins.
        return [.. modes.DistinctBy(m => m.Id)];
    }

    internal static IEnumerable<string> AllSources(Pack pack) =>
        pack.Parts.Where(p => p is Charger or Vehicle or Panel).Select(p => p.Id);

    private static BoxMode Described(Mode mode, Pack pack) => new()
    {
        Id = mode.Id,
        Words = "described",
        Added = false,
        ClosedSwitches = mode.Closed.Select(c => c.Value).ToHashSet(StringComparer.Ordinal),
        Sources = WithFeeders(pack, mode.Plugged.Select(p => p.Value)),
        Loads = pack.Of<Load>().ToDictionary(l => l.Id, _ => LoadUse.Standby),
        Watts = mode.Draws.ToDictionary(d => d.PartId.Value, d => d.Power.Value.ToWatts()),
    };

    private static BoxMode Added(
        string id, string words, IReadOnlySet<string> closed, Pack pack, LoadUse use, Dictionary<string, SourceState> sources) => new()
    {
        Id = id,
        Words = words,
        Added = true,
        ClosedSwitches = closed,
        Sources = sources,
        Loads = pack.Of<Load>().ToDictionary(l => l.Id, _ => use),
        OutletsAtRatedPower = use == LoadUse.Full,
    };

    /// <summary>One mode for each load and each inverter with a surge: everything runs, and this one surges.</summary>
    private static IEnumerable<BoxMode> Surges(Pack pack, IReadOnlySet<string> closed)
    {
        foreach (Load starting in pack.Of<Load>().Where(l => l.Surge is not null))
        {
            yield return SurgeOf(starting.Id, "starting", null, closed, pack);
        }

        foreach (Inverter inverter in pack.Of<Inverter>().Where(i => i.Surge is not null))
        {
            yield return SurgeOf(inverter.Id, "giving its surge", inverter.Id, closed, pack);
        }
    }

    private static BoxMode SurgeOf(string id, string does, string? inverter, IReadOnlySet<string> closed, Pack pack) => new()
    {
        Id = SurgePrefix + id,
        Words = $"all switches closed, all loads on, {id} {does}",
        Added = true,
        Steady = false,
        ClosedSwitches = closed,
        Sources = new Dictionary<string, SourceState>(),
        Loads = pack.Of<Load>().ToDictionary(l => l.Id, l => l.Id == id ? LoadUse.Surge : LoadUse.Full),
        OutletsAtRatedPower = true,
        SurgingInverter = inverter,
    };

    /// <summary>Each charger with what feeds it, and each vehicle or panel that feeds no charger.</summary>
    internal static List<(string Id, Dictionary<string, SourceState> Sources)> ChargingGroups(Pack pack)
    {
        List<(string, Dictionary<string, SourceState>)> groups = [];
        HashSet<string> feeding = [];
        foreach (Charger charger in pack.Of<Charger>())
        {
            Dictionary<string, SourceState> sources = WithFeeders(pack, [charger.Id]);
            feeding.UnionWith(sources.Keys);
            groups.Add((charger.Id, sources));
        }

        foreach (string id in AllSources(pack).Where(id => !feeding.Contains(id)))
        {
            groups.Add((id, new Dictionary<string, SourceState> { [id] = SourceState.Powered }));
        }

        return groups;
    }

    /// <summary>Chargers need the panel or vehicle that feeds them; it is taken to be there and giving power.</summary>
    private static Dictionary<string, SourceState> WithFeeders(Pack pack, IEnumerable<string> ids)
    {
        Dictionary<string, SourceState> sources = [];
        foreach (string id in ids)
        {
            sources[id] = SourceState.Powered;
            if (pack.Find(id) is Charger charger)
            {
                foreach (Part feeder in Feeders(pack, charger))
                {
                    sources[feeder.Id] = SourceState.Powered;
                }
            }
        }

        // A controller that is wired to its panel and to the bank works whenever the panel is plugged in.
        foreach (Charger charger in pack.Of<Charger>())
        {
            if (charger.At is null && Feeders(pack, charger).Any(f => sources.ContainsKey(f.Id)))
            {
                sources[charger.Id] = SourceState.Powered;
            }
        }

        return sources;
    }

    private static IEnumerable<Part> Feeders(Pack pack, Charger charger)
    {
        if (charger.From is not null && pack.Find(charger.From.Value) is { } named and (Panel or Vehicle))
        {
            return [named];
        }

        return charger.At is not null ? [] : charger.ChargerKind.Value switch
        {
            ChargerKind.Solar => pack.Of<Panel>(),
            ChargerKind.DcDc => pack.Of<Vehicle>(),
            _ => [],
        };
    }
}
