using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;

namespace WireCheck.Switching;

/// <summary>
/// Tells which of the closed switches make a difference in a state. A switch in series with an open one, or behind a relay
/// whose coil nothing can reach, carries no current and passes no voltage on: the state is solved as the one in which it is
/// open too. The test burdens count as ways that conduct, so that what a switch makes live without any current still
/// counts as a difference.
/// </summary>
internal sealed class MatteringSwitches
{
    private readonly SwitchedBox _box;
    private readonly CurrentLoops _loops;
    private readonly List<Element> _plain = [];
    private readonly List<bool> _always = [];
    private readonly List<int> _from = [];
    private readonly List<int> _to = [];
    private readonly int[] _switchOfPole;
    private readonly int[] _poleWays;
    private readonly int[] _coilWays;
    private readonly int[] _makeWays;
    private readonly int[] _burdenWays;
    private readonly ConverterStage[] _stages;
    private readonly int[] _inputWays;
    private readonly int[] _outputWays;
    private readonly int[] _enablingSwitch;
    private readonly int[] _enablingRelay;
    private readonly bool[] _mayRun;
    private readonly ulong _enabling;

    internal MatteringSwitches(SwitchedBox box)
    {
        _box = box;
        List<int> switchOfPole = [];
        List<int> poleWays = [];
        for (int i = 0; i < box.Switches.Length; i++)
        {
            foreach (Contact pole in box.Switches[i].Poles)
            {
                switchOfPole.Add(i);
                poleWays.Add(Add(pole.A, pole.B));
            }
        }

        (_switchOfPole, _poleWays) = ([.. switchOfPole], [.. poleWays]);
        _coilWays = [.. box.Relays.Select(r => Add(box.Wiring.Node(r.Part.Id, "86"), box.Wiring.Node(r.Part.Id, "85")))];
        _makeWays = [.. box.Relays.Select(r => Add(r.Make.A, r.Make.B))];
        _stages = [.. box.Wiring.Network.Elements.OfType<ConverterStage>()];
        _inputWays = [.. _stages.Select(s => Add(s.A, s.B))];
        _outputWays = [.. _stages.Select(s => Add(s.OutA, s.OutB))];
        _mayRun = new bool[_stages.Length];
        IPoweredInput?[] inputs = [.. _stages.Select(s => Array.Find(box.Inputs, i => i is WiredConverter c && c.Stage == s))];
        _enablingSwitch = [.. inputs.Select(i => Array.FindIndex(box.Switches, s => s.Part.Id == i?.EnabledBy))];
        _enablingRelay = [.. inputs.Select(i => Array.FindIndex(box.Relays, r => r.Part.Id == i?.EnabledBy))];
        IsConverter = [.. inputs.Select(i => i is not null)];
        foreach (IPoweredInput input in box.Inputs)
        {
            int number = Array.FindIndex(box.Switches, s => s.Part.Id == input.EnabledBy);
            _enabling |= number is >= 0 and < SwitchStates.MostSwitches ? 1UL << number : 0;
        }

        _burdenWays = [.. box.Burdens.OfType<Element>().Select(b => Add(b.A, b.B))];

        // A voltage at an enable terminal tells whether a switch makes a difference, though no current flows there.
        foreach (IPoweredInput input in box.Inputs)
        {
            if (input.EnableNode is { } node)
            {
                Add(node, input.InputMinus);
            }
        }

        AddRest();
        _loops = new CurrentLoops(box.Wiring.Network.NodeCount, [.. _from], [.. _to]);
    }

    /// <summary>By stage: a converter, which starts by itself; false for a charger's stage, which is plugged.</summary>
    private bool[] IsConverter { get; }

    /// <summary>Relays whose coil a source can reach in the state last looked at, one bit each; only these may pull in or hold.</summary>
    internal ulong MayHold { get; private set; }

    /// <summary>Looks anew at what conducts whatever the switches do, as after plugging.</summary>
    internal void LookAtPlugs()
    {
        int first = _from.Count - _plain.Count;
        for (int i = 0; i < _plain.Count; i++)
        {
            Element element = _plain[i];
            _loops.Open[first + i] = !_always[i] && !element.Reaches;
            _loops.Gives[first + i] = element is Source or ChargerOutput or PanelCurve && element.Reaches;
        }
    }

