using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>What switches and relays have in common: a contact that carries and opens direct current.</summary>
internal static class ContactGathering
{
    /// <summary>Sets the current of a contact (of two poles: the larger) and what may stand across it when it opens.</summary>
    internal static void Add(IReadOnlyList<Contact> contacts, ContactFacts facts, FactSubject subject, GatherContext context)
    {
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            double amps = contacts.Max(c => Math.Abs(point.Amps(c)));
            subject.Largest(facts.Current, amps, point);
            subject.Largest(facts.OpeningCurrent, amps, point);
        }

        foreach (Contact contact in contacts)
        {
            AddOpenVoltage(contact, facts, subject, context);
        }

        subject.SetNumber(facts.NominalVoltage, NominalVolts(contacts, context));
    }

    /// <summary>
    /// The voltage of every source that an open contact can stand against: those whose positive reaches one of its sides,
    /// and those whose negative does. A battery counts with the top of its cells' window.
    /// </summary>
    private static void AddOpenVoltage(Contact contact, ContactFacts facts, FactSubject subject, GatherContext context)
    {
        foreach (SourcePoint source in context.Sources)
        {
            bool[] fed = Reach.From(context.Graph, source.Plus, _ => true);
            bool[] returned = Reach.From(context.Graph, source.Minus, _ => true, against: true);
            if ((fed[contact.A] || returned[contact.A] || fed[contact.B] || returned[contact.B])
                && double.IsFinite(source.Volts))
            {
                subject.KeepLargest(facts.OpenVoltage, source.Volts, PlaceOf(source, context));
            }
        }
    }

    /// <summary>A battery's voltage stands across an open contact in the stored state; that of another source while it gives power.</summary>
    private static FactPlace PlaceOf(SourcePoint source, GatherContext context)
    {
        string words = context.Box.Corners[0].Words;
        if (context.Wiring[source.PartId] is WiredBank)
        {
            return new FactPlace(Modes.Stored, words);
        }

        BoxMode? powered = context.Box.Modes.FirstOrDefault(m => m.Source(source.PartId) == SourceState.Powered);
        return new FactPlace(powered?.Id ?? Modes.Everything, words);
    }

    private static double? NominalVolts(IReadOnlyList<Contact> contacts, GatherContext context)
    {
        foreach (SourcePoint source in context.Sources)
        {
            if (context.Wiring[source.PartId] is WiredBank bank
                && contacts.Any(c => Touches(source, c, context)))
            {
                return Banks.NominalVolts(context, bank.Cells);
            }
        }

        return context.Pack.Of<Description.Kinds.Cells>().Any() ? context.Data.NominalBankVolts(context.Pack) : null;
    }

    private static bool Touches(SourcePoint source, Contact contact, GatherContext context) =>
        context.Guards.Against(source)[contact.A].Reached
        || Reach.From(context.Graph, source.Minus, _ => true, against: true)[contact.A];
}
