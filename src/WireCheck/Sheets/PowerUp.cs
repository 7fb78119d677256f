using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Faults.Inrush;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Sheets;

/// <summary>
/// In which order fuses go in and breakers and switches close, found from the circuit: next is always something that the steps
/// before have made live, fuses before breakers before switches, and what closes onto empty capacitors after its precharge.
/// </summary>
internal sealed class PowerUp(Pack pack, SteppedBox box, IReadOnlyList<Precharge> precharges)
{
    private readonly List<string> _order = [];
    private IReadOnlyDictionary<ProbePair, double> _before = new Dictionary<ProbePair, double>();

    /// <summary>Everything that is put on one after the other, from what is already on; fuses, breakers and switches.</summary>
    internal IEnumerable<ConnectionStep> PutOn()
    {
        _before = box.LivePairs();
        List<Part> left = [.. Candidates()];
        while (left.Count > 0)
        {
            // Fuses that nothing reaches are put in as well before a switch closes, and are told to be dead.
            Part next = Next(left);
            left.Remove(next);
            _order.Add(next.Id);
            if (box.IsFed(next.Id) && PrechargeOf(next) is { } precharge)
            {
                // What leads on to capacitors goes in before, so that they are filled with the rest.
                foreach (Part leads in LeadingOn(precharge, left))
                {
                    left.Remove(leads);
                    _order.Add(leads.Id);
                    foreach (ConnectionStep step in On(leads))
                    {
                        yield return step;
                    }
                }
            }

            foreach (ConnectionStep step in On(next))
            {
                yield return step;
            }
        }
    }

    /// <summary>Breakers and switches in the order in which they were closed.</summary>
    internal IReadOnlyList<string> Closed => [.. _order.Where(id => pack.Find(id) is Switch or Fuse { IsBreaker: true })];

    /// <summary>What is then to be seen: all that this step has made live, or has let go dead, and what the bank gives.</summary>
    internal string See(string? ofId = null)
    {
        if (!box.Solved)
        {
            return "the circuit has no answer here: mend what the check finds first";
        }

        IReadOnlyDictionary<ProbePair, double> now = box.LivePairs();
        List<string> words = [];
        if (ofId is not null)
        {
            string[] sides = [.. box.Sides(ofId).Where(s => s.FirstVolts is not null && s.SecondVolts is not null)
                .Select(s => $"{SheetWords.Volts(s.SecondVolts!.Value)} V from {s.Second} to {Black()}")];
            words.Add(sides.Length > 0 ? string.Join(", ", sides) : $"{ofId} reads dead at both sides: nothing feeds it yet");
        }

        words.AddRange(now.Where(p => !_before.ContainsKey(p.Key))
            .GroupBy(p => SheetWords.Volts(p.Value))
            .Select(g => $"{g.Key} V from {string.Join(", ", g.Select(p => $"{p.Key.Red} to {p.Key.Black}"))}"));
        words.AddRange(_before.Keys.Where(p => !now.ContainsKey(p)).Select(p => $"{p.Red} to {p.Black} dead"));
        _before = now;
        words.Add($"{SheetWords.Amps(Math.Abs(box.BankAmps))} from the bank");
        return string.Join("; ", words);
    }

    private string Black() => pack.Of<Cells>().FirstOrDefault() is { } bank ? $"{bank.Id}.-" : "the negative";

    /// <summary>Fuses by rising rating, breakers likewise, then switches that stay where they are put.</summary>
    private IEnumerable<Part> Candidates() =>
        pack.Of<Fuse>().Where(f => !box.On.Contains(f.Id)).OrderBy(f => f.IsBreaker).ThenBy(f => f.Rating.Value.Amperes)
            .Concat<Part>(pack.Of<Switch>().Where(s => s.Momentary?.Value != true && !box.On.Contains(s.Id)));

    private Part Next(List<Part> left)
    {
        Part? waits = null;
        foreach (Part part in left)
        {
            if (!box.IsFed(part.Id))
            {
                continue;
            }

            if (PrechargeOf(part) is null && EmptyInverter(part) is null)
            {
                return part;
            }

            waits ??= part;
        }

        return waits ?? left[0];
    }

    private IEnumerable<ConnectionStep> On(Part part)
    {
        string mode = "";
        if (box.IsFed(part.Id))
        {
            if (PrechargeOf(part) is { } precharge)
            {
                yield return Fill(precharge);
            }
            else if (EmptyInverter(part) is { } inverter)
            {
                yield return new ConnectionStep(
                    $"The box has no precharge for {inverter}: before the next step fill its capacitors through a resistor or a filament lamp across {part.Id}, {Ways(part.Id)}.",
                    $"the voltage from {inverter}.in+ to {inverter}.in- climbs to nearly that of the bank");
            }
        }

        IReadOnlyList<string> relaysBefore = box.PulledIn;
        box.TurnOn(part.Id);
        string[] pulled = [.. box.PulledIn.Except(relaysBefore)];
        mode = pack.Of<Fuse>().All(f => box.On.Contains(f.Id)) && part is not Fuse { IsBreaker: false } ? ModeWords() : "";
        yield return new ConnectionStep(
            part is Fuse { IsBreaker: false } fuse
                ? FormattableString.Invariant($"Fit {fuse.Id}, {fuse.Rating.Value.Amperes:0.##} A {fuse.Class.Value}.")
                : $"Close {part.Id}.{mode}",
            (pulled.Length > 0 ? $"{string.Join(" and ", pulled)} pull{(pulled.Length == 1 ? "s" : "")} in once and hold{(pulled.Length == 1 ? "s" : "")}; " : "") + See(part.Id));
    }

