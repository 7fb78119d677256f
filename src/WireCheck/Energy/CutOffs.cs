using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Energy;

/// <summary>
/// Tells which cut-off has tripped at a solved state of a mode. What counts is what served something with the bank full: an
/// inverter that only idles, and whatever was off from the start, ends nothing.
/// </summary>
internal sealed class CutOffs
{
    /// <summary>Less than this is no service, W.</summary>
    private const double SmallestWatts = 1e-3;

    private readonly BoxWiring _wiring;
    private readonly WiredBank[] _banks;
    private readonly WiredBms?[] _bms;

    internal CutOffs(BoxWiring wiring, WiringGraph graph)
    {
        _wiring = wiring;
        _banks = [.. wiring.Of<WiredBank>()];
        _bms = new WiredBms?[_banks.Length];
        for (int i = 0; i < _banks.Length; i++)
        {
            _bms[i] = BankBms.Of(wiring, graph, _banks[i]);
        }
    }

    /// <summary>Ids of inverters, converters and loads that are asked to serve in the mode just solved.</summary>
    internal HashSet<string> Served()
    {
        HashSet<string> served = new(StringComparer.Ordinal);
        foreach (WiredPart part in _wiring.Parts)
        {
            if (part switch
            {
                WiredInverter inverter => inverter.Element.Watts > SmallestWatts,
                WiredConverter converter => converter.Outlet.Watts > SmallestWatts || converter.Stage is { On: true, OutputWatts: > SmallestWatts },
                WiredLoad load => load.PowerElement is not null && load.AskedWatts > SmallestWatts,
                _ => false,
            })
            {
                served.Add(part.Part.Id);
            }
        }

        return served;
    }

    /// <summary>What has tripped in a discharge; null while everything serves.</summary>
    internal RunEnd? Discharging(OperatingPoint point, HashSet<string> served)
    {
        for (int i = 0; i < _banks.Length; i++)
        {
            double limit = (_bms[i]?.Bms.CellCutoff.Value.From ?? _banks[i].Cells.Window.Value.From).Volts;
            double lowest = CellVolts(_banks[i], point, lowest: true);
            if (lowest <= limit)
            {
                return new RunEnd(_bms[i] is null ? RunEndKind.CellWindow : RunEndKind.Bms, (_bms[i]?.Part ?? _banks[i].Part).Id, lowest);
            }
        }

        foreach (InputState input in point.Inputs)
        {
            if (served.Contains(input.Id) && !input.On)
            {
                return Stopped(input, point);
            }
        }

        foreach (WiredLoad load in _wiring.Of<WiredLoad>())
        {
            if (served.Contains(load.Part.Id) && load.PowerElement is { } element)
            {
                double volts = point.Volts(element.A, element.B);
                bool below = load.Load.Window is { } window && volts < window.Value.From.Volts;
                if (below || !element.On)
                {
                    return new RunEnd(below ? RunEndKind.LoadWindow : RunEndKind.Undeliverable, load.Part.Id, volts);
                }
            }
        }

        return null;
    }

    /// <summary>What has stopped a charge; null while nothing has.</summary>
    internal RunEnd? Charging(OperatingPoint point)
    {
        for (int i = 0; i < _banks.Length; i++)
        {
            double highest = CellVolts(_banks[i], point, lowest: false);
            if (_bms[i] is { } bms && highest >= bms.Bms.CellCutoff.Value.To.Volts)
            {
                return new RunEnd(RunEndKind.BmsOvercharge, bms.Part.Id, highest);
            }
        }

        return null;
    }

    private RunEnd Stopped(InputState input, OperatingPoint point)
    {
        if (input.CutOff)
        {
            return new RunEnd(RunEndKind.CutOff, input.Id, input.SagVolts);
        }

        IPoweredInput part = (IPoweredInput)_wiring[input.Id];
        double volts = point.Volts(part.InputPlus, part.InputMinus);
        bool undeliverable = point.Undeliverable.Contains(input.Id);
        return volts < part.CutOffVolts && !undeliverable ? new RunEnd(RunEndKind.CutOff, input.Id, volts)
            : new RunEnd(undeliverable ? RunEndKind.Undeliverable : RunEndKind.Relay, part.EnabledBy ?? input.Id, volts);
    }

    private static double CellVolts(WiredBank bank, OperatingPoint point, bool lowest)
    {
        double found = double.NaN;
        foreach (Source cell in bank.CellElements)
        {
            double volts = point.Volts(cell.A, cell.B);
            found = double.IsNaN(found) ? volts : lowest ? Math.Min(found, volts) : Math.Max(found, volts);
        }

        return found;
    }
}
