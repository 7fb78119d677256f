using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Faults.Inrush;

/// <summary>
/// What flows into discharged capacitors when a switch or a relay closes, a load is plugged in or a fuse is put in; and the
/// resistors that take the edge off it. Everything else is taken as switched on already, the bank as full, warm and fresh.
/// </summary>
public sealed class InrushStudy
{
    private readonly SolvedBox _box;
    private readonly IReadOnlyList<InrushCapacitor> _capacitors;
    private readonly Corner _corner;
    private readonly double _smallestStep;
    private ContactStates? _states;
    private ClosingCircuit? _circuit;
    private IReadOnlyList<Precharge>? _precharges;
    private IReadOnlyList<InrushEvent>? _events;

    /// <summary>Prepares the study of a box; nothing is solved before it is asked.</summary>
    public InrushStudy(SolvedBox box)
    {
        ArgumentNullException.ThrowIfNull(box);
        _box = box;
        _capacitors = InrushCapacitor.In(box.Wiring);
        _corner = box.Corners.First(c => c is { Charge: Charge.Full, HighestResistance: false });
        _smallestStep = box.Wiring.Data.Assumed("live_above");
    }

    /// <summary>Resistors that precharge something.</summary>
    public IReadOnlyList<Precharge> Precharges => _precharges ??= SolvePrecharges();

    /// <summary>One event for each switch, relay and port with discharged capacitors behind it, and for each fuse that alone stands before some.</summary>
    public IReadOnlyList<InrushEvent> Events => _events ??= SolveEvents();

    /// <summary>The event of one contact, port or fuse; null when nothing is charged through it.</summary>
    public InrushEvent? Of(string id) => Events.FirstOrDefault(e => e.ContactId == id);

    /// <summary>The event with the largest Joule integral through a fuse, and the fuse's share of its current; null when none flows through it.</summary>
    public (InrushEvent Event, double Share)? WorstThrough(string fuseId)
    {
        (InrushEvent Event, double Share)? worst = null;
        double most = 0;
        foreach (InrushEvent candidate in Events)
        {
            foreach (InrushShare share in candidate.Fuses)
            {
                double integral = share.Share * share.Share * candidate.JouleIntegral;
                if (share.FuseId == fuseId && integral > most)
                {
                    (most, worst) = (integral, (candidate, share.Share));
                }
            }
        }

        return worst;
    }

    private ContactStates States => _states ??= new ContactStates(_box);

    private ClosingCircuit Circuit => _circuit ??= new ClosingCircuit(_box.Wiring, _capacitors);

    private List<InrushEvent> SolveEvents()
    {
        List<InrushEvent> events = [];
        if (_capacitors.Count == 0)
        {
            return events;
        }

        bool[] covered = new bool[_capacitors.Count];
        foreach (WiredPart part in _box.Wiring.Parts)
        {
            if (part is WiredSwitch or WiredRelay)
            {
                AddEvent(events, AtContact(part, covered));
            }
        }

        for (int i = 0; i < _capacitors.Count; i++)
        {
            if (_capacitors[i].PortId is not null)
            {
                AddEvent(events, AtPlug(i, covered));
            }
        }

        if (Array.Exists(covered, c => !c))
        {
            bool[] alone = (bool[])covered.Clone();
            foreach (WiredFuse fuse in _box.Wiring.Of<WiredFuse>())
            {
                AddEvent(events, AtContact(fuse, covered, alone));
            }
        }

        return events;
    }

    private static void AddEvent(List<InrushEvent> events, InrushEvent? found)
    {
        if (found is not null)
        {
            events.Add(found);
        }
    }

    /// <summary>A contact closes last; capacitors that <paramref name="known"/> marks are left to the contacts that they belong to.</summary>
    private InrushEvent? AtContact(WiredPart contact, bool[] covered, bool[]? known = null)
    {
        // Asked first: solving the precharges moves the contacts.
        Precharge? precharge = Precharges.FirstOrDefault(p => p.ContactId == contact.Part.Id);
        OperatingPoint open = States.SolveOpen(contact, [], _corner);
        double[] before = Volts(open.Solution);
        ContactStates.Close(contact);
        Solution uncharged = Circuit.SolveUncharged();
        double[] after = Volts(uncharged);
        bool[] charged = new bool[_capacitors.Count];
        double step = 0;
        double full = 0;
        for (int i = 0; i < charged.Length; i++)
        {
            double rise = after[i] - before[i];
            charged[i] = rise > _smallestStep && known?[i] != true;
            if (charged[i])
            {
                covered[i] = true;
                step = Math.Max(step, rise);
                full = Math.Max(full, after[i]);
            }
        }

        if (precharge is { AlwaysAcross: false, ComesFirst: true })
        {
            // It is ended when most of the way is done; what it cannot reach remains in any case.
            double left = full * (1 - _box.Wiring.Data.Assumed("precharge_share"));
            step = Math.Min(step, Math.Max(left, full * (1 - precharge.FinalShare)));
        }

        return Event(contact.Part.Id, charged, uncharged, full, step, precharge is { ComesFirst: true } ? precharge.ResistorId : null);
    }

