using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.States;

namespace WireCheck.Standby;

/// <summary>Solves a box at rest again without each of its consumers in turn.</summary>
internal sealed class MoveFinder(SolvedBox box)
{
    /// <summary>Moves for every consumer that can be moved: all but a BMS, which must watch its cells, and links outside the box.</summary>
    internal IReadOnlyList<Move> Of(StandbyState state)
    {
        string? behind = ContactThatCutsOff();
        List<Move> moves = [];
        foreach (Drain drain in state.Drains)
        {
            if (box.Pack.Find(drain.PartId) is { } part and not Bms and not Conductor && Without(part, state) is { } move)
            {
                bool plugged = part is Load { At: not null } or Charger { At: not null } or Vehicle { At: not null } or Panel { At: not null };
                moves.Add(move with { Behind = plugged ? null : behind, Unplugs = plugged });
            }
        }

        return moves;
    }

    private Move? Without(Part part, StandbyState state)
    {
        BoxWiring wiring = BoxWiring.Build(box.Pack.Without(part.Id, FeedOf(part)), box.Wiring.Data);
        OperatingPoint point = new StateSolver(wiring).Solve(state.Point.Mode, state.Point.Corner);
        if (point.Solution.Outcome != SolveOutcome.Solved)
        {
            return null;
        }

        double amps = 0;
        foreach (Drain drain in DrainFinder.At(wiring, point))
        {
            amps += drain.Amps;
        }

        bool meant = box.Pack.StaysLive.Any(s => s.Value == part.Id);
        return new Move(part.Id, null, false, meant, amps, new ShelfClock(wiring).Of(point));
    }

    /// <summary>Terminal whose wire brings a part its standby current; null for what is unplugged.</summary>
    private static string? FeedOf(Part part) => part switch
    {
        Relay => "86",
        Switch => "lamp-",
        Resistor => "1",
        Description.Kinds.Diode => "A",
        Converter or Inverter => "in+",
        Charger { At: null } => "out+",
        Load { At: not null } or Charger or Vehicle { At: not null } or Panel { At: not null } => null,
        _ => "+",
    };

    /// <summary>The first switch, else the first relay, that is open at rest with a dead far side and feeds it from the bank in use.</summary>
    private string? ContactThatCutsOff()
    {
        OperatingPoint? rest = box.In(Modes.Stored).FirstOrDefault(p => p.Solution.Outcome == SolveOutcome.Solved);
        OperatingPoint? use = box.In(Modes.Idle).FirstOrDefault(p => p.Solution.Outcome == SolveOutcome.Solved);
        Cells? bank = box.Pack.Of<Cells>().FirstOrDefault();
        if (rest is null || use is null || bank is null)
        {
            return null;
        }

        int minus = box.Wiring.Node(bank.Id, "-");
        foreach (WiredSwitch wired in box.Wiring.Of<WiredSwitch>())
        {
            if (wired.Part is Switch { Momentary.Value: not true } && wired.Poles.Any(p => Feeds(p, rest, use, minus)))
            {
                return wired.Part.Id;
            }
        }

        return box.Wiring.Of<WiredRelay>().FirstOrDefault(r => Feeds(r.Make, rest, use, minus))?.Part.Id;
    }

    private bool Feeds(Contact contact, OperatingPoint rest, OperatingPoint use, int minus)
    {
        double live = box.Wiring.Data.Assumed("live_above");
        double a = VoltsAt(contact.A, minus, rest);
        double b = VoltsAt(contact.B, minus, rest);
        int far = a < b ? contact.A : contact.B;
        return Math.Min(a, b) <= live && Math.Max(a, b) > live && VoltsAt(far, minus, use) > live;
    }

    /// <summary>Voltage of a node above the bank's negative, V; 0 where nothing joins the two.</summary>
    private static double VoltsAt(int node, int minus, OperatingPoint point) =>
        point.Solution.Island(node) == point.Solution.Island(minus) ? point.Volts(node, minus) : 0;
}
