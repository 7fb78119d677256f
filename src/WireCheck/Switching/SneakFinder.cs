using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;

namespace WireCheck.Switching;

/// <summary>Settles each noted state once more, follows the current and says what kind of sneak path it is.</summary>
internal sealed class SneakFinder
{
    private readonly SwitchedBox _box;
    private readonly Settling _settling;
    private readonly LoopTracer _tracer;
    private readonly HashSet<Element> _rests = [];
    private readonly HashSet<Element> _links;
    private readonly HashSet<Element> _resistors;

    internal SneakFinder(SwitchedBox box, Settling settling)
    {
        _box = box;
        _settling = settling;
        _tracer = new LoopTracer(box);
        _links = [.. box.Wiring.OutsideLinks];
        _resistors = [.. box.Rails.Resistors.Select(r => r.Element)];
        foreach (WiredPart part in box.Wiring.Parts)
        {
            foreach (Element element in part.Elements)
            {
                if (Takes(part, element))
                {
                    _rests.Add(element);
                }
            }
        }
    }

    internal LoopTracer Tracer => _tracer;

    /// <summary>All sneak paths of the noted states: relays first, then what is live, then sources.</summary>
    internal List<SneakPath> Find(SneakCandidates noted)
    {
        List<SneakPath> found = [];
        AddHeld(found, noted);
        for (int i = 0; i < _box.Relays.Length; i++)
        {
            if (noted.ChattersAt[i] is { } state)
            {
                found.Add(OfCoil(SneakKind.Chatter, i, state, Settle(state), [_box.Relays[i].Part.Id]));
            }

            if (noted.CoilAt[i] is { } fed && !found.Exists(f => f.PartId == _box.Relays[i].Part.Id && f.Kind == SneakKind.CoilFedThroughConsumer))
            {
                AddFedCoil(found, i, fed, inSeries: !noted.CoilIsFed[i]);
            }
        }

        for (int i = 0; i < _box.Points.Count; i++)
        {
            if (noted.LiveAt[i] is { } state)
            {
                AddLive(found, i, state, inSeries: !noted.IsFed[i]);
            }
        }

        for (int s = 0; s < _box.Sources.Count; s++)
        {
            if (noted.FedAt[s] is { } state)
            {
                found.Add(OfSource(_box.Sources[s], state));
            }
        }

        return found;
    }

    /// <summary>The loop through a point with its burden on, in the state as it stands; null when no current flows.</summary>
    internal (List<LoopStep> Steps, List<string> Loop, double Volts)? LoopOf(int point)
    {
        if (_box.Burdens[point] is not { } burden)
        {
            return null;
        }

        burden.Closed = true;
        Solution solution = _box.Solver.Solve();
        double volts = solution.Voltage(burden.A, burden.B);
        (int plus, int minus) = volts >= 0 ? (burden.A, burden.B) : (burden.B, burden.A);
        (List<LoopStep> feed, List<LoopStep> back, string? source) = _tracer.Trace(solution, plus, minus);
        burden.Closed = false;
        return source is null ? null : ([.. feed, .. back], LoopTracer.Ids(source, feed, _box.Points[point].Id, back), Math.Abs(volts));
    }

    /// <summary>Names of the outside links a loop takes.</summary>
    internal List<string> LinksIn(IEnumerable<LoopStep> steps) => Names(steps, _links);

    /// <summary>Ids of the closed switches of a state.</summary>
    internal List<string> Ids(ulong closed)
    {
        List<string> ids = [];
        for (int i = 0; i < _box.Switches.Length && i < SwitchStates.MostSwitches; i++)
        {
            if ((closed & (1UL << i)) != 0)
            {
                ids.Add(_box.Switches[i].Part.Id);
            }
        }

        return ids;
    }

    /// <summary>Relays with two ends: by their own contact, through a consumer, or by each other.</summary>
    private void AddHeld(List<SneakPath> found, SneakCandidates noted)
    {
        List<SneakPath> others = [];
        for (int i = 0; i < _box.Relays.Length; i++)
        {
            WiredRelay relay = _box.Relays[i];
            if (noted.TwoStatesAt[i] is not { } state || relay.Relay.Latching?.Value == true)
            {
                continue;
            }

            Solution solution = Settle(state);
            List<LoopStep> steps = CoilSteps(i, solution);
            List<string> consumers = Names(steps, _rests);
            if (steps.Exists(s => s.Element == relay.Make || s.Element == relay.Rest))
            {
                found.Add(OfCoil(SneakKind.HeldByOwnContact, i, state, solution, [relay.Part.Id]));
            }
            else if (consumers.Count > 0)
            {
                found.Add(OfCoil(SneakKind.CoilFedThroughConsumer, i, state, solution, consumers));
            }
            else
            {
                string[] partners = [.. _box.Relays
                    .Where((r, k) => k != i && k < 64 && (state.TwoStates & (1UL << k)) != 0 && steps.Exists(s => s.Element == r.Make || s.Element == r.Rest))
                    .Select(r => r.Part.Id)];
                others.Add(OfCoil(SneakKind.TwoStates, i, state, solution, partners));
            }
        }

        // One that only follows another which holds itself is no case of its own.
        SneakPath[] own = [.. others.Where(o => !o.By.Any(by => found.Exists(f => f.PartId == by)))];
        found.AddRange(own);
    }

