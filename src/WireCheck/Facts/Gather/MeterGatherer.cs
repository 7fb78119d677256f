using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers a meter as a consumer.</summary>
public sealed class MeterGatherer : Gatherer<Meter>
{
    public override void Gather(Meter part, FactSubject subject, GatherContext context)
    {
        ConsumerFacts facts = ConsumerFacts.Meter;
        subject.SetNumber(facts.Power, part.Standby.Value.Amperes * context.Data.NominalBankVolts(context.Pack));
        NoteIfAssumed(subject, part, part.Standby, $"standby current {Keeping.Words(part.Standby.Value)}", "stored_current", "box_stored_current");
        if (part.Window is { } window)
        {
            subject.SetNumber(facts.WindowLow, window.Value.From.Volts);
            subject.SetNumber(facts.WindowHigh, window.Value.To.Volts);
            subject.SetNumber(facts.CutOff, window.Value.From.Volts);
            NoteIfAssumed(
                subject, part, window, $"window {Keeping.Words(window.Value.From)} to {Keeping.Words(window.Value.To)}", "window_low", "window_high");
        }

        MeterCounting.Add(part, subject, context);
        if (part.Smallest is { } smallest)
        {
            NoteIfAssumed(subject, part, smallest, $"smallest counted current {Keeping.Words(smallest.Value)}", "smallest");
        }

        ConsumerGathering.Add(part, facts, subject, context);
    }
}
