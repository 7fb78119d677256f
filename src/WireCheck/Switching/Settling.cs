using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Switching;

/// <summary>
/// Lets contacts follow coils, and converters start and stop, until nothing moves. A converter that the wiring cannot feed
/// stays off. The coils are cold; a latching relay stays pulled in once it is.
/// </summary>
internal sealed class Settling
{
    /// <summary>More rounds than any chain of relays and converters of a real box needs.</summary>
    private const int MostRounds = 64;

    /// <summary>A relay that changes this often in one state never settles.</summary>
    private const int MostChanges = 6;

    private readonly SwitchedBox _box;
    private readonly WiredRelay[] _relays;
    private readonly int[] _plus;
    private readonly int[] _minus;
    private readonly double[] _operate;
    private readonly double[] _release;
    private readonly int[] _changes;
    private readonly bool[] _chatters;
    private readonly IPoweredInput[] _inputs;
    private readonly WiredSwitch?[] _enablingSwitch;
    private readonly WiredRelay?[] _enablingRelay;
    private readonly bool[] _running;
    private readonly bool[] _givenUp;
    private readonly double _enableVolts;

    internal Settling(SwitchedBox box)
    {
        _box = box;
        _relays = box.Relays;
        _plus = [.. _relays.Select(r => box.Wiring.Node(r.Part.Id, "86"))];
        _minus = [.. _relays.Select(r => box.Wiring.Node(r.Part.Id, "85"))];
        _operate = [.. _relays.Select(r => r.OperateVolts)];
        _release = [.. _relays.Select(r => r.ReleaseVolts)];
        _changes = new int[_relays.Length];
        _chatters = new bool[_relays.Length];
        _inputs = box.Inputs;
        _enablingSwitch = [.. _inputs.Select(i => box.Wiring.Find<WiredSwitch>(i.EnabledBy))];
        _enablingRelay = [.. _inputs.Select(i => box.Wiring.Find<WiredRelay>(i.EnabledBy))];
        _running = new bool[_inputs.Length];
        _givenUp = new bool[_inputs.Length];
        _enableVolts = box.Wiring.Data.Assumed("enable_high");
    }

    /// <summary>Relays that did not come to rest in the last state.</summary>
    internal IReadOnlyList<bool> Chatters => _chatters;

    /// <summary>Converters and inverters that run, in the order of the box's inputs.</summary>
    internal IReadOnlyList<bool> Running => _running;

    /// <summary>True when something started and could not go on in the last state.</summary>
    internal bool AnyGivenUp => Array.IndexOf(_givenUp, true) >= 0;

    /// <summary>Voltage across a coil, 86 above 85, V.</summary>
    internal double CoilVolts(int relay, Solution solution) => solution.Voltage(_plus[relay], _minus[relay]);

    /// <summary>The coil's two nodes.</summary>
    internal (int Plus, int Minus) Coil(int relay) => (_plus[relay], _minus[relay]);

    /// <summary>Voltage at which a cold coil lets go, V.</summary>
    internal double ReleaseVolts(int relay) => _release[relay];

    /// <summary>Whether a relay is pulled in, one bit each.</summary>
    internal ulong Energised()
    {
        ulong bits = 0;
        for (int i = 0; i < _relays.Length && i < 64; i++)
        {
            bits |= _relays[i].Energised ? 1UL << i : 0;
        }

        return bits;
    }

    /// <summary>Settles from relays at rest and nothing running.</summary>
    internal Solution FromRest()
    {
        Start(pulledIn: 0);
        return Follow(_box.Solver.Solve());
    }

    /// <summary>
    /// Settles from relays held in: what they feed starts first, so that a coil that a converter feeds is seen to hold, then
    /// they are let go.
    /// </summary>
    /// <param name="pulledIn">The relays that start held in, one bit each.</param>
    internal Solution FromPulledIn(ulong pulledIn)
    {
        Start(pulledIn);
        Solution solution = _box.Solver.Solve();
        for (int round = 0; round < MostRounds && StartAndStop(solution); round++)
        {
            solution = _box.Solver.Solve();
        }

        return Follow(solution);
    }

    /// <summary>Settles on from the relays as they stand, as after something else has opened.</summary>
    internal Solution GoOn()
    {
        Array.Clear(_changes);
        Array.Clear(_chatters);
        return Follow(_box.Solver.Solve());
    }

    private void Start(ulong pulledIn)
    {
        Array.Clear(_changes);
        Array.Clear(_chatters);
        Array.Clear(_givenUp);
        for (int i = 0; i < _relays.Length; i++)
        {
            _relays[i].Energised = (pulledIn & (1UL << Math.Min(i, 63))) != 0;
        }

        for (int i = 0; i < _inputs.Length; i++)
        {
            _running[i] = false;
            _inputs[i].On = false;
        }

        _box.Solver.ForgetIslands();
    }

    private Solution Follow(Solution solution)
    {
        for (int round = 0; round < MostRounds; round++)
        {
            if (FollowCoils(solution))
            {
                _box.Solver.ForgetIslands();
            }
            else if (!StartAndStop(solution))
            {
                break;
            }

            solution = _box.Solver.Solve();
        }

        return solution;
    }

    private bool FollowCoils(Solution solution)
    {
        bool moved = false;
        for (int i = 0; i < _relays.Length; i++)
        {
            WiredRelay relay = _relays[i];
            bool was = relay.Energised;
            double volts = Math.Abs(CoilVolts(i, solution));
            bool energised = was ? volts > _release[i] || relay.Relay.Latching?.Value == true : volts >= _operate[i];
            if (energised == was)
            {
                continue;
            }

            if (++_changes[i] > MostChanges)
            {
                _chatters[i] = true;
                continue;
            }

            relay.Energised = energised;
            moved = true;
        }

        return moved;
    }

    private bool StartAndStop(Solution solution)
    {
        bool moved = solution.Outcome == SolveOutcome.Collapsed && GiveUp(solution);
        bool stopped = moved;
        for (int i = 0; i < _inputs.Length; i++)
        {
            IPoweredInput input = _inputs[i];
            double volts = solution.Voltage(input.InputPlus, input.InputMinus);
            bool runs = !_givenUp[i] && volts >= input.CutOffVolts && IsEnabled(i, volts, solution);
            if (runs == _running[i])
            {
                continue;
            }

            // What sags below its cut-off by its own idle current does not start again.
            _givenUp[i] |= _running[i] && IsEnabled(i, volts, solution);
            _running[i] = runs;

            // An inverter feeds nothing in this network; its idle current would only lower voltages.
            if (input is WiredConverter)
            {
                input.On = runs;
                moved = true;
                stopped |= !runs;
            }
        }

        if (stopped)
        {
            // Nothing else may hold up the output of what has stopped.
            _box.Solver.ForgetIslands();
        }

        return moved;
    }

    private bool GiveUp(Solution solution)
    {
        bool any = false;
        for (int i = 0; i < _inputs.Length; i++)
        {
            if (_inputs[i] is WiredConverter { Stage: { } stage } && _running[i] && solution.Collapsed.Contains(stage))
            {
                (_givenUp[i], _running[i], _inputs[i].On) = (true, false, false);
                any = true;
            }
        }

        return any;
    }

    private bool IsEnabled(int i, double volts, Solution solution)
    {
        if (_enablingSwitch[i] is { } wired)
        {
            return wired.Closed;
        }

        if (_enablingRelay[i] is { } relay)
        {
            return relay.Energised;
        }

        return _inputs[i].EnableNode is not { } node
            || solution.Voltage(node, _inputs[i].InputMinus) >= Math.Min(_enableVolts, volts / 2);
    }
}
