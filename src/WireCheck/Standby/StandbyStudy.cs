using WireCheck.Circuit.Solving;
using WireCheck.States;

namespace WireCheck.Standby;

/// <summary>What a box draws at rest, by which way, how long it keeps, and what would help. Each answer is worked out when it is first asked for.</summary>
public sealed class StandbyStudy(SolvedBox box)
{
    private readonly Dictionary<string, StandbyState?> _states = new(StringComparer.Ordinal);
    private IReadOnlyList<Move>? _moves;
    private IReadOnlyList<Move>? _movesLeftPlugged;
    private ShelfClock? _clock;

    /// <summary>All switches open, nothing plugged in; null when that state has no solution.</summary>
    public StandbyState? Stored => In(Modes.Stored);

    /// <summary>All switches open, everything plugged in without power; null when that state has no solution.</summary>
    public StandbyState? LeftPlugged => In(Modes.LeftPlugged);

    /// <summary>What taking each consumer off the stored box would win, the best first: those that are not meant to stay live, then by the time to the cut-off.</summary>
    public IReadOnlyList<Move> Moves => _moves ??= Stored is { } stored ? Sorted(new MoveFinder(box).Of(stored)) : [];

    /// <summary>The same for the box left plugged: unplugging is a move too.</summary>
    public IReadOnlyList<Move> MovesLeftPlugged => _movesLeftPlugged ??= LeftPlugged is { } plugged ? Sorted(new MoveFinder(box).Of(plugged)) : [];

    /// <summary>The best move that lengthens the time on the shelf; null when none does.</summary>
    public Move? BestMove
    {
        get
        {
            foreach (Move move in Moves)
            {
                if (Stored is { } stored && move.Life.ToCutOff > stored.Life.ToCutOff)
                {
                    return move;
                }
            }

            return null;
        }
    }

    private StandbyState? In(string mode)
    {
        if (!_states.TryGetValue(mode, out StandbyState? state))
        {
            state = Worst(mode);
            _states.Add(mode, state);
        }

        return state;
    }

    private StandbyState? Worst(string mode)
    {
        StandbyState? worst = null;
        foreach (OperatingPoint point in box.In(mode))
        {
            if (point.Solution.Outcome != SolveOutcome.Solved)
            {
                continue;
            }

            IReadOnlyList<Drain> drains = DrainFinder.At(box.Wiring, point);
            double amps = 0;
            foreach (Drain drain in drains)
            {
                amps += drain.Amps;
            }

            if (worst is null || amps > worst.Amps)
            {
                worst = new StandbyState(point, amps, drains, Nothing);
            }
        }

        return worst is null ? null : worst with { Life = (_clock ??= new ShelfClock(box.Wiring)).Of(worst.Point) };
    }

    private static ShelfLife Nothing { get; } = new(double.PositiveInfinity, double.PositiveInfinity, 0, 0, 1);

    private static List<Move> Sorted(IReadOnlyList<Move> moves)
    {
        List<Move> sorted = [.. moves];
        sorted.Sort((a, b) => a.MeantLive != b.MeantLive ? a.MeantLive.CompareTo(b.MeantLive)
            : a.Life.ToCutOff != b.Life.ToCutOff ? b.Life.ToCutOff.CompareTo(a.Life.ToCutOff)
            : string.CompareOrdinal(a.PartId, b.PartId));
        return sorted;
    }
}
