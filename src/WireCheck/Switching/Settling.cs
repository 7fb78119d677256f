using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Switching;

/// <summary>
/// Lets contacts follow coils, one after the other as <see cref="RelayRace"/> tells, and converters start and stop, until
/// nothing moves. A converter that the wiring cannot feed stays off. The coils are cold; a latching relay stays pulled in
/// once it is.
/// </summary>
internal sealed class Settling
{
    /// <summary>More rounds than any chain of converters of a real box needs; each move of a relay is one more.</summary>
    private const int MostRounds = 64;

    /// <summary>A relay that changes this often in one state never settles.</summary>
    private const int MostChanges = 6;

    private readonly SwitchedBox _box;
    private readonly WiredRelay[] _relays;
    private readonly int[] _plus;
    private readonly int[] _minus;
    private readonly double[] _operate;
    private readonly double[] _release;
    private readonly RelayRace _race;
    private readonly double[] _threshold;
    private readonly bool[] _wants;
    private readonly int[] _changes;
    private readonly bool[] _chatters;
    private readonly IPoweredInput[] _inputs;
    private readonly RunningInputs _running;
    private readonly KnownReadings _known = new();
    private Func<ulong, ulong>? _conducting;
    private StateReading _reading;
    private Solution? _solution;

    internal Settling(SwitchedBox box)
    {
        _box = box;
        _relays = box.Relays;
        _plus = [.. _relays.Select(r => box.Wiring.Node(r.Part.Id, "86"))];
        _minus = [.. _relays.Select(r => box.Wiring.Node(r.Part.Id, "85"))];
        _operate = [.. _relays.Select(r => r.OperateVolts)];
        _release = [.. _relays.Select(r => r.ReleaseVolts)];
        _race = new RelayRace(_relays.Length);
        _threshold = new double[_relays.Length];
        _wants = new bool[_relays.Length];
        _changes = new int[_relays.Length];
        _chatters = new bool[_relays.Length];
        _inputs = box.Inputs;
        _running = new RunningInputs(box);
        _reading = new StateReading(_relays.Length, _inputs.Length);
    }

    /// <summary>Relays that did not come to rest in the last state.</summary>
    internal IReadOnlyList<bool> Chatters => _chatters;

    /// <summary>How close the closest of two relays was in the last state; see <see cref="RelayRace.Closest"/>.</summary>
    internal double ClosestRace => _race.Closest;

    /// <summary>Converters and inverters that run, in the order of the box's inputs.</summary>
    internal IReadOnlyList<bool> Running => _running.Running;

    /// <summary>True when something started and could not go on in the last state.</summary>
    internal bool AnyGivenUp => _running.GivenUpBits != 0;

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

    /// <summary>
    /// Keeps what coils and converters see in each state of the contacts, until <see cref="Forget"/>, so that a state that has
    /// been solved is not solved again on the way to rest. Nothing else may change meanwhile than switches, relays and
    /// converters.
    /// </summary>
    /// <param name="conducting">Of the relays pulled in: the closed switches that could carry a current then.</param>
    internal void Remember(Func<ulong, ulong> conducting)
    {
        _known.Clear();
        _conducting = _relays.Length <= 64 && _inputs.Length <= 64 ? conducting : null;
    }

    /// <summary>Ends <see cref="Remember"/>.</summary>
    internal void Forget() => _conducting = null;

    /// <summary>Settles from relays at rest and nothing running.</summary>
    internal Solution FromRest()
    {
        SettleFromRest();
        return Solve();
    }

    /// <summary>
    /// Settles from relays held in: what they feed starts first, so that a coil that a converter feeds is seen to hold, then
    /// they are let go.
    /// </summary>
    /// <param name="pulledIn">The relays that start held in, one bit each.</param>
    internal Solution FromPulledIn(ulong pulledIn)
    {
        SettleFromPulledIn(pulledIn);
        return Solve();
    }