    private void AddFedCoil(List<SneakPath> found, int relay, CandidateState state, bool inSeries)
    {
        Solution solution = Settle(state);
        List<LoopStep> steps = CoilSteps(relay, solution);
        if (LinksIn(steps) is { Count: > 0 } links)
        {
            found.Add(OfCoil(SneakKind.FedByOutsideLink, relay, state, solution, links));
        }
        else if (Names(steps, _rests) is { Count: > 0 } consumers)
        {
            string id = _box.Relays[relay].Part.Id;

            // Of two in series the first is told, and the other with it.
            if (!inSeries || !found.Exists(f => f.InSeries && f.By.Contains(id) && consumers.Contains(f.PartId)))
            {
                found.Add(OfCoil(SneakKind.CoilFedThroughConsumer, relay, state, solution, consumers) with { InSeries = inSeries });
            }
        }
    }

    private void AddLive(List<SneakPath> found, int point, CandidateState state, bool inSeries)
    {
        Settle(state);
        if (LoopOf(point) is not { } loop)
        {
            return;
        }

        (SneakKind Kind, List<string> By)? what =
            LinksIn(loop.Steps) is { Count: > 0 } links ? (SneakKind.FedByOutsideLink, links)
            : Names(loop.Steps, _rests).FindAll(id => id != _box.Points[point].Id) is { Count: > 0 } consumers ? (SneakKind.LiveThroughConsumer, consumers)
            : AcrossOpenContact(loop.Steps) is { Count: > 0 } resistors ? (SneakKind.ResistorAcrossContact, resistors)
            : null;
        // The lamp through which a coil is fed is told with the coil.
        if (what is { } known && !known.By.Exists(b => found.Exists(f => f.PartId == b && f.By.Contains(_box.Points[point].Id))))
        {
            found.Add(new SneakPath(known.Kind, _box.Points[point].Id, state.Plugs.Id, Ids(state.Closed), loop.Loop, known.By)
            {
                Size = loop.Volts,
                InSeries = inSeries && known.Kind == SneakKind.LiveThroughConsumer,
            });
        }
    }

    /// <summary>Resistors of a loop that lie, with no switch of their own, across a contact that is open.</summary>
    private List<string> AcrossOpenContact(List<LoopStep> steps)
    {
        List<string> across = [];
        foreach (RailWay resistor in _box.Rails.Resistors)
        {
            if (steps.Exists(s => s.Element == resistor.Element) && _box.Rails.Contacts.Any(c => !((Contact)c.Element).Closed
                && ((c.From == resistor.From && c.To == resistor.To) || (c.From == resistor.To && c.To == resistor.From))))
            {
                across.Add(resistor.PartId);
            }
        }

        return across;
    }

    private SneakPath OfSource(SourcePoint source, CandidateState state)
    {
        Solution solution = Settle(state);
        (List<LoopStep> feed, List<LoopStep> back, string? giver) = _tracer.Trace(solution, source.Plus, source.Minus);
        double amps = 0;
        foreach (Element element in _box.Wiring[source.PartId].Elements)
        {
            amps = element is Source ? Math.Max(amps, solution.Current(element)) : amps;
        }

        return new SneakPath(
            SneakKind.SourceIntoSource, source.PartId, state.Plugs.Id, Ids(state.Closed),
            LoopTracer.Ids(giver, feed, source.PartId, back), giver is null ? [] : [giver]) { Size = amps };
    }

    private SneakPath OfCoil(SneakKind kind, int relay, CandidateState state, Solution solution, IReadOnlyList<string> by)
    {
        (int plus, int minus) = CoilEnds(relay, solution);
        (List<LoopStep> feed, List<LoopStep> back, string? source) = _tracer.Trace(solution, plus, minus);
        string id = _box.Relays[relay].Part.Id;
        return new SneakPath(kind, id, state.Plugs.Id, Ids(state.Closed), LoopTracer.Ids(source, feed, id, back), by)
        {
            Size = Math.Abs(_settling.CoilVolts(relay, solution)),
        };
    }

    private List<LoopStep> CoilSteps(int relay, Solution solution)
    {
        (int plus, int minus) = CoilEnds(relay, solution);
        (List<LoopStep> feed, List<LoopStep> back, _) = _tracer.Trace(solution, plus, minus);
        return [.. feed, .. back];
    }

    private (int Plus, int Minus) CoilEnds(int relay, Solution solution)
    {
        (int plus, int minus) = _settling.Coil(relay);
        return _settling.CoilVolts(relay, solution) >= 0 ? (plus, minus) : (minus, plus);
    }

    private Solution Settle(CandidateState state)
    {
        _box.Plug(state.Plugs);
        _box.SetSwitches(state.Closed);
        return state.HeldIn ? _settling.FromPulledIn(state.Started) : _settling.FromRest();
    }

    private static List<string> Names(IEnumerable<LoopStep> steps, HashSet<Element> of)
    {
        List<string> ids = [];
        foreach (LoopStep step in steps)
        {
            if (of.Contains(step.Element) && !ids.Contains(step.PartId))
            {
                ids.Add(step.PartId);
            }
        }

        return ids;
    }

    /// <summary>An element that takes current for itself: a coil, a lamp, a load, a meter, an input.</summary>
    private static bool Takes(WiredPart part, Element element) => part switch
    {
        WiredRelay relay => element != relay.Make && element != relay.Rest,
        WiredSwitch wired => element == wired.Lamp,
        WiredLoad load => element != load.LeadPlus && element != load.LeadMinus,
        WiredMeter or WiredInverter => true,
        WiredConverter converter => element == converter.Outlet,
        WiredCharger charger => element == charger.Leakage,
        WiredBms bms => element == bms.Standby,
        _ => false,
    };
}
