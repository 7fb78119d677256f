using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers a socket or plug in the wall: what it carries, what protects it, what can be touched or mixed up.</summary>
public sealed class PortGatherer : Gatherer<Port>
{
    public override void Gather(Port part, FactSubject subject, GatherContext context)
    {
        WiredPort port = (WiredPort)context.Wiring[part.Id];
        subject.Set(PortFacts.Direction, Word(part.Direction.Value));
        subject.Set(PortFacts.Pins, part.Pins.Value == PortPins.Shrouded ? "shrouded" : "touchable");
        subject.SetWord(PortFacts.Mates, part.Mates?.Value);
        subject.SetNumber(PortFacts.NominalVoltage, PortFeed.NominalVolts(port, context));
        subject.SetNumber(PortFacts.Rated, Rated(part, context));
        NoteIfAssumed(subject, part, part.Rated, $"contact rating {Keeping.Words(part.Rated.Value)}", "rated");
        NoteIfAssumed(subject, part, part.Pins, $"{subject.Find(PortFacts.Pins.Name)!.Value} pins", "pins");
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            subject.Largest(
                PortFacts.Current, Math.Max(Math.Abs(point.Amps(port.Plus)), Math.Abs(point.Amps(port.Minus))), point);
        }

        AddOpenVoltage(port, subject, context);
        PortCharging.Add(port, subject, context);
        InrushGathering.AddPort(part, subject, context);
        PortFeed.AddFuse(port, subject, context);
        subject.Set(PortFacts.SwitchedAhead, PortFeed.IsSwitchedAhead(port, context));
        subject.SetNames(PortFacts.SamePlugOtherJob, SamePlugs(port, context));
    }

    private static string Word(PortDirection direction) => direction switch
    {
        PortDirection.Out => "out",
        PortDirection.In => "in",
        _ => "both",
    };

    /// <summary>What is written; of a class, what its contacts stand with the thinnest conductor that ends on them.</summary>
    private static double Rated(Port part, GatherContext context)
    {
        double rated = part.Rated.Value.Amperes;
        if (!part.Rated.Assumed || part.Contact is not { } contact
            || context.Library.PortContacts.Find(contact.Value) is not { } known)
        {
            return rated;
        }

        return context.Pack.Conductors
            .Where(c => c.From.PartId == part.Id || c.To.PartId == part.Id)
            .Select(c => known.SteadyWith(c.Size.Value))
            .Append(rated)
            .Min();
    }

    /// <summary>
    /// Voltage between the plug's contacts in every state in which no source is plugged into it. What hangs on it by a
    /// junction alone has no firm voltage and counts as dead.
    /// </summary>
    private static void AddOpenVoltage(WiredPort port, FactSubject subject, GatherContext context)
    {
        string[] sources = [.. context.Pack.Parts
            .Where(p => (p is Charger c && c.At?.Value == port.Part.Id) || (p is Vehicle v && v.At?.Value == port.Part.Id)
                || (p is Panel panel && panel.At?.Value == port.Part.Id))
            .Select(p => p.Id)];
        (int plus, int minus) = (port.Plus.B, port.Minus.A);
        double share = double.NaN;
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            if (sources.Any(id => point.Mode.Source(id) == SourceState.Powered))
            {
                continue;
            }

            double volts = JoinedNodes.Are(point, plus, minus, context) ? Math.Abs(point.Volts(plus, minus)) : 0;
            double rise = volts > 1 ? Banks.RiseToEndOfCharge(context.Wiring, point, plus) : 0;
            share = double.IsNaN(share) && volts > 1 ? PortCharging.ShareIntoBurden(port, context) : share;
            subject.Largest(PortFacts.OpenVoltage, volts > 1 ? (volts + rise) * share : volts, point);
        }
    }

    private static IEnumerable<string> SamePlugs(WiredPort port, GatherContext context)
    {
        Port part = port.Port;
        if (part.Mates is not { } mates || part.Keyed?.Value == true)
        {
            yield break;
        }

        double within = context.Data.Assumed("same_voltage");
        double? own = PortFeed.NominalVolts(port, context);
        foreach (WiredPort other in context.Wiring.Of<WiredPort>())
        {
            if (other == port || other.Port.Mates?.Value != mates.Value || other.Port.Keyed?.Value == true)
            {
                continue;
            }

            double? volts = PortFeed.NominalVolts(other, context);
            bool differs = own is { } a && volts is { } b && Math.Abs(a - b) > within * Math.Max(a, b);
            if (differs || other.Port.Direction.Value != part.Direction.Value)
            {
                yield return other.Part.Id;
            }
        }
    }
}
