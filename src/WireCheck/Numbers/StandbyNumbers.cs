using WireCheck.Standby;
using WireCheck.States;

namespace WireCheck.Numbers;

/// <summary>One consumer of a box at rest.</summary>
/// <param name="Id">Id of the part.</param>
/// <param name="Amps">Current it takes from the cells, A.</param>
/// <param name="Share">Its part of the current that leaves the cells, 0 to 1.</param>
/// <param name="Chain">Parts and conductors that current flows through, from the bank's positive to its negative.</param>
public sealed record StandbyConsumer(string Id, double Amps, double Share, IReadOnlyList<string> Chain);

/// <summary>A box at rest in one of the two ways.</summary>
/// <param name="Mode">Id of the mode.</param>
/// <param name="Words">What it is.</param>
/// <param name="Corner">The corner of the largest current.</param>
/// <param name="Amps">Current that leaves the cells, A, without self-discharge.</param>
/// <param name="Consumers">Largest first.</param>
/// <param name="Life">How long a full box keeps so.</param>
public sealed record StandbyAtRest(
    string Mode, string Words, string Corner, double Amps, IReadOnlyList<StandbyConsumer> Consumers, ShelfLife Life);

/// <summary>What a box draws at rest, how long it keeps and what would help.</summary>
/// <param name="States">Stored and left plugged, each when it is solved.</param>
/// <param name="Moves">What taking each consumer off the stored box would win, the best first.</param>
/// <param name="MovesLeftPlugged">The same for the box left plugged.</param>
public sealed record StandbyNumbers(IReadOnlyList<StandbyAtRest> States, IReadOnlyList<Move> Moves, IReadOnlyList<Move> MovesLeftPlugged)
{
    /// <summary>The box's standby.</summary>
    public static StandbyNumbers Of(SolvedBox box)
    {
        StandbyStudy study = new(box);
        List<StandbyAtRest> states = [];
        foreach (StandbyState? state in new[] { study.Stored, study.LeftPlugged })
        {
            if (state is not null)
            {
                states.Add(OfState(state));
            }
        }

        return new StandbyNumbers(states, study.Moves, study.MovesLeftPlugged);
    }

    private static StandbyAtRest OfState(StandbyState state)
    {
        List<StandbyConsumer> consumers = [];
        foreach (Drain drain in state.Drains)
        {
            consumers.Add(new StandbyConsumer(drain.PartId, drain.Amps, drain.Amps / state.Amps, drain.Chain));
        }

        OperatingPoint point = state.Point;
        return new StandbyAtRest(point.Mode.Id, point.Mode.Words, point.Corner.Words, state.Amps, consumers, state.Life);
    }
}
