namespace WireCheck.Switching;

/// <summary>What the switches do to one load, port, other part or rail.</summary>
public sealed class ControlRow
{
    public required LivePoint Point { get; init; }

    /// <summary>Listed as meant to be live.</summary>
    public required bool Meant { get; init; }

    /// <summary>Live with every switch open.</summary>
    public required bool WithAllOpen { get; init; }

    /// <summary>Live with every switch closed but the momentary ones.</summary>
    public required bool WithAllClosed { get; init; }

    /// <summary>Switches of which one alone, opened while all others are closed, makes it dead.</summary>
    public required IReadOnlyList<string> KilledBy { get; init; }

    /// <summary>States in which it is live.</summary>
    public required int LiveStates { get; init; }

    /// <summary>The ways to make it live, shortest first; null when there are too many to tell.</summary>
    public required IReadOnlyList<LiveTerm>? LiveWhen { get; init; }

    /// <summary>Live with all switches closed, and no single one makes it dead.</summary>
    public bool NoSwitchKills => WithAllClosed && KilledBy.Count == 0;
}

/// <summary>Every point against every switch, for one way of plugging.</summary>
public sealed class ControlTable
{
    public required PlugCase Plugs { get; init; }

    /// <summary>Ids of the switches, in the order of the description.</summary>
    public required IReadOnlyList<string> Switches { get; init; }

    /// <summary>States looked at.</summary>
    public required int States { get; init; }

    /// <summary>True when those are all combinations of the switches.</summary>
    public required bool Exhaustive { get; init; }

    /// <summary>Parts in the order of the description, then rails.</summary>
    public required IReadOnlyList<ControlRow> Rows { get; init; }

    /// <summary>The row of a part or of a rail by its first terminal; null when there is none.</summary>
    public ControlRow? Row(string id) => Rows.FirstOrDefault(r => r.Point.Id == id && r.Point.Kind != LivePointKind.Rail)
        ?? Rows.FirstOrDefault(r => r.Point.Id == id);

    /// <summary>Parts that one switch alone makes dead, in the order of the rows; rails are left out.</summary>
    public IReadOnlyList<string> KilledBy(string switchId) =>
        [.. Rows.Where(r => r.Point.Kind != LivePointKind.Rail && r.KilledBy.Contains(switchId)).Select(r => r.Point.Id)];

    /// <summary>Switches each of which alone makes dead all that is not meant to stay live.</summary>
    public IReadOnlyList<string> KillEverything
    {
        get
        {
            ControlRow[] live = [.. Rows.Where(r => r.Point.Kind != LivePointKind.Rail && r.WithAllClosed && !r.Meant)];
            return live.Length == 0 ? [] : [.. Switches.Where(s => Array.TrueForAll(live, r => r.KilledBy.Contains(s)))];
        }
    }

    /// <summary>Reads the table out of the marks of an enumeration.</summary>
    internal static ControlTable Of(SwitchedBox box, PlugCase plugs, ulong[] states, byte[] live)
    {
        string[] ids = [.. box.Switches.Take(SwitchStates.MostSwitches).Select(s => s.Part.Id)];
        HashSet<string> meant = [.. box.Wiring.Pack.StaysLive.Select(g => g.Value)];
        ulong allClosed = box.AllClosed;
        int points = box.Points.Count;
        bool Live(ulong state, int point) =>
            SwitchStates.IndexOf(states, state, ids.Length) is >= 0 and int at && live[(at * points) + point] != 0;
        List<ControlRow> rows = [];
        for (int p = 0; p < points; p++)
        {
            bool withAllClosed = Live(allClosed, p);
            List<string> killers = [];
            for (int s = 0; s < ids.Length; s++)
            {
                ulong bit = 1UL << s;
                if (withAllClosed && (allClosed & bit) != 0 && !Live(allClosed & ~bit, p))
                {
                    killers.Add(ids[s]);
                }
            }

            rows.Add(new ControlRow
            {
                Point = box.Points[p],
                Meant = meant.Contains(box.Points[p].Id),
                WithAllOpen = Live(0, p),
                WithAllClosed = withAllClosed,
                KilledBy = killers,
                LiveStates = Enumerable.Range(0, states.Length).Count(i => live[(i * points) + p] != 0),
                LiveWhen = ids.Length <= SwitchStates.MostForAll ? LiveFunction.Of(ByState(states, live, points, p), ids) : null,
            });
        }

        return new ControlTable
        {
            Plugs = plugs,
            Switches = ids,
            States = states.Length,
            Exhaustive = ids.Length <= SwitchStates.MostForAll,
            Rows = rows,
        };
    }

    private static bool[] ByState(ulong[] states, byte[] live, int points, int point)
    {
        bool[] isLive = new bool[states.Length];
        for (int i = 0; i < states.Length; i++)
        {
            isLive[states[i]] = live[(i * points) + point] != 0;
        }

        return isLive;
    }
}
