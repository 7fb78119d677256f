using WireCheck.Circuit.Wiring;

namespace WireCheck.Switching;

/// <summary>Which converters and inverters run in a state. What sags by its own start, or cannot be fed, stays off in it.</summary>
internal sealed class RunningInputs
{
    private readonly SwitchedBox _box;
    private readonly IPoweredInput[] _inputs;
    private readonly WiredSwitch?[] _enablingSwitch;
    private readonly WiredRelay?[] _enablingRelay;
    private readonly bool[] _running;
    private readonly bool[] _givenUp;
    private readonly double _enableVolts;

    internal RunningInputs(SwitchedBox box)
    {
        _box = box;
        _inputs = box.Inputs;
        _enablingSwitch = [.. _inputs.Select(i => box.Wiring.Find<WiredSwitch>(i.EnabledBy))];
        _enablingRelay = [.. _inputs.Select(i => box.Wiring.Find<WiredRelay>(i.EnabledBy))];
        _running = new bool[_inputs.Length];
        _givenUp = new bool[_inputs.Length];
        _enableVolts = box.Wiring.Data.Assumed("enable_high");
    }

    /// <summary>What runs, in the order of the box's inputs.</summary>
    internal IReadOnlyList<bool> Running => _running;

    /// <summary>The same, one bit each.</summary>
    internal ulong RunningBits => Bits(_running);

    /// <summary>What started and could not go on, one bit each.</summary>
    internal ulong GivenUpBits => Bits(_givenUp);

    /// <summary>Stops everything and gives each a new try.</summary>
    internal void Stop() => PutBack(0, 0);

    /// <summary>Puts everything back as it stood before.</summary>
    internal void PutBack(ulong running, ulong givenUp)
    {
        for (int i = 0; i < _inputs.Length; i++)
        {
            _running[i] = (running & (1UL << Math.Min(i, 63))) != 0;
            _givenUp[i] = (givenUp & (1UL << Math.Min(i, 63))) != 0;
            _inputs[i].On = _running[i] && _inputs[i] is WiredConverter;
        }
    }

    /// <summary>Starts and stops by a reading; true when anything moved.</summary>
    internal bool StartAndStop(StateReading reading)
    {
        bool moved = GiveUp(reading);
        bool stopped = moved;
        for (int i = 0; i < _inputs.Length; i++)
        {
            IPoweredInput input = _inputs[i];
            double volts = reading.InputVolts[i];
            bool runs = !_givenUp[i] && volts >= input.CutOffVolts && IsEnabled(i, volts, reading);
            if (runs == _running[i])
            {
                continue;
            }

            // What sags below its cut-off by its own idle current does not start again.
            _givenUp[i] |= _running[i] && IsEnabled(i, volts, reading);
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

    private bool GiveUp(StateReading reading)
    {
        bool any = false;
        for (int i = 0; i < _inputs.Length; i++)
        {
            if (reading.Collapsed[i] && _running[i])
            {
                (_givenUp[i], _running[i], _inputs[i].On) = (true, false, false);
                any = true;
            }
        }

        return any;
    }

    private bool IsEnabled(int i, double volts, StateReading reading)
    {
        if (_enablingSwitch[i] is { } wired)
        {
            return wired.Closed;
        }

        if (_enablingRelay[i] is { } relay)
        {
            return relay.Energised;
        }

        return _inputs[i].EnableNode is null || reading.EnableVolts[i] >= Math.Min(_enableVolts, volts / 2);
    }

    private static ulong Bits(bool[] marks)
    {
        ulong bits = 0;
        for (int i = 0; i < marks.Length && i < 64; i++)
        {
            bits |= marks[i] ? 1UL << i : 0;
        }

        return bits;
    }
}
