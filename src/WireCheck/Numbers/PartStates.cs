using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Numbers;

/// <summary>Tells a part's state in a solved point: a word or two, its current and its power.</summary>
internal static class PartStates
{
    internal static PartNumbers Of(WiredPart part, OperatingPoint point)
    {
        (string state, double? amps, double? watts) = part switch
        {
            WiredBank bank => Bank(bank, point),
            WiredBms bms => ("conducting", bms.DischargeSign * point.Amps(bms.Path), Heat(bms.Path, point)),
            WiredFuse fuse => ("whole", point.Amps(fuse.Element), Heat(fuse.Element, point)),
            WiredSwitch wired => (
                point.Mode.ClosedSwitches.Contains(part.Part.Id) ? "closed" : "open",
                point.Amps(wired.Poles[0]), wired.Elements.Sum(e => Heat(e, point))),
            WiredRelay relay => Relay(relay, point),
            WiredLoad load => Load(load, point),
            WiredInverter inverter => Input(part.Part.Id, point, point.Amps(inverter.Element), Heat(inverter.Element, point)),
            WiredConverter converter => Input(
                part.Part.Id, point, point.Amps(converter.Stage) + point.Amps(converter.Outlet),
                Heat(converter.Stage, point) + Heat(converter.Outlet, point)),
            WiredCharger charger => Source(part, point, Delivered(charger, point)),
            WiredVehicle vehicle => Source(part, point, -point.Amps(vehicle.Element)),
            WiredPanel panel => Source(part, point, panel.Element is null ? 0 : -point.Amps(panel.Element)),
            WiredPort port => ("", point.Amps(port.Plus), Heat(port.Plus, point) + Heat(port.Minus, point)),
            _ => Plain(part, point),
        };
        return new PartNumbers(part.Part.Id, part.Part.Kind, state, amps, watts);
    }

    private static (string, double?, double?) Bank(WiredBank bank, OperatingPoint point)
    {
        double amps = -bank.CellElements.Take(bank.Columns).Sum(c => point.Amps(c));
        string state = amps < 0 ? "being charged" : amps > 0 ? "discharging" : "at rest";
        return (state, amps, bank.Elements.Sum(e => Heat(e, point)));
    }

    private static (string, double?, double?) Relay(WiredRelay relay, OperatingPoint point)
    {
        RelayState state = point.Relays.First(r => r.Id == relay.Part.Id);
        string word = point.ChatteringRelays.Contains(relay.Part.Id) ? "chatters" : state.Energised ? "pulled in" : "at rest";
        return (word, point.Amps(relay.Make), relay.Elements.Sum(e => Heat(e, point)));
    }

    private static (string, double?, double?) Load(WiredLoad load, OperatingPoint point)
    {
        string id = load.Part.Id;
        if (load.Inverter is not null)
        {
            return ($"on the outlets of {load.Inverter}", null, null);
        }

        double amps = new Element?[] { load.PowerElement, load.CurrentElement, load.ResistanceElement }
            .OfType<Element>().Sum(e => point.Amps(e));
        double watts = new Element?[] { load.PowerElement, load.CurrentElement, load.ResistanceElement }
            .OfType<Element>().Sum(e => Heat(e, point));
        string state = point.Undeliverable.Contains(id) ? "cannot be served"
            : point.Mode.Watts.ContainsKey(id) ? "as the mode says"
            : point.Mode.Load(id) switch
            {
                LoadUse.Full => "full",
                LoadUse.Surge => "starting",
                LoadUse.Standby => "standby",
                _ => "unplugged",
            };
        return (state, amps, watts);
    }

    private static (string, double?, double?) Input(string id, OperatingPoint point, double amps, double watts)
    {
        InputState state = point.Inputs.First(i => i.Id == id);
        string word = point.Undeliverable.Contains(id) ? "cannot be served" : state.CutOff ? "cut off" : state.On ? "on" : "off";
        return (word, amps, watts);
    }

    private static (string, double?, double?) Source(WiredPart part, OperatingPoint point, double amps)
    {
        string word = point.Mode.Source(part.Part.Id) switch
        {
            SourceState.Powered => "giving power",
            SourceState.Unpowered => "plugged in, without power",
            _ => "not plugged in",
        };
        return (word, amps, null);
    }

    private static double Delivered(WiredCharger charger, OperatingPoint point) =>
        charger.Output is { } output ? -point.Amps(output)
        : charger.Stage is { } stage ? point.Solution.OutputCurrent(stage)
        : 0;

    /// <summary>A part of plain elements: the largest current through any of them.</summary>
    private static (string, double?, double?) Plain(WiredPart part, OperatingPoint point)
    {
        Element? most = part.Elements.MaxBy(e => Math.Abs(point.Amps(e)));
        return most is null ? ("", null, null) : ("", point.Amps(most), part.Elements.Sum(e => Heat(e, point)));
    }

    private static double Heat(Element element, OperatingPoint point) => point.Solution.Power(element);
}
