using WireCheck.Charging;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers a panel: its voltage, in frost too, what it feeds without a regulator, and what it takes at night.</summary>
public sealed class PanelGatherer : Gatherer<Panel>
{
    public override void Gather(Panel part, FactSubject subject, GatherContext context)
    {
        subject.SetNumber(PanelFacts.OpenCircuit, part.OpenCircuit.Value.Volts);
        ColdPanel cold = context.Charging.ColdOf((WiredPanel)context.Wiring[part.Id]);
        subject.SetNumber(PanelChargeFacts.OpenCircuitCold, cold.ColdVolts);
        subject.SetNumber(PanelChargeFacts.Coldest, cold.Celsius);
        NoteIfAssumed(subject, part, part.DarkLeakage, "dark leakage", "night_current", "dark_known");
        SingleFaultGathering.AddLostBattery(context.Wiring[part.Id], LostBatteryFacts.Panel, subject, context);
        if (context.Charging.Source(part.Id) is { } source)
        {
            AddCharge(source, cold, subject, context);
        }

        foreach (NightDraw night in context.Charging.Nights)
        {
            if (night.PanelId == part.Id)
            {
                subject.Set(PanelChargeFacts.NightReached, night.Reached);
                subject.Set(PanelChargeFacts.DarkKnown, night.DarkKnown);
                subject.SetNumber(PanelChargeFacts.NightCurrent, night.Amps);
                subject.SetWord(PanelChargeFacts.NightController, night.UndecidedBy);
            }
        }
    }

    private static void AddCharge(ChargeSource source, ColdPanel cold, FactSubject subject, GatherContext context)
    {
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            subject.Largest(PanelChargeFacts.ChargeCurrent, Math.Max(0, source.Amps(point)), point);
        }

        if (context.Charging.DirectBank(source) is not { } bank)
        {
            return;
        }

        subject.Set(PanelChargeFacts.UnregulatedBank, bank.Part.Id);
        subject.SetNumber(PanelChargeFacts.OpenCellVoltage, cold.ColdVolts / context.Stacks.CellsInSeries(bank));
        foreach (OpenBms open in context.Charging.WithBmsOpen)
        {
            if (open.Mode.Id == Modes.ChargingPrefix + source.Id)
            {
                subject.SetNumber(PanelChargeFacts.BmsOpenVoltage, open.SourceVolts * cold.ColdVolts / cold.Volts);
            }
        }
    }
}
