using WireCheck.Circuit.Solving;

namespace WireCheck.Switching;

/// <summary>
/// Goes through every state of the switches for one way of plugging. Neighbouring states differ by one contact and start
/// from each other's voltages, on one symbolic factor; relays are settled from rest and from pulled in.
/// </summary>
internal sealed class Enumeration
{
    private readonly SwitchedBox _box;
    private readonly Settling _settling;
    private readonly LiveTester _tester;
    private readonly byte[] _here;
    private Action<SettledState>? _settled;
    private Action<SettledState, byte[]>? _marked;

    internal Enumeration(SwitchedBox box)
    {
        _box = box;
        _settling = new Settling(box);
        _tester = new LiveTester(box);
        _here = new byte[box.Points.Count];
        States = SwitchStates.For(box.Switches.Length, ~box.AllClosed);
    }

    /// <summary>The states, in the order in which they are solved.</summary>
    internal ulong[] States { get; }

    internal Settling Settling => _settling;

    internal LiveTester Tester => _tester;

    /// <summary>Solves every state.</summary>
    /// <param name="plugs">What is plugged.</param>
    /// <param name="settled">Sees each settled state, and both ends where a relay has two, before any burden is on.</param>
    /// <param name="marked">Sees the same with what is live in it; voltages then mean nothing any more.</param>
    /// <returns>For each state in turn a mark for each point: 1 where it is live, however the relays stood before.</returns>
    internal byte[] Run(PlugCase plugs, Action<SettledState>? settled = null, Action<SettledState, byte[]>? marked = null)
    {
        int points = _box.Points.Count;
        byte[] live = new byte[States.Length * points];
        (_settled, _marked) = (settled, marked);
        _box.Plug(plugs);
        SettledState? state = null;
        for (int i = 0; i < States.Length; i++)
        {
            Solve(plugs, States[i], live.AsSpan(i * points, points), ref state);
        }

        return live;
    }

    private void Solve(PlugCase plugs, ulong closed, Span<byte> live, ref SettledState? state)
    {
        _box.SetSwitches(closed);
        ulong pulledIn = 0;
        bool held = false;
        if (_box.Relays.Length > 0)
        {
            _settling.FromPulledIn();
            pulledIn = _settling.Energised();
            held = AnyChatters() == 0;
        }

        Solution solution = _settling.FromRest();
        ulong atRest = _settling.Energised();
        ulong chattering = AnyChatters();
        held &= chattering == 0 && pulledIn != atRest;
        state ??= new SettledState { Plugs = plugs, Solution = solution, Running = _settling.Running };
        (state.Closed, state.HeldIn, state.Energised) = (closed, false, atRest);
        (state.Chattering, state.TwoStates) = (chattering, held ? pulledIn ^ atRest : 0);
        Look(state, live);
        if (held)
        {
            // The other end is solved again, since the burdens and the first end have overwritten it.
            _settling.FromPulledIn();
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
