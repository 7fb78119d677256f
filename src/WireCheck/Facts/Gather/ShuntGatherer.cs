using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers the current of a shunt.</summary>
public sealed class ShuntGatherer : Gatherer<Shunt>
{
    public override void Gather(Shunt part, FactSubject subject, GatherContext context)
    {
        WiredShunt shunt = (WiredShunt)context.Wiring[part.Id];
        subject.SetNumber(ShuntFacts.Rated, part.Rated.Value.Amperes);
        NoteIfAssumed(subject, part, part.Rated, $"rated current {Keeping.Words(part.Rated.Value)}", "rated");
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            subject.Largest(ShuntFacts.Current, Math.Abs(point.Amps(shunt.Element)), point);
        }
    }
}
