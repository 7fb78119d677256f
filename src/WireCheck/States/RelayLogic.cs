using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;

namespace WireCheck.States;

/// <summary>
/// Contacts follow coils: a relay pulls in at its operate voltage and lets go at its release voltage, both at the
/// temperature its coil has there.
/// </summary>
internal sealed class RelayLogic
{
    /// <summary>A relay that changes this often in one mode never settles.</summary>
    private const int MostChanges = 6;

    private readonly WiredRelay[] _relays;
    private readonly int[] _plus;
    private readonly int[] _minus;
    private readonly int[] _changes;
    private readonly double[] _volts;
    private readonly double[] _thresholds;
    private readonly bool[] _wants;
    private readonly RelayRace _race;
    private readonly SortedSet<string> _chattering = new(StringComparer.Ordinal);
    private bool _oneByOne;
    private bool _startedIn;

    internal RelayLogic(BoxWiring wiring)
    {
        _relays = [.. wiring.Of<WiredRelay>()];
        _plus = [.. _relays.Select(r => wiring.Node(r.Part.Id, "86"))];
        _minus = [.. _relays.Select(r => wiring.Node(r.Part.Id, "85"))];
        _changes = new int[_relays.Length];
        _volts = new double[_relays.Length];
        _thresholds = new double[_relays.Length];
        _wants = new bool[_relays.Length];
        _race = new RelayRace(_relays.Length);
    }

    internal bool Any => _relays.Length > 0;

    /// <summary>Ids of relays that did not settle since the last start.</summary>
    internal IReadOnlyCollection<string> Chattering => _chattering;

    /// <summary>Puts every relay at rest or pulled in.</summary>
    internal void Start(bool energised)
    {
        _chattering.Clear();
        (_oneByOne, _startedIn) = (false, energised);
        for (int i = 0; i < _relays.Length; i++)
        {
            _changes[i] = 0;
            _relays[i].Energised = energised;
            _race.Begin(i, energised ? _relays[i].Relay.Coil.Voltage.Value.Volts : 0);
        }
    }

    internal bool[] Energised() => [.. _relays.Select(r => r.Energised)];

    /// <summary>Ids of relays that stand otherwise than in another end state.</summary>
    internal List<string> Different(bool[] other) =>
        [.. _relays.Where((r, i) => r.Energised != other[i]).Select(r => r.Part.Id)];

    /// <summary>Lets the coils warm to a solution's voltages; true when a resistance moved.</summary>
    internal bool Warm(Solution solution)
    {
        bool moved = false;
        for (int i = 0; i < _relays.Length; i++)
        {
            moved |= _relays[i].SettleCoil(solution.Voltage(_plus[i], _minus[i]));
        }

        return moved;
    }

    /// <summary>
    /// Lets the contacts follow a solution; true when one moved. All that want to move do so at once, which is quick; where that
    /// never ends they start again and go one after the other, since of two that take each other's feed one is the quicker.
    /// </summary>
    internal bool Follow(Solution solution)
    {
        for (int i = 0; i < _relays.Length; i++)
        {
            WiredRelay relay = _relays[i];
            _volts[i] = solution.Voltage(_plus[i], _minus[i]);
            _thresholds[i] = relay.Energised ? relay.ReleaseVolts : relay.OperateVolts;
            bool energised = relay.Energised ? Math.Abs(_volts[i]) > _thresholds[i] : Math.Abs(_volts[i]) >= _thresholds[i];
            _wants[i] = relay.Held is null && energised != relay.Energised && !_chattering.Contains(relay.Part.Id);
        }

        return _oneByOne ? MoveFirst() : MoveAll();
    }

    private bool MoveAll()
    {
        bool moved = false;
        for (int i = 0; i < _relays.Length; i++)
        {
            if (!_wants[i])
            {
                continue;
            }

            if (++_changes[i] <= MostChanges)
            {
                _relays[i].Energised = !_relays[i].Energised;
                moved = true;
            }
            else if (_relays.Length > 1)
            {
                Start(_startedIn);
                _oneByOne = true;
                return true;
            }
            else
            {
                _chattering.Add(_relays[i].Part.Id);
            }
        }

        return moved;
    }

    private bool MoveFirst()
    {
        int first;
        while ((first = _race.First(_volts, _thresholds, _wants)) >= 0)
        {
            if (++_changes[first] <= MostChanges)
            {
                _relays[first].Energised = !_relays[first].Energised;
                return true;
            }

            _chattering.Add(_relays[first].Part.Id);
            _wants[first] = false;
        }

        _race.Rest(_volts);
        return false;
    }

    internal IReadOnlyList<RelayState> States(Solution solution) =>
    [
        .. _relays.Select((r, i) => new RelayState(
            r.Part.Id, r.Energised, solution.Voltage(_plus[i], _minus[i]), r.CoilCelsius, r.OperateVolts, r.ReleaseVolts)),
    ];

    /// <summary>True when the relay of that id is energised.</summary>
    internal bool IsEnergised(string id) => Array.Exists(_relays, r => r.Part.Id == id && r.Energised);
}
