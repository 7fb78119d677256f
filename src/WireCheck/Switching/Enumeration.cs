using WireCheck.Circuit.Solving;

namespace WireCheck.Switching;

/// <summary>
/// Goes through every state of the switches for one way of plugging. Neighbouring states differ by one contact and start
/// from each other's voltages, on one symbolic factor; relays are settled from rest and, where one could hold, from pulled
/// in.
/// </summary>
internal sealed class Enumeration
{
    private readonly SwitchedBox _box;
    private readonly Settling _settling;
    private readonly LiveTester _tester;
    private readonly MatteringSwitches _mattering;
    private readonly Dictionary<ulong, int> _solved = [];
    private readonly byte[] _here;
    private ulong _closed;
    private Action<SettledState>? _settled;
    private Action<SettledState, byte[]>? _marked;

    internal Enumeration(SwitchedBox box)
    {
        _box = box;
        _settling = new Settling(box);
        _tester = new LiveTester(box);
        _mattering = new MatteringSwitches(box);
        _here = new byte[box.Points.Count];
        States = SwitchStates.For(box.Switches.Length, ~box.AllClosed);
    }

    /// <summary>The states, in the order in which they are solved.</summary>
    internal ulong[] States { get; }

    internal Settling Settling => _settling;

    internal LiveTester Tester => _tester;

    /// <summary>The closed switches that make a difference in a state, one bit each, as things were plugged last.</summary>
    internal ulong Mattering(ulong closed) => _mattering.Of(closed);

    /// <summary>
    /// Solves every state. Of states that differ only by switches that make no difference one is solved, that of the fewest
    /// closed switches.
    /// </summary>
    /// <param name="plugs">What is plugged.</param>
    /// <param name="settled">Sees each solved state, and both ends where a relay has two, before any burden is on.</param>
    /// <param name="marked">Sees the same with what is live in it; voltages then mean nothing any more.</param>
    /// <returns>For each state in turn a mark for each point: 1 where it is live, however the relays stood before.</returns>
    internal byte[] Run(PlugCase plugs, Action<SettledState>? settled = null, Action<SettledState, byte[]>? marked = null)
    {
        int points = _box.Points.Count;
        byte[] live = new byte[States.Length * points];
        (_settled, _marked) = (settled, marked);
        _box.Plug(plugs);
        _mattering.LookAtPlugs();
        _solved.Clear();
        _settling.Remember(energised => _mattering.Conducting(_closed, energised));
        SettledState? state = null;
        for (int i = 0; i < States.Length; i++)
        {
            ulong matters = _mattering.Of(States[i]);
            Span<byte> here = live.AsSpan(i * points, points);
            if (_solved.TryGetValue(matters, out int same))
            {
                live.AsSpan(same * points, points).CopyTo(here);
                continue;
            }

            _solved.Add(matters, i);
            Solve(plugs, matters, here, ref state);
        }

        _settling.Forget();
        return live;
    }

    private void Solve(PlugCase plugs, ulong closed, Span<byte> live, ref SettledState? state)
    {
        _box.SetSwitches(closed);
        _closed = closed;
        _settling.SettleFromRest();
        ulong atRest = _settling.Energised();
        ulong chattering = AnyChatters();
        ulong mayHold = _mattering.MayHold;
        ulong pulledIn = atRest;

        // From pulled in it can end otherwise only where a relay that something could hold has not pulled in by itself.
        if (chattering == 0 && ((mayHold & ~atRest) != 0 || _settling.AnyGivenUp))
        {
            (ulong running, ulong givenUp) = _settling.Inputs();
            _settling.SettleFromPulledIn(mayHold);
            pulledIn = AnyChatters() == 0 ? _settling.Energised() : atRest;
            _settling.PutBack(atRest, running, givenUp);
        }

        Solution solution = _settling.Solve();
        state ??= new SettledState { Plugs = plugs, Solution = solution, Running = _settling.Running };
        (state.Closed, state.HeldIn, state.Energised) = (closed, false, atRest);
        (state.Chattering, state.TwoStates, state.Started) = (chattering, pulledIn ^ atRest, mayHold);
        Look(state, live);
        if (pulledIn != atRest)
        {
            // The other end is solved again, since the burdens and the first end have overwritten it.
            _settling.FromPulledIn(mayHold);
            (state.HeldIn, state.Energised) = (true, pulledIn);
            Look(state, live);
        }
    }

    /// <summary>The state is looked at before the burdens go on, which overwrite it.</summary>
    private void Look(SettledState state, Span<byte> live)
    {
        _settled?.Invoke(state);
        Array.Clear(_here);
        _tester.Mark(state.Solution, state.Running, _here);
        _marked?.Invoke(state, _here);
        for (int i = 0; i < _here.Length; i++)
        {
            live[i] |= _here[i];
        }
    }

    private ulong AnyChatters()
    {
        ulong bits = 0;
        for (int i = 0; i < _settling.Chatters.Count && i < 64; i++)
        {
            bits |= _settling.Chatters[i] ? 1UL << i : 0;
        }

        return bits;
    }
}
