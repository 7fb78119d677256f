using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what each part draws with every switch open and nothing plugged in.</summary>
public static class StandbyGathering
{
    /// <summary>A current below this is told as none, A: leakage of the solver's own making.</summary>
    private const double SmallestAmps = 1e-7;

    /// <summary>Sets the standby facts of a part; does nothing for a kind that draws nothing itself.</summary>
    public static void Gather(Part part, FactSubject subject, GatherContext context)
    {
        if (StandbyFacts.Of(part.Kind) is not { } facts || context.States.Stored is not { } stored)
        {
            return;
        }

        WiredPart wired = context.Wiring[part.Id];
        double amps = AmpsOf(wired, stored);
        subject.SetNumber(facts.StoredCurrent, amps);
        subject.SetNumber(facts.BoxStoredCurrent, Math.Max(0, Banks.AmpsLeavingAll(context.Wiring, stored)));
        IReadOnlyList<string> chain = amps <= SmallestAmps ? [] : ChainOf(wired, stored, context);
        if (chain.Count > 0)
        {
            subject.SetNames(facts.StoredChain, chain);
        }
    }

    /// <summary>Parts and conductors that a part's current flows through at a point; empty when no way is found.</summary>
    internal static IReadOnlyList<string> ChainOf(WiredPart part, OperatingPoint point, GatherContext context) =>
        Ends(part, context.Wiring, point) is { } ends
            ? CurrentPath.Of(context.States.FlowAt(point), ends.Plus, ends.Minus).PartIds
            : [];

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

    /// <summary>The two nodes between which a part draws, the one the current enters first.</summary>
    private static (int Plus, int Minus)? Ends(WiredPart part, BoxWiring wiring, OperatingPoint point)
    {
        string id = part.Part.Id;
        return part switch
        {
            WiredBms { Standby: { } standby } => (standby.A, standby.B),
            WiredSwitch { Lamp: { } lamp } => (lamp.A, lamp.B),
            WiredRelay => (wiring.Node(id, "86"), wiring.Node(id, "85")),
            WiredMeter meter => (meter.Element.A, meter.Element.B),
            WiredResistor resistor => point.Amps(resistor.Element) >= 0
                ? (resistor.Element.A, resistor.Element.B)
                : (resistor.Element.B, resistor.Element.A),
            IPoweredInput input => (input.InputPlus, input.InputMinus),
            WiredLoad { LeadPlus: { } plus, LeadMinus: { } minus } => (plus.B, minus.A),
            WiredLoad { PowerElement: { } element } => (element.A, element.B),
            WiredCharger charger => (charger.Leakage.A, charger.Leakage.B),
            _ => null,
        };
    }
}