    /// <summary>The closed switches that make a difference, one bit each.</summary>
    internal ulong Of(ulong closed)
    {
        SetPoles(closed);
        SetBurdens(on: true);

        // From all that could be, what cannot be is taken away until nothing more falls.
        MayHold = _coilWays.Length >= 64 ? ulong.MaxValue : (1UL << _coilWays.Length) - 1;
        for (int i = 0; i < _stages.Length; i++)
        {
            _mayRun[i] = IsConverter[i] || _stages[i].On;
        }

        do
        {
            SetWays();
            _loops.Find();
        }
        while (TakeAway(closed));

        return Carrying(closed);
    }

    /// <summary>
    /// The same with the relays as given, the converters as they are and no burden on: the closed switches that lie in a loop
    /// with a source then, one bit each.
    /// </summary>
    /// <param name="closed">Closed switches, one bit each.</param>
    /// <param name="energised">Relays pulled in, one bit each.</param>
    internal ulong Conducting(ulong closed, ulong energised)
    {
        SetPoles(closed);
        SetBurdens(on: false);
        for (int i = 0; i < _makeWays.Length; i++)
        {
            _loops.Open[_makeWays[i]] = (energised & (1UL << i)) == 0;
        }

        for (int i = 0; i < _stages.Length; i++)
        {
            _loops.Gives[_outputWays[i]] = _stages[i].On;
        }

        _loops.Find();
        return Carrying(closed);
    }

    private ulong Carrying(ulong closed)
    {
        ulong matters = closed & _enabling;
        for (int i = 0; i < _poleWays.Length; i++)
        {
            matters |= _loops.Carries[_poleWays[i]] ? 1UL << _switchOfPole[i] : 0;
        }

        return matters;
    }

    private void SetPoles(ulong closed)
    {
        for (int i = 0; i < _poleWays.Length; i++)
        {
            int number = _switchOfPole[i];
            _loops.Open[_poleWays[i]] = number >= SwitchStates.MostSwitches || (closed & (1UL << number)) == 0;
        }
    }

    private void SetBurdens(bool on)
    {
        foreach (int way in _burdenWays)
        {
            _loops.Open[way] = !on;
        }
    }

    private void SetWays()
    {
        for (int i = 0; i < _coilWays.Length; i++)
        {
            _loops.Open[_makeWays[i]] = !Holds(i);
        }

        for (int i = 0; i < _stages.Length; i++)
        {
            _loops.Gives[_outputWays[i]] = _mayRun[i];
        }
    }

    private bool TakeAway(ulong closed)
    {
        bool fell = false;
        for (int i = 0; i < _coilWays.Length && i < 64; i++)
        {
            if (Holds(i) && !_loops.Carries[_coilWays[i]] && _box.Relays[i].Relay.Latching?.Value != true)
            {
                MayHold &= ~(1UL << i);
                fell = true;
            }
        }

        for (int i = 0; i < _stages.Length; i++)
        {
            bool barred = (_enablingSwitch[i] is >= 0 and < SwitchStates.MostSwitches and int by && (closed & (1UL << by)) == 0)
                || (_enablingRelay[i] >= 0 && !Holds(_enablingRelay[i]));
            if (_mayRun[i] && (barred || !_loops.Carries[_inputWays[i]]))
            {
                _mayRun[i] = false;
                fell = true;
            }
        }

        return fell;
    }

    private bool Holds(int relay) => relay >= 64 || (MayHold & (1UL << relay)) != 0;

    /// <summary>Everything else.</summary>
    private void AddRest()
    {
        // A rest contact is closed until its relay pulls in.
        HashSet<Element> always = [.. _box.Relays.Select(r => r.Rest).OfType<Element>()];
        HashSet<Element> told = [.. _stages, .. _box.Burdens.OfType<Element>()];
        foreach (WiredSwitch wired in _box.Switches)
        {
            told.UnionWith(wired.Poles);
        }

        told.UnionWith(_box.Relays.Select(r => r.Make));

        foreach (Element element in _box.Wiring.Network.Elements)
        {
            if (!told.Contains(element))
            {
                Add(element.A, element.B);
                _plain.Add(element);
                _always.Add(always.Contains(element));
            }
        }
    }

    private int Add(int a, int b)
    {
        _from.Add(a);
        _to.Add(b);
        return _from.Count - 1;
    }
}
