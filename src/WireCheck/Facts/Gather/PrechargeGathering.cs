using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Faults.Inrush;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what a precharge resistor does, and what it does when it should not.</summary>
internal static class PrechargeGathering
{
    internal static void Add(WiredResistor resistor, FactSubject subject, GatherContext context)
    {
        Precharge? precharge = context.Inrush.Precharges.FirstOrDefault(p => p.ResistorId == resistor.Part.Id);
        if (precharge is null)
        {
            return;
        }

        Resistor part = resistor.Resistor;
        subject.Set(PrechargeFacts.Contact, precharge.ContactId);
        subject.SetNames(PrechargeFacts.Parts, precharge.Capacitors.Select(c => c.PartId));
        subject.SetNumber(PrechargeFacts.Capacitance, precharge.Farads);
        subject.Set(PrechargeFacts.AlwaysAcross, precharge.AlwaysAcross);
        subject.Set(PrechargeFacts.ComesFirst, precharge.ComesFirst);
        subject.SetNumber(PrechargeFacts.FinalShare, precharge.FinalShare);
        subject.SetNumber(PrechargeFacts.FinalVoltage, precharge.FinalVolts);
        subject.SetWord(PrechargeFacts.HeldDownBy, precharge.HeldDownBy);
        subject.SetNumber(PrechargeFacts.SecondsTo95, precharge.SecondsTo(0.95));
        subject.SetNumber(PrechargeFacts.SecondsTo99, precharge.SecondsTo(0.99));
        subject.SetNumber(PrechargeFacts.Energy, precharge.EnergyJoules);
        subject.SetNumber(
            PrechargeFacts.PulseEnergy,
            part.Pulse?.Value.Joules ?? (part.Power.Value.ToWatts() * context.Data.Assumed("pulse_over_power")));
        subject.SetNumber(PrechargeFacts.HeldPower, precharge.HeldWatts);
        if (part.Pulse is null)
        {
            subject.Assume("no pulse energy is given; taken from its power rating", "pulse_energy");
        }

        foreach (OperatingPoint point in context.SolvedPoints().Where(p => p.Mode.Id is Modes.Stored or Modes.LeftPlugged))
        {
            subject.Largest(PrechargeFacts.OffCurrent, Math.Abs(point.Amps(resistor.Element)), point);
            foreach (InrushCapacitor capacitor in precharge.Capacitors)
            {
                bool joined = !point.Solution.IsFloating(capacitor.Plus) && !point.Solution.IsFloating(capacitor.Minus);
                subject.Largest(PrechargeFacts.OffVoltage, joined ? point.Volts(capacitor.Plus, capacitor.Minus) : 0, point);
            }
        }
    }
}
