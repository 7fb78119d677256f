using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;

namespace WireCheck.Faults;

/// <summary>
/// A short as a sequence: the device that has cleared first at its slowest opens, the box is solved again, the others go on
/// from where they had melted to, until the current stops or nothing is left that would open. A BMS is taken for a piece of
/// wire; what it would do is told beside.
/// </summary>
internal sealed class ClearingSequence
{
    /// <summary>More devices in a row than any box has on one way.</summary>
    private const int MostOpened = 10;

    private readonly ShortedNetwork _network;
    private readonly FaultDevice[] _devices;
    private readonly FaultWires _wires;
    private readonly WiredBms[] _bms;
    private readonly double _stoppedAmps;
    private readonly double _inTheWay;

    internal ClearingSequence(ShortedNetwork network, FaultDevice[] devices, FaultWires wires, WiredBms[] bms, double stoppedAmps, double inTheWay)
    {
        _network = network;
        _devices = devices;
        _wires = wires;
        _bms = bms;
        _stoppedAmps = stoppedAmps;
        _inTheWay = inTheWay;
    }

    /// <summary>
    /// Follows the short that the network has just been solved with.
    /// </summary>
    /// <returns>False when a step of it had no answer.</returns>
    internal bool Follow(FaultOutcome outcome)
    {
        foreach (FaultDevice device in _devices)
        {
            (device.Melted, device.IsOpen) = (0, false);
        }

        _wires.Start();
        outcome.Bms = FirstBms();
        outcome.GuardId = SmallestInTheWay(outcome.Amps)?.Id;
        List<FaultStep> steps = [];
        bool solved = true;
        double amps = outcome.Amps;
        while (solved && amps >= _stoppedAmps)
        {
            FaultDevice? next = Next(outcome, out double seconds);
            if (next is null || steps.Count == MostOpened)
            {
                break;
            }

            Pass(seconds);
            outcome.Seconds += seconds;
            outcome.LetThrough += amps * amps * seconds;
            steps.Add(new FaultStep(next.Id, outcome.Seconds, Math.Abs(_network.Amps[next.Contact.Index])));
            next.IsOpen = true;
            solved = _network.Open(next.Contact);
            amps = Math.Abs(_network.ShortAmps);
        }

        outcome.Steps = steps;
        outcome.Cleared = solved && amps < _stoppedAmps;
        if (!outcome.Cleared)
        {
            outcome.SustainedAmps = amps;
            outcome.Seconds = double.PositiveInfinity;
            outcome.LetThrough = double.PositiveInfinity;
            _wires.Carry(_network.Amps, double.PositiveInfinity);
        }

        _wires.Finish(outcome);
        return solved;
    }

    /// <summary>The device that is first to have cleared for certain, and when; null when none would.</summary>
    private FaultDevice? Next(FaultOutcome outcome, out double seconds)
    {
        FaultDevice? first = null;
        seconds = double.PositiveInfinity;
        foreach (FaultDevice device in _devices)
        {
            double amps = Math.Abs(_network.Amps[device.Contact.Index]);
            if (device.IsOpen || amps < _stoppedAmps)
            {
                continue;
            }

            if (outcome.Case.Highest && amps > device.HighestAmps)
            {
                (device.HighestAmps, device.HighestIn) = (amps, outcome);
            }

            double left = device.SecondsLeft(amps);
            if (left < seconds)
            {
                (first, seconds) = (device, left);
            }
        }

        return first;
    }

    /// <summary>Lets time pass: devices melt, wires warm.</summary>
    private void Pass(double seconds)
    {
        foreach (FaultDevice device in _devices)
        {
            if (!device.IsOpen)
            {
                double whole = device.Band.Slowest(Math.Abs(_network.Amps[device.Contact.Index]));
                device.Melted = whole > 0 ? Math.Min(1, device.Melted + (seconds / whole)) : 1;
            }
        }

        _wires.Carry(_network.Amps, seconds);
    }

    private FaultDevice? SmallestInTheWay(double amps)
    {
        FaultDevice? smallest = null;
        foreach (FaultDevice device in _devices)
        {
            if (Math.Abs(_network.Amps[device.Contact.Index]) >= _inTheWay * amps && device.Band.Rating < (smallest?.Band.Rating ?? double.PositiveInfinity))
            {
                smallest = device;
            }
        }

        return smallest;
    }

    /// <summary>The BMS that would trip first at the first currents.</summary>
    private BmsTripping? FirstBms()
    {
        BmsTripping? first = null;
        foreach (WiredBms wired in _bms)
        {
            foreach (Element element in wired.Elements)
            {
                double amps = element is Contact ? Math.Abs(_network.Amps[element.Index]) : 0;
                double? seconds = Delay(wired.Bms, amps);
                if (seconds is { } delay && delay < (first?.Seconds ?? double.PositiveInfinity))
                {
                    first = new BmsTripping(wired.Part.Id, amps, delay);
                }
            }
        }

        return first;
    }

    private static double? Delay(Bms bms, double amps) =>
        bms.ShortCircuit is { } fast && amps >= fast.Current.Value.Amperes ? fast.After.Value.Seconds
        : amps >= bms.Trip.Current.Value.Amperes ? bms.Trip.After.Value.Seconds
        : null;
}
