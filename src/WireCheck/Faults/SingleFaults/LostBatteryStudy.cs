using WireCheck.Charging;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Faults.SingleFaults;

/// <summary>The box while one source charges and something between it and the cells has opened.</summary>
/// <param name="OpenedId">What has opened: a BMS, a fuse, a switch, a relay.</param>
/// <param name="Point">The box then, its regulated output at its charging voltage.</param>
/// <param name="RiseVolts">How much further its output goes without a battery, V.</param>
public sealed record LostBattery(string OpenedId, OperatingPoint Point, double RiseVolts);

/// <summary>
/// What happens on the wiring of a source that charges when its battery is taken away: a regulated charger goes to what it
/// gives without one, a bare panel to its open-circuit voltage in frost. No load is on, which leaves the voltage highest.
/// </summary>
public sealed class LostBatteryStudy
{
    private readonly SolvedBox _box;
    private readonly WiringGraph _graph;
    private StateSolver? _solver;

    /// <summary>Prepares the study of a box; nothing is solved before it is asked.</summary>
    public LostBatteryStudy(SolvedBox box)
    {
        ArgumentNullException.ThrowIfNull(box);
        _box = box;
        _graph = WiringGraph.Of(box.Wiring);
    }

    /// <summary>Highest voltage that a source gives without a battery, panels in frost, V; null for a part that is no source.</summary>
    public double? OpenVolts(WiredPart source) => source switch
    {
        WiredCharger charger => (charger.Charger.OutputWithoutBattery ?? charger.Charger.Voltage).Value.Volts,
        WiredPanel { Element: not null } panel => ColdPanel.Of(_box, _graph, panel).ColdVolts,
        WiredVehicle vehicle => vehicle.Vehicle.Voltage.Value.To.Volts,
        _ => null,
    };

    /// <summary>Every way to take the battery from a source while it alone charges; empty for a source without a mode of its own.</summary>
    public IReadOnlyList<LostBattery> Of(WiredPart source)
    {
        string mode = $"charging-{source.Part.Id}";
        OperatingPoint? charging = _box.Points.FirstOrDefault(
            p => p.Mode.Id == mode && p.Corner is { Charge: Charge.Full, HighestResistance: false });
        if (charging is null || charging.Solution.Outcome != SolveOutcome.Solved)
        {
            return [];
        }

        double rise = source switch
        {
            WiredCharger charger => OpenVolts(charger)!.Value - charger.Charger.Voltage.Value.Volts,
            WiredPanel { Element: not null } panel => ColdPanel.Of(_box, _graph, panel) is var cold ? cold.ColdVolts - cold.Volts : 0,
            _ => 0,
        };
        List<LostBattery> lost = [];
        bool bms = false;
        foreach (WiredPart part in _box.Wiring.Parts)
        {
            OperatingPoint? point = null;
            if (part is WiredBms && !bms)
            {
                bms = true;
                point = Solver.Solve(charging.Mode, charging.Corner, bmsConducts: false);
            }
            else if (part is WiredFuse or WiredSwitch or WiredRelay && IsInTheWay(part, charging))
            {
                point = SolveOpen(part, charging);
            }

            if (point?.Solution.Outcome == SolveOutcome.Solved)
            {
                lost.Add(new LostBattery(part.Part.Id, point, Math.Max(0, rise)));
            }
        }

        return lost;
    }

    private StateSolver Solver => _solver ??= new StateSolver(_box.Wiring);

    private bool IsInTheWay(WiredPart part, OperatingPoint point)
    {
        foreach (Circuit.Elements.Element element in part.Elements)
        {
            if (element is Circuit.Elements.Contact && Math.Abs(point.Amps(element)) > _box.Wiring.Data.Assumed("charging_above"))
            {
                return true;
            }
        }

        return false;
    }

    private OperatingPoint SolveOpen(WiredPart part, OperatingPoint charging)
    {
        BoxMode mode = charging.Mode;
        switch (part)
        {
            case WiredSwitch:
                HashSet<string> closed = [.. mode.ClosedSwitches];
                closed.Remove(part.Part.Id);
                return Solver.Solve(mode.WithSwitches(closed), charging.Corner);
            case WiredRelay relay:
                relay.Held = false;
                OperatingPoint open = Solver.Solve(mode, charging.Corner);
                relay.Held = null;
                return open;
            default:
                WiredFuse fuse = (WiredFuse)part;
                fuse.LeftOpen = true;
                OperatingPoint blown = Solver.Solve(mode, charging.Corner);
                fuse.LeftOpen = false;
                return blown;
        }
    }
}
