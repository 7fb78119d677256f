using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Compares everything on the way to an inverter with what it takes at rated power when the bank is low.</summary>
internal static class InverterChain
{
    internal static void Add(WiredInverter inverter, FactSubject subject, GatherContext context)
    {
        double volts = Math.Max(inverter.CutOffVolts, inverter.Inverter.Window.Value.From.Volts);
        double amps = inverter.Inverter.Power.Value.ToWatts() / (inverter.Inverter.Efficiency.Value.DecimalFractions * volts);
        subject.SetNumber(InverterChainFacts.FullPowerCurrent, amps);
        if (Running(inverter, context) is not { } point)
        {
            return;
        }

        List<string> small = [];
        foreach (string id in CurrentPath.Of(context.States.FlowAt(point), inverter.InputPlus, inverter.InputMinus).PartIds)
        {
            if (Rating(context.Wiring[id], context) is { } rating && rating < amps)
            {
                string words = $"{id} ({QuantityText.WithPrefix(rating, "A")})";
                if (!small.Contains(words))
                {
                    small.Add(words);
                }
            }
        }

        subject.SetNames(InverterChainFacts.ChainTooSmall, small);
    }

    /// <summary>A lasting state in which it takes the most.</summary>
    private static OperatingPoint? Running(WiredInverter inverter, GatherContext context)
    {
        OperatingPoint? found = null;
        double most = 0;
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            double amps = point.Amps(inverter.Element);
            if (amps > most && context.Wiring.Of<WiredBank>().Any(b => Banks.AmpsLeaving(b, point) > amps / 2))
            {
                (most, found) = (amps, point);
            }
        }

        return found;
    }

    /// <summary>What a part carries for hours, A; null for one that has no rating.</summary>
    private static double? Rating(WiredPart part, GatherContext context) => part switch
    {
        WiredConductor wire => Together(wire, context),
        WiredFuse fuse => Math.Min(fuse.Fuse.Rating.Value.Amperes, fuse.Fuse.Holder?.Rating.Value.Amperes ?? double.MaxValue),
        WiredBms bms => bms.Bms.Continuous.Value.Amperes,
        WiredRelay relay => relay.Relay.Contact.Carry.Value.Amperes,
        WiredSwitch wired => wired.Switch.Contact.Amps.Value.Amperes,
        WiredShunt shunt => shunt.Shunt.Rated.Value.Amperes,
        WiredDiode diode => diode.Diode.Rated.Value.Amperes,
        WiredBank bank => bank.Cells.Discharge.Limit.Value.Amperes * bank.Columns,
        WiredBusbar bar => context.Library.Busbars.SteadyAmps(
            bar.Busbar.Section.Value.Area.SquareMeters,
            context.Library.Materials[bar.Busbar.Material?.Value ?? "copper"],
            context.Library.Materials["copper"]),
        _ => null,
    };

    /// <summary>Conductors side by side carry together.</summary>
    private static double Together(WiredConductor wire, GatherContext context)
    {
        double sum = 0;
        foreach (WiredConductor beside in ConductorGatherer.BesideAndSelf(wire, context))
        {
            sum += context.Ampacities.Amps(beside.Conductor);
        }

        return sum;
    }
}
