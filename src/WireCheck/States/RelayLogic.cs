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
    private readonly SortedSet<string> _chattering = new(StringComparer.Ordinal);

    internal RelayLogic(BoxWiring wiring)
    {
        _relays = [.. wiring.Of<WiredRelay>()];
        _plus = [.. _relays.Select(r => wiring.Node(r.Part.Id, "86"))];
        _minus = [.. _relays.Select(r => wiring.Node(r.Part.Id, "85"))];
        _changes = new int[_relays.Length];
    }

    internal bool Any => _relays.Length > 0;

    /// <summary>Ids of relays that did not settle since the last start.</summary>
    internal IReadOnlyCollection<string> Chattering => _chattering;

    /// <summary>Puts every relay at rest or pulled in.</summary>
    internal void Start(bool energised)
    {
        _chattering.Clear();
        for (int i = 0; i < _relays.Length; i++)
        {
            _changes[i] = 0;
            _relays[i].Energised = energised;
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

    /// <summary>Lets the contacts follow a solution; true when one moved.</summary>
    internal bool Follow(Solution solution)
    {
        bool moved = false;
        for (int i = 0; i < _relays.Length; i++)
        {
            WiredRelay relay = _relays[i];
            if (relay.Held is not null)
            {
                continue;
            }

            double volts = solution.Voltage(_plus[i], _minus[i]);
            bool energised = relay.Energised
                ? Math.Abs(volts) > relay.ReleaseVolts
                : Math.Abs(volts) >= relay.OperateVolts;
            if (energised == relay.Energised)
            {
                continue;
            }

            if (++_changes[i] > MostChanges)
            {
                _chattering.Add(relay.Part.Id);
                continue;
            }

            relay.Energised = energised;
            moved = true;
        }

        return moved;
    }

    internal IReadOnlyList<RelayState> States(Solution solution) =>
    [
        .. _relays.Select((r, i) => new RelayState(
            r.Part.Id, r.Energised, solution.Voltage(_plus[i], _minus[i]), r.CoilCelsius, r.OperateVolts, r.ReleaseVolts)),
    ];

    /// <summary>True when the relay of that id is energised.</summary>
    internal bool IsEnergised(string id) => Array.Exists(_relays, r => r.Part.Id == id && r.Energised);
}