    /// <summary>Settles on from the relays as they stand, as after something else has opened.</summary>
    internal Solution GoOn()
    {
        Array.Clear(_changes);
        Array.Clear(_chatters);
        Read();
        Follow();
        return Solve();
    }

    /// <summary>As <see cref="FromRest"/>, the voltages left unsolved where they are not needed to follow the relays.</summary>
    internal void SettleFromRest()
    {
        Start(pulledIn: 0);
        Read();
        Follow();
    }

    /// <summary>As <see cref="FromPulledIn"/>, the voltages left unsolved where they are not needed to follow the relays.</summary>
    internal void SettleFromPulledIn(ulong pulledIn)
    {
        Start(pulledIn);
        Read();
        for (int round = 0; round < MostRounds && _running.StartAndStop(_reading); round++)
        {
            Read();
        }

        Follow();
    }

    /// <summary>What runs and what has been given up, one bit each, to be put back.</summary>
    internal (ulong Running, ulong GivenUp) Inputs() => (_running.RunningBits, _running.GivenUpBits);

    /// <summary>Puts relays and converters back where they came to rest before, without following them again.</summary>
    internal void PutBack(ulong energised, ulong running, ulong givenUp)
    {
        Start(energised);
        _running.PutBack(running, givenUp);
        _solution = null;
    }

    /// <summary>The voltages and currents of the contacts as they stand.</summary>
    internal Solution Solve() => _solution ??= _box.Solver.Solve();

    private void Start(ulong pulledIn)
    {
        Array.Clear(_changes);
        Array.Clear(_chatters);
        _race.Clear();
        for (int i = 0; i < _relays.Length; i++)
        {
            bool isIn = (pulledIn & (1UL << Math.Min(i, 63))) != 0;
            _relays[i].Energised = isIn;
            _race.Begin(i, isIn ? _relays[i].Relay.Coil.Voltage.Value.Volts : 0);
        }

        _running.Stop();
        _box.Solver.ForgetIslands();
    }

    private void Follow()
    {
        for (int round = 0; round < MostRounds + (MostChanges * _relays.Length); round++)
        {
            if (FollowCoils())
            {
                _box.Solver.ForgetIslands();
            }
            else if (!_running.StartAndStop(_reading))
            {
                break;
            }

            Read();
        }
    }

    /// <summary>What coils and converters see with the contacts as they stand: as solved before, or solved now.</summary>
    private void Read()
    {
        _solution = null;
        if (_conducting is null)
        {
            _reading.Take(Solve(), _plus, _minus, _inputs);
            return;
        }

        ulong energised = Energised();
        ulong closed = _conducting(energised);
        ulong running = _running.RunningBits;
        if (_known.Find(closed, energised, running) is { } known)
        {
            _reading = known;
            return;
        }

        _reading = new StateReading(_relays.Length, _inputs.Length);
        _reading.Take(Solve(), _plus, _minus, _inputs);
        _known.Keep(closed, energised, running, _reading);
    }

    /// <summary>Moves the relay that is first; false when none wants to move.</summary>
    private bool FollowCoils()
    {
        double[] volts = _reading.CoilVolts;
        while (true)
        {
            for (int i = 0; i < _relays.Length; i++)
            {
                bool was = _relays[i].Energised;
                double coil = Math.Abs(volts[i]);
                _threshold[i] = was ? _release[i] : _operate[i];
                _wants[i] = !_chatters[i]
                    && (was ? coil <= _release[i] && _relays[i].Relay.Latching?.Value != true : coil >= _operate[i]);
            }

            int first = _race.First(volts, _threshold, _wants);
            if (first < 0)
            {
                _race.Rest(volts);
                return false;
            }

            if (++_changes[first] <= MostChanges)
            {
                _relays[first].Energised = !_relays[first].Energised;
                return true;
            }

            _chatters[first] = true;
        }
    }
}
