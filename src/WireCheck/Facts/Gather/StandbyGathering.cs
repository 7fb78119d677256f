using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Facts.Catalogue;
using WireCheck.Standby;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what each part draws with every switch open and nothing plugged in.</summary>
public static class StandbyGathering
{
    /// <summary>Sets the standby facts of a part; does nothing for a kind that draws nothing itself.</summary>
    public static void Gather(Part part, FactSubject subject, GatherContext context)
    {
        if (StandbyFacts.Of(part.Kind) is not { } facts || context.Standby.Stored is not { } stored)
        {
            return;
        }

        subject.SetNumber(facts.StoredCurrent, AmpsOf(context.Wiring[part.Id], stored.Point));
        subject.SetNumber(facts.BoxStoredCurrent, stored.Amps);
        foreach (Drain drain in stored.Drains)
        {
            if (drain.PartId == part.Id && drain.Chain.Count > 0)
            {
                subject.SetNames(facts.StoredChain, drain.Chain);
            }
        }
    }

    /// <summary>Current that a part draws at a point, A; 0 for a kind that only passes current on.</summary>
    internal static double AmpsOf(WiredPart part, OperatingPoint point)
    {
        double amps = part switch
        {
            WiredBms { Standby: { } standby } => point.Amps(standby),
            WiredSwitch { Lamp: { } lamp } => Math.Abs(point.Amps(lamp)),
            WiredRelay relay => RelayGatherer.CoilAmps(relay, point),
            WiredMeter meter => point.Amps(meter.Element),
            WiredResistor resistor => Math.Abs(point.Amps(resistor.Element)),
            WiredConverter converter => point.Amps(converter.Stage) + point.Amps(converter.Outlet),
            WiredInverter inverter => point.Amps(inverter.Element),
            WiredLoad load => ConsumerPoint.LoadAmps(load, point),
            WiredCharger charger => point.Amps(charger.Leakage) + (charger.Stage is { } stage ? point.Amps(stage) : 0),
            _ => 0,
        };
        return double.IsFinite(amps) ? Math.Max(0, amps) : 0;
    }
}
