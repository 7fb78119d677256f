using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers which terminals of a part are wired.</summary>
public static class ConnectionGathering
{
    /// <summary>Sets the connection facts of a part; does nothing for a kind without terminals of its own.</summary>
    public static void Gather(Part part, FactSubject subject, GatherContext context)
    {
        if (ConnectionFacts.Of(part.Kind) is not { } facts)
        {
            return;
        }

        HashSet<string> wired = WiredTerminals(part.Id, context.Pack);
        bool elsewhere = IsReachedWithoutWire(part, context.Pack);
        subject.Set(facts.Connected, wired.Count > 0 || elsewhere);
        string[] spare = [.. SpareContacts(part).Where(t => !wired.Contains(t))];
        subject.SetNames(facts.UnusedContacts, spare);
        string[] needed = wired.Count == 0 ? [] : [.. Needed(part, wired, context.Pack).Where(t => !wired.Contains(t))];
        subject.SetNames(facts.UnconnectedTerminals, needed);
    }

    private static HashSet<string> WiredTerminals(string id, Pack pack)
    {
        IEnumerable<TerminalReference> ends =
        [
            .. pack.Conductors.SelectMany(c => new[] { c.From, c.To }),
            .. pack.Of<Joint>().SelectMany(j => new[] { j.First, j.Second }),
            .. pack.OutsideLinks.SelectMany(l => new[] { l.First, l.Second }),
        ];
        return [.. ends.Where(e => e.PartId == id).Select(e => e.Terminal)];
    }

    /// <summary>Plugged in, worked with by name, or used by a part that is plugged into it.</summary>
    private static bool IsReachedWithoutWire(Part part, Pack pack)
    {
        string? at = part switch
        {
            Load load => load.At?.Value,
            Charger charger => charger.At?.Value,
            Vehicle vehicle => vehicle.At?.Value,
            Panel panel => panel.At?.Value,
            _ => null,
        };
        return at is not null || pack.Parts.Any(other => other switch
        {
            Load load => load.At?.Value == part.Id,
            Charger charger => charger.At?.Value == part.Id || charger.From?.Value == part.Id,
            Vehicle vehicle => vehicle.At?.Value == part.Id,
            Panel panel => panel.At?.Value == part.Id,
            Converter converter => converter.EnabledBy?.Value == part.Id,
            Inverter inverter => inverter.EnabledBy?.Value == part.Id,
            _ => false,
        });
    }

    /// <summary>A second pole and the rest contact of a change-over relay.</summary>
    private static IEnumerable<string> SpareContacts(Part part) => part switch
    {
        Switch { Poles.Value: > 1 } => ["3", "4"],
        Relay { Form.Value: RelayForm.ChangeOver } => ["87a"],
        _ => [],
    };

    /// <summary>Terminals a part does not work without.</summary>
    private static IEnumerable<string> Needed(Part part, HashSet<string> wired, Pack pack) => part switch
    {
        Cells => ["+", "-"],
        Bms bms => bms.Terminals.Where(t => !t.StartsWith('s') || (bms.Sense is null && wired.Any(w => w.StartsWith('s')))),
        Switch => ["1", "2"],
        Relay => NeededOf(wired),
        Converter converter => NeededOf(converter, wired, pack),
        Inverter => ["in+", "in-"],
        Charger charger => NeededOf(charger),
        _ => part.Terminals,
    };

    /// <summary>A change-over relay may be used by its rest contact alone.</summary>
    private static IEnumerable<string> NeededOf(HashSet<string> wired) =>
        wired.Contains("87a") ? ["85", "86", "30"] : ["85", "86", "30", "87"];

    /// <summary>A converter with outlets of its own needs no wire at its output; a common negative needs one only at out+.</summary>
    private static IEnumerable<string> NeededOf(Converter converter, HashSet<string> wired, Pack pack)
    {
        yield return "in+";
        yield return "in-";
        bool loadAt = pack.Of<Load>().Any(l => l.At?.Value == converter.Id);
        if (loadAt || (!wired.Contains("out+") && !wired.Contains("out-")))
        {
            yield break;
        }

        yield return "out+";
        if (converter.Negative.Value == ConverterNegative.Isolated)
        {
            yield return "out-";
        }
    }

    /// <summary>What feeds a charger by <c>from:</c>, and a charger that is plugged in, need no drawn input.</summary>
    private static IEnumerable<string> NeededOf(Charger charger) =>
        charger.At is not null ? []
        : charger.From is not null ? charger.Terminals.Where(t => t.StartsWith("out", StringComparison.Ordinal))
        : charger.Terminals;
}