    private string Ways(string id) => string.Join(" and ", box.Sides(id).Select(s => $"{s.First} to {s.Second}"));

    /// <summary>Holds the precharge and lets it go again; one that lies across its contact at all times only takes its time.</summary>
    private ConnectionStep Fill(Precharge precharge)
    {
        string time = precharge.SecondsTo(0.95) is double wait && double.IsFinite(wait) ? QuantityText.Time(Math.Max(1, Math.Ceiling(2 * wait))) : "";
        string[] held = Held(precharge);
        (string Id, string Words)[] filling = WhileOn(held, () => precharge.Capacitors.Select(c => c.PartId).Distinct()
            .SelectMany(id => box.LivePairs().Where(p => p.Key.Part == id && !p.Key.IsOutput).Take(1)
                .Select(p => (id, $"{SheetWords.Volts(p.Value)} V from {p.Key.Red} to {p.Key.Black}")))
            .ToArray());
        string[] at = [.. filling.Select(f => f.Words)];
        string capacitors = string.Join(" and ", filling.Length > 0 ? filling.Select(f => f.Id) : precharge.Capacitors.Select(c => c.PartId).Distinct());
        string filled = at.Length == 0 ? "the voltage behind it climbs to nearly that of the bank" : $"it climbs to {string.Join(" and ", at)}";
        return held.Length > 0
            ? new ConnectionStep(
                $"Hold {string.Join(" and ", held)}{(time.Length > 0 ? $" for {time} or more" : "")}: it fills {capacitors} through {precharge.ResistorId}. Let go and take the next step at once. So each time before {precharge.ContactId} closes.",
                filled)
            : new ConnectionStep(
                $"Wait{(time.Length > 0 ? $" {time} or more" : "")} while {capacitors} fill{(capacitors.Contains(' ') ? "" : "s")} through {precharge.ResistorId}. So each time before {precharge.ContactId} closes.",
                filled);
    }

    private string[] Held(Precharge precharge) => [.. precharge.WorkedBy.Where(id => pack.Find(id) is Switch { Momentary.Value: true })];

    /// <summary>What is left to put on that would join a capacitor to the precharge.</summary>
    private Part[] LeadingOn(Precharge precharge, List<Part> left)
    {
        return WhileOn(Held(precharge), () =>
        {
            string[] empty = [.. precharge.Capacitors.Select(c => c.PartId).Distinct().Where(id => !IsLive(id))];
            return left.Where(p => p is Fuse && empty.Length > 0 && WhileOn([p.Id], () => empty.Any(IsLive))).ToArray();
        });

        bool IsLive(string id) => box.LivePairs().Keys.Any(p => p.Part == id && !p.IsOutput);
    }

    private T WhileOn<T>(string[] ids, Func<T> look)
    {
        foreach (string id in ids)
        {
            box.TurnOn(id);
        }

        T seen = look();
        foreach (string id in ids)
        {
            box.TurnOff(id);
        }

        return seen;
    }

    /// <summary>The precharge whose contact this would close; null when it closes none.</summary>
    private Precharge? PrechargeOf(Part part)
    {
        if (precharges.Count == 0 || part is Fuse { IsBreaker: false })
        {
            return null;
        }

        Precharge[] open = [.. precharges.Where(p => !box.IsClosed(p.ContactId))];
        return WhileOn([part.Id], () => Array.Find(open, p => box.IsClosed(p.ContactId)));
    }

    /// <summary>An inverter that this would join to the bank with nothing to fill it first; null when it joins none.</summary>
    private string? EmptyInverter(Part part)
    {
        string[] filled = [.. precharges.SelectMany(p => p.Capacitors).Select(c => c.PartId)];
        string[] dead = [.. pack.Of<Inverter>().Select(i => i.Id).Where(id => !filled.Contains(id) && !IsLive(id))];
        if (dead.Length == 0)
        {
            return null;
        }

        return WhileOn([part.Id], () => Array.Find(dead, IsLive));

        bool IsLive(string id) => box.LivePairs().Keys.Any(p => p.Part == id && p.Plus == "in+");
    }

    /// <summary>Which mode the switches make as they stand; empty when it is none of the description, nor idle.</summary>
    private string ModeWords()
    {
        string[] closed = [.. box.On.Where(id => pack.Find(id) is Switch)];
        string[] modes = [.. box.Modes.Where(m => (!m.Added || m.Id is Modes.Idle) && m.Sources.Count == 0 && m.ClosedSwitches.SetEquals(closed)).Select(m => m.Id)];
        return modes.Length == 0 ? "" : $" The switches then stand as in {string.Join(", ", modes)}, with nothing plugged in.";
    }
}
