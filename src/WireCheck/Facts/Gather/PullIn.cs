using WireCheck.Circuit.Wiring;
using WireCheck.Facts.Catalogue;
using WireCheck.Physics;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Whether a hot coil closes again on a low battery.</summary>
internal static class PullIn
{
    /// <summary>
    /// Sets the lowest coil voltage before the contact moves, and the voltage the coil needs after it was held on at that
    /// voltage. Looked for at empty cells and the highest resistances, where a coil gets least.
    /// </summary>
    internal static void Add(WiredRelay relay, FactSubject subject, GatherContext context)
    {
        if (relay.Coil is null && relay.HoldingCoil is null)
        {
            return;
        }

        double meantFrom = context.Data.Assumed("coil_meant_on");
        foreach (OperatingPoint point in context.SteadyPoints()
            .Where(p => p.Corner is { Charge: Charge.Empty, HighestResistance: true }))
        {
            RelayState state = point.Relays.First(r => r.Id == relay.Part.Id);
            double? volts = state.Energised
                ? context.States.CoilVoltsBeforeClosing(point, relay)
                : state.CoilVolts;
            double nominal = relay.Relay.Coil.Voltage.Value.Volts;
            if (volts is { } coil && (state.Energised || Math.Abs(coil) > meantFrom * nominal))
            {
                subject.Smallest(RelayFacts.PullInVoltage, Math.Abs(coil), point);
            }
        }

        if (subject.Find(RelayFacts.PullInVoltage.Name) is not { } lowest)
        {
            return;
        }

        double celsius = relay.Coil is null ? 20 : Coil.SettledTemperature(
            (double)lowest.Value, context.Data.CoilOhms(relay.Relay),
            context.Data.CoilKelvinPerWatt(relay.Relay), context.HottestInsideCelsius);
        subject.SetNumber(RelayFacts.HotOperate, Coil.OperateVoltage(relay.Relay.Coil.Operate.Value.Volts, celsius));
    }
}
