using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.States;

namespace WireCheck.Charging;

/// <summary>What the box drives through a key or tool across the pins of an empty charge port.</summary>
/// <param name="PortId">The port.</param>
/// <param name="Amps">Largest current before any fuse opens, A: full cells, lowest resistances.</param>
/// <param name="OpenVolts">Voltage at the empty pins in the same state, V, into nothing at all.</param>
public sealed record PortShort(string PortId, double Amps, double OpenVolts)
{
    /// <summary>
    /// Part of the open voltage that is left when a burden, Ω, lies across the pins: Thévenin's circuit of the two figures.
    /// What only leaks through a blocking diode collapses; what a battery stands behind stays.
    /// </summary>
    public double ShareInto(double burdenOhms)
    {
        double amps = Math.Abs(Amps);
        return amps > 0 ? burdenOhms / (burdenOhms + (Math.Abs(OpenVolts) / amps)) : 0;
    }

    /// <summary>Every port that takes charge; they are shorted one at a time in a network of their own.</summary>
    internal static IReadOnlyList<PortShort> Find(SolvedBox box)
    {
        Port[] ports = [.. box.Pack.Of<Port>().Where(p => p.Direction.Value != PortDirection.Out)];
        if (ports.Length == 0)
        {
            return [];
        }

        BoxWiring wiring = BoxWiring.Build(box.Pack, box.Wiring.Data);
        double ohms = box.Wiring.Data.Assumed("short_across_pins");
        Contact[] shorts = [.. ports.Select(p => wiring.Network.Add(new Contact(
            p.Id + ".short", wiring.Node(p.Id, WiredPort.PlugPlus), wiring.Node(p.Id, WiredPort.PlugMinus), ohms)))];
        StateSolver states = new(wiring);
        Corner corner = box.Corners.First(c => c.Charge == Charge.Full && !c.HighestResistance);
        List<PortShort> found = [];
        for (int i = 0; i < ports.Length; i++)
        {
            PortShort worst = new(ports[i].Id, 0, 0);
            foreach (bool closed in new[] { true, false })
            {
                BoxMode mode = ChargingModes.Quiet(box, "port-shorted", "pins shorted", closed, []);
                double open = Solve(mode, isShorted: false, p => p.Volts(shorts[i].A, shorts[i].B));
                double amps = Solve(mode, isShorted: true, p => p.Amps(shorts[i]));
                worst = amps > worst.Amps ? worst with { Amps = amps, OpenVolts = open } : worst;
            }

            found.Add(worst);

            double Solve(BoxMode mode, bool isShorted, Func<OperatingPoint, double> value)
            {
                shorts[i].Closed = isShorted;
                OperatingPoint point = states.Solve(mode, corner);
                shorts[i].Closed = false;
                return point.Solution.Outcome == SolveOutcome.Solved ? Math.Abs(value(point)) : 0;
            }
        }

        return found;
    }
}
