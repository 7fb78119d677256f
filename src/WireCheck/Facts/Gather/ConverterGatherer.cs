using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Quantities;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers a converter as a consumer.</summary>
public sealed class ConverterGatherer : Gatherer<Converter>
{
    public override void Gather(Converter part, FactSubject subject, GatherContext context)
    {
        ConsumerFacts facts = ConsumerFacts.Converter;
        subject.SetNumber(facts.Power, part.Power.Value.ToWatts());
        subject.SetNumber(facts.WindowLow, part.Window.Value.From.Volts);
        subject.SetNumber(facts.WindowHigh, part.Window.Value.To.Volts);
        subject.SetNumber(facts.CutOff, (part.CutOff?.Value ?? part.Window.Value.From).Volts);
        NoteIfAssumed(
            subject, part, part.Window,
            $"input window {Keeping.Words(part.Window.Value.From)} to {Keeping.Words(part.Window.Value.To)}", "window_low", "window_high", "cut_off");
        NoteIfAssumed(subject, part, part.CutOff, $"cut-off {Keeping.Words(part.CutOff?.Value ?? default)}", "cut_off");
        NoteIfAssumed(subject, part, part.Idle, $"idle current {Keeping.Words(part.Idle.Value)}", "stored_current", "box_stored_current");
        ConsumerGathering.Add(part, facts, subject, context);
        OutputDemand.Add(part, subject, context);
    }
}
