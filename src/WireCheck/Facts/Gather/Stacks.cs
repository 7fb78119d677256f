using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>
/// The order in which cells are joined. Closing contacts only joins more, so the box with every contact closed is looked
/// at first; only where that clashes are the positions of the modes looked at one by one.
/// </summary>
public sealed class Stacks
{
    private readonly GatherContext _context;
    private IReadOnlyList<LevelClash>? _clashes;
    private CellLevels? _cellSide;

    internal Stacks(GatherContext context)
    {
        _context = context;
        AllClosed = CellLevels.Of(context.Wiring, context.Graph, IsWire);
    }

    /// <summary>Heights with every contact closed.</summary>
    public CellLevels AllClosed { get; }

    /// <summary>Heights on the cell side of every BMS: its own ways are left out.</summary>
    public CellLevels CellSide => _cellSide ??= CellLevels.Of(
        _context.Wiring, _context.Graph, e => IsWire(e) && _context.Wiring[e.PartId] is not WiredBms);

    /// <summary>Terminals of cells joined at different heights in some mode.</summary>
    public IReadOnlyList<LevelClash> Clashes => _clashes ??= AllClosed.Clashes.Count == 0 ? [] : ClashesOfModes();

    /// <summary>Banks in series in the longest row that a bank stands in.</summary>
    public int BatteriesInSeries(WiredBank bank)
    {
        WiredBank[] banks = [.. _context.Wiring.Of<WiredBank>()];
        return Row(bank, banks, AllClosed, One, upward: true, []) + Row(bank, banks, AllClosed, One, upward: false, []) - 1;

        static int One(WiredBank bank) => 1;
    }

    /// <summary>Cells in series in the longest row that a bank stands in; packs joined end to end count together.</summary>
    public int CellsInSeries(WiredBank bank) => CellsInSeries(bank, AllClosed);

    /// <summary>The same on the cell side of every BMS: what one BMS has to watch over.</summary>
    public int CellsInSeriesAtBms(WiredBank bank) => CellsInSeries(bank, CellSide);

    /// <summary>The most that row stands at, V: the top of the cells' window times the cells in series.</summary>
    public double HighestVolts(WiredBank bank) => bank.Cells.Window.Value.To.Volts * CellsInSeries(bank);

    private int CellsInSeries(WiredBank bank, CellLevels levels)
    {
        WiredBank[] banks = [.. _context.Wiring.Of<WiredBank>()];
        return banks.Length == 1
            ? Cells(bank)
            : Row(bank, banks, levels, Cells, upward: true, []) + Row(bank, banks, levels, Cells, upward: false, []) - Cells(bank);
    }

    private static int Cells(WiredBank bank) => bank.Cells.Series.Value;

    /// <summary>What the banks in the longest row from one on weigh together, itself counted.</summary>
    private int Row(
        WiredBank bank, WiredBank[] banks, CellLevels levels, Func<WiredBank, int> weight, bool upward, HashSet<string> passed)
    {
        if (!passed.Add(bank.Part.Id))
        {
            return 0;
        }

        int longest = 0;
        int end = _context.Wiring.Node(bank.Part.Id, upward ? "+" : "-");
        foreach (WiredBank next in banks)
        {
            if (!passed.Contains(next.Part.Id)
                && levels.Joined(end, _context.Wiring.Node(next.Part.Id, upward ? "-" : "+")))
            {
                longest = Math.Max(longest, Row(next, banks, levels, weight, upward, passed));
            }
        }

        passed.Remove(bank.Part.Id);
        return longest + weight(bank);
    }

    /// <summary>A way that neither limits nor directs the current.</summary>
    private static bool IsWire(WiringEdge edge) => edge.LimitingOhms is null && !edge.OneWay;

    private List<LevelClash> ClashesOfModes()
    {
        List<LevelClash> found = [];
        foreach (OperatingPoint point in _context.Box.Points)
        {
            if (point.Corner != _context.Box.Corners[0])
            {
                continue;
            }

            CellLevels levels = CellLevels.Of(_context.Wiring, _context.Graph, e => IsWire(e) && IsClosed(e, point));
            foreach (LevelClash clash in levels.Clashes)
            {
                if (!found.Contains(clash))
                {
                    found.Add(clash);
                }
            }
        }

        return found;
    }

    private bool IsClosed(WiringEdge edge, OperatingPoint point) => _context.Wiring[edge.PartId] switch
    {
        WiredSwitch wired => point.Mode.ClosedSwitches.Contains(wired.Part.Id),
        WiredRelay relay => point.Relays.First(r => r.Id == relay.Part.Id).Energised
            != (relay.Rest is { } rest && edge.From == rest.A && edge.To == rest.B),
        _ => true,
    };
}
