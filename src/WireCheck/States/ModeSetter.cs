using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Quantities;

namespace WireCheck.States;

/// <summary>Puts a wired box into a mode: switches, plugs, and what each load asks for.</summary>
internal static class ModeSetter
{
    internal static void Apply(BoxWiring wiring, BoxMode mode)
    {
        foreach (WiredPart part in wiring.Parts)
        {
            switch (part)
            {
                case WiredSwitch wired:
                    wired.Closed = mode.ClosedSwitches.Contains(wired.Part.Id);
                    break;
                case WiredCharger charger:
                    charger.SetState(mode.Source(charger.Part.Id));
                    break;
                case WiredVehicle vehicle:
                    vehicle.SetState(mode.Source(vehicle.Part.Id));
                    break;
                case WiredPanel panel:
                    panel.SetState(mode.Source(panel.Part.Id));
                    break;
                case WiredLoad load:
                    SetLoad(load, mode);
                    break;
                case WiredInverter inverter:
                    inverter.Element.Watts = OutletWatts(wiring, inverter, mode);
                    break;
                case WiredConverter converter:
                    converter.Outlet.Watts = OutletWatts(wiring, converter, mode);
                    break;
                case WiredBms bms:
                    bms.SetConducting(true);
                    break;
                case WiredFuse fuse:
                    fuse.Element.Closed = !fuse.LeftOpen;
                    break;
            }
        }

        // Only now does each panel stand as the mode has it.
        foreach (WiredCharger controller in wiring.Of<WiredCharger>())
        {
            controller.LimitToFeed();
        }
    }

    private static void SetLoad(WiredLoad load, BoxMode mode)
    {
        if (mode.Watts.TryGetValue(load.Part.Id, out double watts))
        {
            load.SetPower(watts);
            return;
        }

        switch (mode.Load(load.Part.Id))
        {
            case LoadUse.Full:
                load.SetFull();
                break;
            case LoadUse.Surge when load.Load.Surge is { } surge:
                load.SetPower(surge.Power.Value.ToWatts());
                break;
            default:
                // What is wired cannot be unplugged.
                load.SetIdle(mode.Load(load.Part.Id) != LoadUse.Absent || load.Load.At is null);
                break;
        }
    }

    /// <summary>Power at an inverter's outlets: the loads on it, and its rated power or surge where the mode asks for that.</summary>
    private static double OutletWatts(BoxWiring wiring, WiredInverter inverter, BoxMode mode)
    {
        double acVolts = inverter.Inverter.AcVoltage.Value.Volts;
        double asked = mode.Watts.GetValueOrDefault(inverter.Part.Id)
            + wiring.Of<WiredLoad>().Where(l => l.Inverter == inverter.Part.Id).Sum(l => AcWatts(l.Load, acVolts, mode));
        if (mode.SurgingInverter == inverter.Part.Id && inverter.Inverter.Surge is { } surge)
        {
            return Math.Max(asked, surge.Power.Value.ToWatts());
        }

        // Whatever is plugged in today, an outlet gives its rated power to what is plugged in tomorrow.
        return mode.OutletsAtRatedPower ? Math.Max(asked, inverter.Inverter.Power.Value.ToWatts()) : asked;
    }

    /// <summary>Power at a converter's own outlets that is not described as loads.</summary>
    private static double OutletWatts(BoxWiring wiring, WiredConverter converter, BoxMode mode)
    {
        if (mode.Watts.TryGetValue(converter.Part.Id, out double watts))
        {
            return watts;
        }

        bool feedsSomething = wiring.Of<WiredLoad>().Any(l => l.Load.At?.Value == converter.Part.Id)
            || TerminalReferences.IsWired(wiring.Pack, converter.Part.Id, "out+");
        return mode.OutletsAtRatedPower && !feedsSomething ? converter.Converter.Power.Value.ToWatts() : 0;
    }

    private static double AcWatts(Load load, double acVolts, BoxMode mode)
    {
        if (mode.Watts.TryGetValue(load.Id, out double watts))
        {
            return watts;
        }

        return mode.Load(load.Id) switch
        {
            LoadUse.Surge when load.Surge is { } surge => surge.Power.Value.ToWatts(),
            LoadUse.Full or LoadUse.Surge => load.WattsAt(acVolts) ?? 0,
            LoadUse.Standby => (load.Standby?.Value.Amperes ?? 0) * acVolts,
            _ => 0,
        };
    }
}
