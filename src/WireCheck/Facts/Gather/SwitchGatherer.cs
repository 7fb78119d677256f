using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Knowledge;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers a switch's contact and what it switches.</summary>
public sealed class SwitchGatherer : Gatherer<Switch>
{
    public override void Gather(Switch part, FactSubject subject, GatherContext context)
    {
        WiredSwitch wired = (WiredSwitch)context.Wiring[part.Id];
        ContactFacts facts = ContactFacts.Switch;
        ContactGathering.Add(wired.Poles, facts, subject, context);
        bool acOnly = part.Contact.AcOnly?.Value == true;
        subject.SetNumber(facts.RatedCurrent, part.Contact.Amps.Value.Amperes);
        subject.Set(facts.AcOnly, acOnly);
        if (!acOnly)
        {
            subject.SetNumber(facts.RatedVoltage, (part.Break?.Volts ?? part.Contact.Volts).Value.Volts);
        }

        subject.SetNumber(facts.BreakCurrent, part.Break?.Amps.Value.Amperes);
        NoteIfAssumed(subject, part, part.Contact.Amps, $"contact rating {Keeping.Words(part.Contact.Amps.Value)}", "rated_current", "make_current");
        NoteIfAssumed(subject, part, part.Contact.Volts, $"contact voltage {Keeping.Words(part.Contact.Volts.Value)}", "rated_voltage");
        NoteIfAssumed(subject, part, part.Break?.Amps, $"breaking current {Keeping.Words(part.Break?.Amps.Value ?? default)}", "break_current");
        AddDerating(wired, subject, context);
        InrushGathering.AddSwitch(wired, subject, context);
    }

    private static void AddDerating(WiredSwitch wired, FactSubject subject, GatherContext context)
    {
        double volts = context.Data.NominalBankVolts(context.Pack) / context.Data.Assumed("bank_over_system");
        IReadOnlyDictionary<SwitchedLoad, double> loads = SwitchedLoads.Of(wired, context);
        double factor = loads.Sum(l => l.Value * Factor(context, volts, l.Key)) / loads.Values.Sum();
        SwitchedLoad load = loads.OrderBy(l => l.Key).MaxBy(l => l.Value).Key;
        double last = context.Library.Switches.LastRowVolts;
        if (volts > last)
        {
            subject.Assume(FormattableString.Invariant($"switch derating of {last:0.#} V taken, the highest voltage of its table"), "derating");
        }

        subject.Set(SwitchFacts.LoadType, Word(load));
        subject.SetNumber(SwitchFacts.Derating, factor);
    }

    private static double Factor(GatherContext context, double volts, SwitchedLoad load) =>
        context.Library.Switches.LoadFactor(Math.Min(volts, context.Library.Switches.LastRowVolts), load) ?? 1;

    private static string Word(SwitchedLoad load) => load switch
    {
        SwitchedLoad.Lamp => "lamp",
        SwitchedLoad.Inductive => "inductive",
        SwitchedLoad.Motor => "motor",
        _ => "resistive",
    };
}
