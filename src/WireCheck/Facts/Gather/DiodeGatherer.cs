using WireCheck.Circuit.Topology;
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
        NoteIfAssumed(subject, part, part.Rated, $"rated current {Keeping.Words(part.Rated.Value)}", "rated");
        DiodeCharging.Add(diode, subject, context);
        subject.SetNumber(DiodeFacts.RatedVoltage, part.Volts.Value.Volts);
        NoteIfAssumed(subject, part, part.Volts, $"reverse voltage {Keeping.Words(part.Volts.Value)}", "rated_voltage");
        AddStandOff(diode, subject, context);
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            subject.Largest(DiodeFacts.Current, Math.Max(0, point.Amps(diode.Element)), point);
            subject.Largest(DiodeFacts.Power, diode.Elements.Sum(point.Solution.Power), point);
        }
    }

    private static void AddStandOff(WiredDiode diode, FactSubject subject, GatherContext context)
    {
        double highest = 0;
        foreach (SourcePoint source in context.Sources)
        {
            bool[] fed = Reach.From(context.Graph, source.Plus, e => e.PartId != diode.Part.Id);
            highest = fed[diode.Element.B] && double.IsFinite(source.Volts) ? Math.Max(highest, source.Volts) : highest;
        }

        if (highest > 0)
        {
            subject.Set(DiodeFacts.StandOff, highest);
        }
    }
}
