using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers the current and heat of a diode.</summary>
public sealed class DiodeGatherer : Gatherer<Diode>
{
    public override void Gather(Diode part, FactSubject subject, GatherContext context)
    {
        WiredDiode diode = (WiredDiode)context.Wiring[part.Id];
        subject.SetNumber(DiodeFacts.Rated, part.Rated.Value.Amperes);
        NoteIfAssumed(subject, part, part.Rated, $"rated current {Keeping.Words(part.Rated.Value)}");
        DiodeCharging.Add(diode, subject, context);
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            subject.Largest(DiodeFacts.Current, Math.Max(0, point.Amps(diode.Element)), point);
            subject.Largest(DiodeFacts.Power, diode.Elements.Sum(point.Solution.Power), point);
        }
    }
}
