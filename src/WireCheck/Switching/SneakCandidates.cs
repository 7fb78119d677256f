using System.Numerics;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Switching;

/// <summary>A state in which a sneak path may show.</summary>
/// <param name="Plugs">What is plugged.</param>
/// <param name="Closed">Closed switches.</param>
/// <param name="HeldIn">True for the end of relays that started pulled in.</param>
/// <param name="Started">Those relays, one bit each.</param>
/// <param name="TwoStates">Relays that have two ends in it.</param>
internal sealed record CandidateState(PlugCase Plugs, ulong Closed, bool HeldIn, ulong Started, ulong TwoStates);

/// <summary>
/// Notes, while the states go by, for each part the state of fewest closed switches in which it is live without a plain
/// feed, in which its coil is fed so, in which it has two ends, chatters or takes current from another source.
/// </summary>
internal sealed class SneakCandidates
{
    private readonly SwitchedBox _box;
    private readonly Settling _settling;
    private readonly PlainFeed _plain;
    private readonly double _crossFeedAmps;

    internal SneakCandidates(SwitchedBox box, Settling settling)
    {
        _box = box;
        _settling = settling;
        _plain = new PlainFeed(box, box.Rails, box.Sources);
        _crossFeedAmps = box.Wiring.Data.Assumed("cross_feed_current");
        LiveAt = new CandidateState?[box.Points.Count];
        CoilAt = new CandidateState?[box.Relays.Length];
        TwoStatesAt = new CandidateState?[box.Relays.Length];
        ChattersAt = new CandidateState?[box.Relays.Length];
        FedAt = new CandidateState?[box.Sources.Count];
        CoilIsFed = new bool[box.Relays.Length];
        IsFed = new bool[box.Points.Count];
    }

    /// <summary>By point: live without a plain feed.</summary>
    internal CandidateState?[] LiveAt { get; }

    /// <summary>By relay: its coil gets more than its release voltage without a plain feed.</summary>
    internal CandidateState?[] CoilAt { get; }

    /// <summary>By relay: two ends; the state is the one held in.</summary>
    internal CandidateState?[] TwoStatesAt { get; }

    /// <summary>By relay: never at rest.</summary>
    internal CandidateState?[] ChattersAt { get; }

    /// <summary>By relay: in some state its coil has a plain feed.</summary>
    internal bool[] CoilIsFed { get; }

    /// <summary>By point: in some state it has a plain feed.</summary>
    internal bool[] IsFed { get; }

    /// <summary>By source: current flows into it.</summary>
    internal CandidateState?[] FedAt { get; }

    /// <summary>Looks at a settled state before burdens are on.</summary>
    internal void LookSettled(SettledState state)
    {
        _plain.Find();
        for (int i = 0; i < _box.Relays.Length && i < 64; i++)
        {
            if ((state.Chattering & (1UL << i)) != 0)
            {
                Keep(ChattersAt, i, state);
            }

            if (state.HeldIn && (state.TwoStates & (1UL << i)) != 0)
            {
                Keep(TwoStatesAt, i, state);
            }

            (int plus, int minus) = _settling.Coil(i);
            bool plain = _plain.Feeds(plus, minus) || _plain.Feeds(minus, plus);
            CoilIsFed[i] |= plain;
            if (Math.Abs(_settling.CoilVolts(i, state.Solution)) > _settling.ReleaseVolts(i)
                && !plain
                && state.Solution.IsFloating(plus) == state.Solution.IsFloating(minus))
            {
                Keep(CoilAt, i, state);
            }
        }

        for (int s = 0; s < _box.Sources.Count; s++)
        {
            if (AmpsInto(_box.Sources[s], state) > _crossFeedAmps)
            {
                Keep(FedAt, s, state);
            }
        }
    }

    /// <summary>Looks at what is live in the same state.</summary>
    internal void LookMarked(SettledState state, byte[] live)
    {
        for (int i = 0; i < live.Length; i++)
        {
            LivePoint point = _box.Points[i];
            if (point.Kind != LivePointKind.Part || (live[i] == 0 && IsFed[i]))
            {
                continue;
            }

            bool plain = _plain.Feeds(point.Plus, point.Minus);
            IsFed[i] |= plain;
            if (live[i] != 0 && !plain)
            {
                Keep(LiveAt, i, state);
            }
        }
    }

    /// <summary>
    /// Current into a vehicle, whatever gives it, or into a bank while nothing is plugged; 0 for what is made to be charged
    /// or cannot take any.
    /// </summary>
    private double AmpsInto(SourcePoint source, SettledState state)
    {
        switch (_box.Wiring[source.PartId])
        {
            case WiredVehicle vehicle when vehicle.Element.Connected:
                return state.Solution.Current(vehicle.Element);
            case WiredBank bank when state.Plugs.Id == PlugCase.Unplugged:
                return GroupAmps.Into(bank, 0, state.Solution);
            default:
                return 0;
        }
    }

    private static void Keep(CandidateState?[] kept, int i, SettledState state)
    {
        if (kept[i] is not { } held || BitOperations.PopCount(state.Closed) < BitOperations.PopCount(held.Closed))
        {
            kept[i] = new CandidateState(state.Plugs, state.Closed, state.HeldIn, state.Started, state.TwoStates);
        }
    }
}
