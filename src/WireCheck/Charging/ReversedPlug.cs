using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.States;

namespace WireCheck.Charging;

/// <summary>
/// A source plugged into a port the wrong way round. Its poles are swapped in a network of its own; beside a charger or a
/// panel stands the diode that then conducts: the charger's rectifier, the panel's bypass diode. Fuses that surely open do so
/// one after another until nothing more happens.
/// </summary>
/// <param name="PortId">The port.</param>
/// <param name="SourceId">What is plugged.</param>
/// <param name="Keyed">The plug fits one way only: it cannot happen, and nothing is solved.</param>
/// <param name="Amps">Largest current through the port before any fuse opens, A.</param>
/// <param name="Opens">Fuses that open, in order; the source's own stands under the source's id.</param>
/// <param name="LeftAmps">What flows when no fuse opens any more, A.</param>
/// <param name="Reversed">Parts whose input stands reversed, by more than a volt.</param>
/// <param name="Undecided">Charger inputs that stand reversed: their data does not say whether they bear that.</param>
public sealed record ReversedPlug(
    string PortId, string SourceId, bool Keyed, double Amps, IReadOnlyList<string> Opens, double LeftAmps,
    IReadOnlyList<string> Reversed, IReadOnlyList<string> Undecided)
{
    /// <summary>Every source of a box that hangs on a port.</summary>
    internal static IReadOnlyList<ReversedPlug> Find(SolvedBox box)
    {
        List<ReversedPlug> found = [];
        foreach (ChargeSource source in ChargeSource.In(box.Wiring))
        {
            if (PortOf(source.Part.Part, box.Pack) is { } port)
            {
                found.Add(port.Keyed?.Value == true
                    ? new ReversedPlug(port.Id, source.Id, true, 0, [], 0, [], [])
                    : Solve(box, source.Id, port));
            }
        }

        return found;
    }

    private static Port? PortOf(Part part, Pack pack) => part switch
    {
        Charger { At: { } at } => pack.Find(at.Value) as Port,
        Vehicle { At: { } at } => pack.Find(at.Value) as Port,
        Panel { At: { } at } => pack.Find(at.Value) as Port,
        _ => null,
    };

    private static ReversedPlug Solve(SolvedBox box, string id, Port port)
    {
        BoxWiring wiring = BoxWiring.Build(box.Pack, box.Wiring.Data, reversed: id);
        ChargeSource source = ChargeSource.In(wiring).First(s => s.Id == id);
        AddConductingDiode(wiring, source);
        StateSolver states = new(wiring);
        OperatingPointSolver solver = new(wiring.Network);
        Corner corner = box.Corners.First(c => c.Charge == Charge.Full && !c.HighestResistance);
        Dictionary<string, SourceState> powered = new() { [id] = SourceState.Powered };
        Outcome outcome = new();
        foreach (bool closed in new[] { true, false })
        {
            BoxMode mode = ChargingModes.Quiet(box, "reversed", "plugged the wrong way round", closed, powered);
            OperatingPoint point = states.Solve(mode, corner);
            Follow(point, wiring, solver, source, port.Id, outcome);
        }

        return new ReversedPlug(
            port.Id, id, false, outcome.Amps, outcome.Opens, outcome.LeftAmps, [.. outcome.Reversed], [.. outcome.Undecided]);
    }

    /// <summary>The worst of the states looked at.</summary>
    private sealed class Outcome
    {
        internal double Amps { get; set; }

        internal double LeftAmps { get; set; }

        internal List<string> Opens { get; } = [];

        internal SortedSet<string> Reversed { get; } = new(StringComparer.Ordinal);

        internal SortedSet<string> Undecided { get; } = new(StringComparer.Ordinal);
    }

    private static void AddConductingDiode(BoxWiring wiring, ChargeSource source)
    {
        double? rated = source.Part switch
        {
            WiredCharger charger => charger.Charger.Current.Value.Amperes,
            WiredPanel panel => panel.Panel.ShortCircuit.Value.Amperes,
            _ => null,
        };
        if (rated is { } amps)
        {
            DiodeModel model = SupplyModels.Rectifier(wiring.Data.Assumed("rectifier_drop"), amps);
            wiring.Network.Add(new Circuit.Elements.Diode(source.Id + ".reversed", source.Minus, source.Plus, model));
        }
    }

    /// <summary>Opens fuses by the currents of a state until none opens any more, and notes what stands reversed.</summary>
    private static void Follow(
        OperatingPoint point, BoxWiring wiring, OperatingPointSolver solver, ChargeSource source, string portId, Outcome outcome)
    {
        WiredPort port = (WiredPort)wiring[portId];
        Solution solution = point.Solution;
        outcome.Amps = Math.Max(outcome.Amps, Math.Abs(solution.Current(port.Plus)));
        while (solution.Outcome == SolveOutcome.Solved)
        {
            NoteReversed(wiring, solution, outcome);
            if (!OpenFuses(wiring, solution, source, outcome))
            {
                break;
            }

            solver.ForgetIslands();
            solution = solver.Solve();
        }

        outcome.LeftAmps = Math.Max(outcome.LeftAmps, Math.Abs(solution.Current(port.Plus)));
    }

    /// <summary>True when a fuse opened.</summary>
    private static bool OpenFuses(BoxWiring wiring, Solution solution, ChargeSource source, Outcome outcome)
    {
        double multiple = wiring.Data.Assumed("fuse_surely_opens");
        WiredFuse? first = null;
        double worst = multiple;
        foreach (WiredFuse fuse in wiring.Of<WiredFuse>())
        {
            double over = Math.Abs(solution.Current(fuse.Element)) / fuse.Fuse.Rating.Value.Amperes;
            if (fuse.Element.Closed && over >= worst)
            {
                (first, worst) = (fuse, over);
            }
        }

        // Of two fuses in a row the one further over its rating opens first; the vehicle's own counts with them.
        if (source.Part is WiredVehicle { Element.Connected: true } vehicle
            && Math.Abs(solution.Current(vehicle.Element)) / vehicle.Vehicle.Fuse.Value.Amperes >= worst)
        {
            vehicle.Element.Connected = false;
            Note(outcome, source.Id);
            return true;
        }

        if (first is null)
        {
            return false;
        }

        first.Element.Closed = false;
        Note(outcome, first.Part.Id);
        return true;
    }

    private static void Note(Outcome outcome, string id)
    {
        if (!outcome.Opens.Contains(id))
        {
            outcome.Opens.Add(id);
        }
    }

    private static void NoteReversed(BoxWiring wiring, Solution solution, Outcome outcome)
    {
        double reversed = wiring.Data.Assumed("reversed_above");
        foreach (WiredPart part in wiring.Parts)
        {
            (int Plus, int Minus)? ends = part switch
            {
                IPoweredInput input => (input.InputPlus, input.InputMinus),
                WiredMeter meter => (meter.Element.A, meter.Element.B),
                WiredLoad { PowerElement: { } element } => (element.A, element.B),
                WiredCharger { Stage: { } stage } => (stage.A, stage.B),
                _ => null,
            };
            if (ends is { } at && !solution.IsFloating(at.Plus) && !solution.IsFloating(at.Minus)
                && solution.Voltage(at.Plus, at.Minus) < -reversed)
            {
                (part is WiredCharger ? outcome.Undecided : outcome.Reversed).Add(part.Part.Id);
            }
        }
    }
}
