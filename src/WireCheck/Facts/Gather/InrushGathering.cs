using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Faults.Inrush;
using WireCheck.Knowledge;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what capacitor inrush does to contacts, fuses and ports.</summary>
internal static class InrushGathering
{
    internal static void AddSwitch(WiredSwitch wired, FactSubject subject, GatherContext context)
    {
        double carry = wired.Switch.Contact.Amps.Value.Amperes;
        Add(wired, ContactInrushFacts.Switch, null, carry, subject, context);
    }

    internal static void AddRelay(WiredRelay relay, FactSubject subject, GatherContext context)
    {
        RelayContact contact = relay.Relay.Contact;
        Add(relay, ContactInrushFacts.Relay, contact.Make?.Value.Amperes, contact.Carry.Value.Amperes, subject, context);
    }

    /// <summary>The inrush through a fuse and what melts it; a breaker has no element to melt.</summary>
    internal static void AddFuse(Fuse part, FactSubject subject, GatherContext context)
    {
        if (part.IsBreaker || context.Inrush.WorstThrough(part.Id) is not { } worst)
        {
            return;
        }

        subject.SetNumber(FuseInrushFacts.JouleIntegral, worst.Share * worst.Share * worst.Event.JouleIntegral);
        subject.Set(FuseInrushFacts.At, worst.Event.ContactId);
        subject.SetNames(FuseInrushFacts.Parts, worst.Event.Capacitors.Select(c => c.PartId));
        subject.SetNumber(FuseInrushFacts.MeltingEnergy, MeltingEnergy(part, context));
        Note(worst.Event, subject);
    }

    internal static void AddPort(Port part, FactSubject subject, GatherContext context)
    {
        if (context.Inrush.Of(part.Id) is { } plugged)
        {
            subject.SetNumber(PortInrushFacts.Peak, plugged.PeakAmps);
            subject.SetNumber(PortInrushFacts.Energy, plugged.EnergyJoules);
        }
    }

    private static void Add(
        WiredPart contact, ContactInrushFacts facts, double? make, double carry, FactSubject subject, GatherContext context)
    {
        subject.SetNumber(facts.MakeCurrent, make ?? (carry * context.Data.Assumed("make_over_carry")));
        AddWelded(contact, facts, subject, context);
        if (context.Inrush.Of(contact.Part.Id) is not { } inrush)
        {
            return;
        }

        subject.SetNumber(facts.Peak, inrush.PeakAmps);
        subject.SetNumber(facts.Step, inrush.StepVolts);
        subject.SetNumber(facts.Capacitance, inrush.Farads);
        subject.SetNames(facts.Parts, inrush.Capacitors.Select(c => c.PartId));
        subject.SetNumber(facts.Resistance, inrush.Loop?.Ohms);
        subject.SetNumber(facts.TimeConstant, inrush.TimeConstant);
        subject.SetNumber(facts.Energy, inrush.EnergyJoules);
        subject.SetNumber(facts.JouleIntegral, inrush.JouleIntegral);
        subject.SetWord(facts.PrechargedBy, inrush.PrechargedBy);
        Note(inrush, subject);
        if (make is null)
        {
            subject.Assume("no make rating is given; taken from the current its contact carries", "make_current");
        }
    }

    private static void AddWelded(WiredPart contact, ContactInrushFacts facts, FactSubject subject, GatherContext context)
    {
        if (context.SingleFaults.Welded(contact) is not { } welded)
        {
            return;
        }

        IReadOnlyList<string> on = SingleFaultEffects.LiveBecauseOf(welded, context);
        subject.SetNames(facts.OnWhenWelded, on);
        subject.Set(facts.FeedsInverterWhenWelded, on.Any(id => context.Wiring[id] is WiredInverter));
    }

    /// <summary>The least Joule integral that may melt a fuse in milliseconds, A²s; null when its class tells no shortest time.</summary>
    private static double? MeltingEnergy(Fuse part, GatherContext context)
    {
        if (part.MeltingEnergy is { } given)
        {
            return given.Value.AmpereSquaredSeconds;
        }

        double rating = part.Rating.Value.Amperes;
        FuseTime? shortest = context.Library.Fuses[part.Class.Value].BandFor(rating).Times.LastOrDefault(t => t.Fastest is not null);
        double amps = (shortest?.Multiple ?? 0) * rating;
        return shortest is null ? null : amps * amps * shortest.Fastest!.Value;
    }

    private static void Note(InrushEvent inrush, FactSubject subject)
    {
        foreach (string words in inrush.Assumed)
        {
            subject.Assume(words, "inrush_peak", "inrush_joule_integral", "inrush_time_constant", "precharge_share", "precharge_energy");
        }
    }
}