    /// <summary>A load is plugged into a live port.</summary>
    private InrushEvent? AtPlug(int capacitor, bool[] covered)
    {
        States.Solve(_corner);
        Solution uncharged = Circuit.SolveUncharged();
        double volts = Volts(uncharged)[capacitor];
        bool[] charged = new bool[_capacitors.Count];
        charged[capacitor] = volts > _smallestStep;
        covered[capacitor] |= charged[capacitor];
        return Event(_capacitors[capacitor].PortId!, charged, uncharged, volts, volts, null);
    }

    private InrushEvent? Event(string id, bool[] charged, Solution uncharged, double full, double step, string? precharge)
    {
        List<InrushCapacitor> capacitors = [];
        bool[] free = new bool[charged.Length];
        for (int i = 0; i < charged.Length; i++)
        {
            if (charged[i])
            {
                capacitors.Add(_capacitors[i]);
                free[i] = _capacitors[i].LimitAmps is null;
            }
        }

        if (capacitors.Count == 0 || uncharged.Outcome != SolveOutcome.Solved)
        {
            return null;
        }

        (InrushLoop Loop, IReadOnlyList<InrushShare> Fuses)? moment =
            Array.Exists(free, f => f) ? Circuit.FirstMoment(free, uncharged, full) : null;
        return new InrushEvent(id, step, moment?.Loop, capacitors)
        {
            PrechargedBy = precharge,
            Fuses = moment?.Fuses ?? [],
        };
    }

    /// <summary>Voltage at each capacitor, V; 0 where nothing joins it to the bank.</summary>
    private double[] Volts(Solution solution)
    {
        double[] volts = new double[_capacitors.Count];
        for (int i = 0; i < volts.Length; i++)
        {
            InrushCapacitor capacitor = _capacitors[i];
            bool joined = solution.Outcome == SolveOutcome.Solved
                && !solution.IsFloating(capacitor.Plus) && !solution.IsFloating(capacitor.Minus);
            volts[i] = joined ? Math.Max(0, solution.Voltage(capacitor.Plus, capacitor.Minus)) : 0;
        }

        return volts;
    }

    private List<Precharge> SolvePrecharges()
    {
        List<Precharge> solved = [];
        foreach (PrechargeBranch branch in PrechargeBranch.In(_box.Wiring, _capacitors))
        {
            Precharge? worst = null;
            double highest = 0;
            foreach (Corner corner in _box.Corners.Where(c => c is { Charge: Charge.Full, HighestResistance: false } or { Charge: Charge.Empty, HighestResistance: true }))
            {
                Precharge? candidate = Solve(branch, corner);
                highest = Math.Max(highest, candidate?.SourceVolts ?? 0);
                worst = worst is null || candidate?.FinalShare < worst.FinalShare ? candidate ?? worst : worst;
            }

            if (worst is not null)
            {
                bool comesFirst = branch.Contact is not WiredRelay relay || branch.WorkedBy.Count == 0 || branch.PullsIn is not null
                    || States.StaysOpen(relay, branch.WorkedBy, branch.Capacitors, _smallestStep, _corner);
                solved.Add(worst with { HighestVolts = highest, ComesFirst = comesFirst });
            }
        }

        return solved;
    }

    /// <summary>A precharge as it ends when its branch is held closed and the contact has not moved yet.</summary>
    private Precharge? Solve(PrechargeBranch branch, Corner corner)
    {
        OperatingPoint point = States.SolveOpen(branch.Contact, branch.WorkedBy, corner);
        double ends = double.PositiveInfinity;
        string? heldDownBy = null;
        foreach (InrushCapacitor capacitor in branch.Capacitors)
        {
            double volts = point.Solution.Voltage(capacitor.Plus, capacitor.Minus);
            bool startsAndStops = point.Undeliverable.Contains(capacitor.PartId)
                || point.Inputs.Any(i => i.Id == capacitor.PartId && i.CutOff);
            if (startsAndStops && _box.Wiring[capacitor.PartId] is IPoweredInput input && input.CutOffVolts < volts)
            {
                // It starts, sags to its cut-off and stops, over and over: at worst the contact closes there.
                (volts, heldDownBy) = (input.CutOffVolts, capacitor.PartId);
            }

            ends = Math.Min(ends, volts);
        }

        if (branch.PullsIn is { } relay && relay.OperateVolts < ends)
        {
            (ends, heldDownBy) = (relay.OperateVolts, relay.Part.Id);
        }

        ContactStates.Close(branch.Contact);
        Solution closed = Circuit.SolveUncharged();
        if (point.Solution.Outcome != SolveOutcome.Solved || closed.Outcome != SolveOutcome.Solved)
        {
            return null;
        }

        double source = branch.Capacitors.Max(c => closed.Voltage(c.Plus, c.Minus));
        if (source <= 0)
        {
            // The capacitors stand the wrong way round: another rule tells that, and nothing charges them as meant.
            return null;
        }

        return new Precharge(
            branch.Resistor.Part.Id, branch.Contact.Part.Id, [.. branch.WorkedBy.Select(p => p.Part.Id)], branch.Capacitors)
        {
            Ohms = branch.Resistor.Resistor.Resistance.Value.Ohms,
            SourceVolts = source,
            HighestVolts = source,
            FinalVolts = Math.Clamp(ends, 0, source),
            HeldDownBy = heldDownBy,
        };
    }
}
