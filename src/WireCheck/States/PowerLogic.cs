using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;

namespace WireCheck.States;

/// <summary>
/// Starts and stops converters, inverters and constant-power loads. One that cannot be served, or that sags below
/// its cut-off once it runs, stays off for that state: its demand is told, not hidden.
/// </summary>
internal sealed class PowerLogic
{
    private readonly BoxWiring _wiring;

    private readonly double _enableVolts;
    private readonly IPoweredInput[] _inputs;
    private readonly string[] _inputIds;
    private readonly WiredLoad[] _loads;
    private readonly WiredCharger[] _chargers;
    private readonly double[] _sagVolts;
    private readonly HashSet<string> _undeliverable = new(StringComparer.Ordinal);
    private readonly bool[] _loadRuns;

    internal PowerLogic(BoxWiring wiring)
    {
        _wiring = wiring;
        _enableVolts = wiring.Data.Assumed("enable_high");
        WiredPart[] inputs = [.. wiring.Parts.Where(p => p is IPoweredInput)];
        _inputs = [.. inputs.Cast<IPoweredInput>()];
        _inputIds = [.. inputs.Select(p => p.Part.Id)];
        _loads = [.. wiring.Of<WiredLoad>().Where(l => l.PowerElement is not null)];
        _chargers = [.. wiring.Of<WiredCharger>().Where(c => c.Stage is not null)];
        _sagVolts = new double[_inputs.Length];
        _loadRuns = new bool[_loads.Length];
    }

    /// <summary>Everything off, nothing remembered.</summary>
    internal void Start()
    {
        _undeliverable.Clear();
        Array.Fill(_sagVolts, double.NaN);
        Pause();
    }

    /// <summary>Everything off for the moment; what cannot be served stays known.</summary>
    internal void Pause()
    {
        for (int i = 0; i < _inputs.Length; i++)
        {
            _inputs[i].On = false;
        }

        for (int i = 0; i < _loads.Length; i++)
        {
            _loadRuns[i] = false;
            _loads[i].SetRunning(false);
        }
    }

    /// <summary>How far a controller gives way when its panels cannot bring what it asks for: it seeks a little lower.</summary>
    private const double GivingWay = 0.99;

    /// <summary>Less than this share of what its panels could bring means that no closed way leads from them to the controller, only leaks.</summary>
    private const double LeastShare = 0.01;

    /// <summary>Turns off, for the rest of this state, what no voltage can serve.</summary>
    internal void GiveUp(Solution solution)
    {
        IReadOnlyList<Element> collapsed = solution.Collapsed;
        foreach (WiredCharger charger in _chargers)
        {
            GiveUp(charger, solution);
        }

        for (int i = 0; i < _inputs.Length; i++)
        {
            if (_wiring[_inputIds[i]].Elements.Any(collapsed.Contains))
            {
                _undeliverable.Add(_inputIds[i]);
                _inputs[i].On = false;
            }
        }

        for (int i = 0; i < _loads.Length; i++)
        {
            if (_loads[i].PowerElement is { } element && collapsed.Contains(element))
            {
                _undeliverable.Add(_loads[i].Part.Id);
                _loadRuns[i] = false;
                _loads[i].SetRunning(false);
            }
        }
    }

    private void GiveUp(WiredCharger charger, Solution solution)
    {
        if (charger.Stage is not { } stage || !solution.Collapsed.Contains(stage))
        {
            return;
        }

        if (charger.Feed is not null && solution.ServedShare > LeastShare)
        {
            stage.PowerLimitWatts *= Math.Min(GivingWay, solution.ServedShare);
            return;
        }

        stage.On = false;
        _undeliverable.Add(charger.Part.Id);
    }

    /// <summary>Starts and stops by the voltages of a solution; true when anything changed.</summary>
    internal bool Follow(Solution solution, RelayLogic relays)
    {
        bool changed = false;
        for (int i = 0; i < _inputs.Length; i++)
        {
            changed |= FollowInput(i, solution, relays);
        }

        for (int i = 0; i < _loads.Length; i++)
        {
            changed |= FollowLoad(i, solution);
        }

        return changed;
    }

    internal IReadOnlyList<InputState> States() =>
    [
        .. _inputs.Select((input, i) => new InputState(
            _inputIds[i], input.On, !double.IsNaN(_sagVolts[i]), _sagVolts[i])),
    ];

    internal IReadOnlyList<string> Undeliverable() => [.. _undeliverable.Order(StringComparer.Ordinal)];

    private bool FollowInput(int i, Solution solution, RelayLogic relays)
    {
        IPoweredInput input = _inputs[i];
        double volts = solution.Voltage(input.InputPlus, input.InputMinus);
        if (input.On)
        {
            bool enabled = IsEnabled(input, volts, solution, relays);
            if (enabled && volts >= input.CutOffVolts)
            {
                return false;
            }

            if (enabled)
            {
                _sagVolts[i] = volts;
            }

            input.On = false;
            return true;
        }

        bool starts = double.IsNaN(_sagVolts[i]) && !_undeliverable.Contains(_inputIds[i])
            && volts >= input.CutOffVolts && IsEnabled(input, volts, solution, relays);
        input.On = starts;
        return starts;
    }

    private bool FollowLoad(int i, Solution solution)
    {
        WiredLoad load = _loads[i];
        if (load.AskedWatts <= 0 || load.PowerElement is not { } element)
        {
            return false;
        }

        double volts = solution.Voltage(element.A, element.B);
        bool runs = !_undeliverable.Contains(load.Part.Id) && volts >= load.LowestRunningVolts;

        // Once stopped by sag it would start and stop for ever; it stays off and its demand is told.
        if (_loadRuns[i] && !runs)
        {
            _undeliverable.Add(load.Part.Id);
        }

        bool changed = runs != _loadRuns[i];
        _loadRuns[i] = runs;
        load.SetRunning(runs);
        return changed;
    }

    private bool IsEnabled(IPoweredInput input, double inputVolts, Solution solution, RelayLogic relays)
    {
        if (input.EnabledBy is { } id)
        {
            return _wiring.Find<WiredSwitch>(id) is { } wired ? wired.Closed : relays.IsEnergised(id);
        }

        return input.EnableNode is not { } node
            || solution.Voltage(node, input.InputMinus) >= Math.Min(_enableVolts, inputVolts / 2);
    }
}
