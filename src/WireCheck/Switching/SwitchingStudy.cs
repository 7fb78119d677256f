using WireCheck.Circuit.Wiring;
using WireCheck.Description;

namespace WireCheck.Switching;

/// <summary>
/// What is live, and what each switch kills, in every state of the switches and every way of plugging; the sneak paths that
/// show in them; what goes round an open BMS or round the shunt.
/// </summary>
public sealed class SwitchingStudy
{
    private readonly SwitchedBox _box;

    private SwitchingStudy(SwitchedBox box, IReadOnlyList<ControlTable> tables)
    {
        _box = box;
        Tables = tables;
    }

    /// <summary>One table for each way of plugging, the unplugged one first.</summary>
    public IReadOnlyList<ControlTable> Tables { get; }

    /// <summary>The table with nothing plugged.</summary>
    public ControlTable Unplugged => Tables[0];

    /// <summary>Switches beyond those that are combined, which stay open throughout.</summary>
    public IReadOnlyList<string> LeftOpen => [.. _box.Switches.Skip(SwitchStates.MostSwitches).Select(s => s.Part.Id)];

    /// <summary>Every sneak path, relays first; of each part and kind the state of fewest closed switches.</summary>
    public required IReadOnlyList<SneakPath> Sneaks { get; init; }

    /// <summary>Switches that open a negative only.</summary>
    public required IReadOnlyList<NegativeOnly> NegativeOnly { get; init; }

    /// <summary>By id of a part that is live with every switch open: the loop that keeps it so.</summary>
    public required IReadOnlyDictionary<string, IReadOnlyList<string>> LiveLoops { get; init; }

    /// <summary>
    /// By id of a part that is dead with every switch open and nothing plugged, but live while a source gives power: the first
    /// way of plugging that shows it, and the loop.
    /// </summary>
    public required IReadOnlyDictionary<string, (PlugCase Plugs, IReadOnlyList<string> Loop)> LiveByPower { get; init; }

    /// <summary>Studies a box.</summary>
    public static SwitchingStudy Of(Pack pack, WiringData data)
    {
        SwitchedBox box = new(pack, data);
        Enumeration enumeration = new(box);
        SneakCandidates noted = new(box, enumeration.Settling);
        IReadOnlyList<PlugCase> plugs = PlugCase.For(pack);
        List<ControlTable> tables = [];
        foreach (PlugCase plug in plugs)
        {
            byte[] live = enumeration.Run(plug, noted.LookSettled, noted.LookMarked);
            tables.Add(ControlTable.Of(box, plug, enumeration.States, live));
        }

        SneakFinder finder = new(box, enumeration.Settling);
        List<SneakPath> sneaks = finder.Find(noted);
        sneaks.AddRange(new OpenBms(box, enumeration.Settling, enumeration.Tester, finder).Find(plugs));
        sneaks.AddRange(new Uncounted(box, enumeration.Settling, finder).Find(plugs));
        return new SwitchingStudy(box, tables)
        {
            Sneaks = sneaks,
            NegativeOnly = NegativeSwitching.Find(box, enumeration.Settling, tables[0], plugs[0]),
            LiveLoops = FindLiveLoops(box, enumeration.Settling, finder, tables[0]),
            LiveByPower = FindLiveByPower(box, enumeration.Settling, finder, tables),
        };
    }

    private static Dictionary<string, (PlugCase Plugs, IReadOnlyList<string> Loop)> FindLiveByPower(
        SwitchedBox box, Settling settling, SneakFinder finder, IReadOnlyList<ControlTable> tables)
    {
        Dictionary<string, (PlugCase Plugs, IReadOnlyList<string> Loop)> found = new(StringComparer.Ordinal);
        foreach (ControlTable table in tables.Where(t => t.Plugs.Sources.Values.Contains(SourceState.Powered)))
        {
            foreach ((string id, IReadOnlyList<string> loop) in FindLiveLoops(box, settling, finder, table))
            {
                if (tables[0].Row(id) is { WithAllOpen: false })
                {
                    found.TryAdd(id, (table.Plugs, loop));
                }
            }
        }

        return found;
    }

    private static Dictionary<string, IReadOnlyList<string>> FindLiveLoops(
        SwitchedBox box, Settling settling, SneakFinder finder, ControlTable table)
    {
        Dictionary<string, IReadOnlyList<string>> loops = new(StringComparer.Ordinal);
        if (!table.Rows.Any(r => r.WithAllOpen && r.Point.Kind == LivePointKind.Part))
        {
            return loops;
        }

        box.Plug(table.Plugs);
        box.SetSwitches(0);
        settling.FromRest();
        for (int i = 0; i < box.Points.Count; i++)
        {
            if (box.Points[i].Kind == LivePointKind.Part && table.Rows[i].WithAllOpen && finder.LoopOf(i) is { } loop)
            {
                loops[box.Points[i].Id] = loop.Loop;
            }
        }

        return loops;
    }
}
