using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Faults.Inrush;

/// <summary>Puts a box into the state just before one contact closes: every switch on, relays as they then stand, the contact open.</summary>
internal sealed class ContactStates
{
    private readonly BoxMode _idle;
    private readonly StateSolver _solver;

    internal ContactStates(SolvedBox box)
    {
        _idle = box.Modes.First(m => m.Id == Modes.Idle);
        _solver = new StateSolver(box.Wiring);
    }

    /// <summary>The box at rest with everything switched on.</summary>
    internal OperatingPoint Solve(Corner corner) => _solver.Solve(_idle, corner);

    /// <summary>The box with one contact still open and others closed beside it.</summary>
    /// <param name="contact">A switch, a relay or a fuse.</param>
    /// <param name="closed">Switches that are closed although the mode leaves them open, and relays that are pulled in.</param>
    /// <param name="corner">The corner.</param>
    internal OperatingPoint SolveOpen(WiredPart contact, IReadOnlyList<WiredPart> closed, Corner corner)
    {
        HashSet<string> switches = [.. _idle.ClosedSwitches];
        switches.Remove(contact.Part.Id);
        foreach (WiredPart part in closed)
        {
            if (part is WiredSwitch)
            {
                switches.Add(part.Part.Id);
            }
        }

        Hold(contact, closed, false);
        try
        {
            return _solver.Solve(_idle.WithSwitches(switches), corner);
        }
        finally
        {
            Hold(contact, closed, null);
        }
    }

    /// <summary>
    /// True when there is a position of the switches in which the branch round a relay's contact feeds what it charges and the relay
    /// stays open by itself: without one, the contact always closes first. Every switch is closed, or all but one, or all but two.
    /// </summary>
    /// <param name="relay">The relay whose contact the branch goes round.</param>
    /// <param name="workedBy">Switches and relays in the branch.</param>
    /// <param name="charged">What the branch charges.</param>
    /// <param name="live">Voltage from which it is fed, V.</param>
    /// <param name="corner">The corner.</param>
    internal bool StaysOpen(
        WiredRelay relay, IReadOnlyList<WiredPart> workedBy, IReadOnlyList<InrushCapacitor> charged, double live, Corner corner)
    {
        string[] all = [.. _idle.ClosedSwitches.Union(workedBy.OfType<WiredSwitch>().Select(s => s.Part.Id)).Order(StringComparer.Ordinal)];
        for (int first = -1; first < all.Length; first++)
        {
            for (int second = -1; second <= first; second++)
            {
                HashSet<string> closed = [.. all.Where((_, i) => i != first && i != second)];
                OperatingPoint point = _solver.Solve(_idle.WithSwitches(closed), corner);
                if (point.Solution.Outcome == SolveOutcome.Solved && !relay.Make.Closed
                    && charged.Any(c => Math.Abs(point.Solution.Voltage(c.Plus, c.Minus)) > live))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Closes a contact and lets nothing else move.</summary>
    internal static void Close(WiredPart contact)
    {
        switch (contact)
        {
            case WiredSwitch wired:
                wired.Closed = true;
                break;
            case WiredRelay relay:
                relay.Energised = true;
                break;
            case WiredFuse fuse:
                fuse.Element.Closed = true;
                break;
        }
    }

    private static void Hold(WiredPart contact, IReadOnlyList<WiredPart> closed, bool? open)
    {
        foreach (WiredPart part in closed)
        {
            if (part is WiredRelay relay)
            {
                relay.Held = !open;
            }
        }

        if (contact is WiredRelay own)
        {
            own.Held = open;
        }
        else if (contact is WiredFuse fuse)
        {
            fuse.LeftOpen = open is false;
        }
    }
}
