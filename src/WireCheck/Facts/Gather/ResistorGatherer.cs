using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers the heat of a resistor.</summary>
public sealed class ResistorGatherer : Gatherer<Resistor>
{
    public override void Gather(Resistor part, FactSubject subject, GatherContext context)
    {
        WiredResistor resistor = (WiredResistor)context.Wiring[part.Id];
        subject.SetNumber(ResistorFacts.Rated, part.Power.Value.ToWatts());
        NoteIfAssumed(subject, part, part.Power, $"power rating {Keeping.Words(part.Power.Value.ToWatts(), "W")}", "rated", "pulse_energy");
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            subject.Largest(ResistorFacts.Power, point.Solution.Power(resistor.Element), point);
        }

        PrechargeGathering.Add(resistor, subject, context);
    }
}
