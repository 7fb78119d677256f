using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Quantities;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers an inverter as a consumer.</summary>
public sealed class InverterGatherer : Gatherer<Inverter>
{
    public override void Gather(Inverter part, FactSubject subject, GatherContext context)
    {
        ConsumerFacts facts = ConsumerFacts.Inverter;
        subject.SetNumber(facts.Power, part.Power.Value.ToWatts());
        subject.SetNumber(facts.WindowLow, part.Window.Value.From.Volts);
        subject.SetNumber(facts.WindowHigh, part.Window.Value.To.Volts);
        subject.SetNumber(facts.CutOff, part.CutOff.Value.Volts);
        NoteIfAssumed(subject, part, part.CutOff, $"cut-off {Keeping.Words(part.CutOff.Value)}", "cut_off");
        NoteIfAssumed(
            subject, part, part.Efficiency, $"efficiency {Keeping.Words(part.Efficiency.Value.Percent, "%")}", "surge_voltage_low", "voltage_low", "drop_share", "full_power_current", "undelivered_power");
        ConsumerGathering.Add(part, facts, subject, context);
        InverterChain.Add((WiredInverter)context.Wiring[part.Id], subject, context);
        OutputDemand.Add(part, subject, context);
        InverterSideGathering.Add((WiredInverter)context.Wiring[part.Id], subject, context);
    }
}
