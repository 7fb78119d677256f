using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Physics;
using WireCheck.States;

namespace WireCheck.Charging;

/// <summary>The open-circuit voltage of panels in frost.</summary>
/// <param name="Id">The controller whose input it stands at, or the panel itself where no controller is fed.</param>
/// <param name="Volts">At 25 °C, V; panels in series add up.</param>
/// <param name="ColdVolts">At the coldest the box is used, V.</param>
/// <param name="RisePerKelvin">Part gained for each kelvin, 1/K.</param>
/// <param name="RiseAssumed">The rise comes from the library.</param>
/// <param name="Celsius">That coldest temperature, °C.</param>
public sealed record ColdPanel(string Id, double Volts, double ColdVolts, double RisePerKelvin, bool RiseAssumed, double Celsius)
{
    /// <summary>Of every solar controller that panels feed.</summary>
    internal static IReadOnlyList<ColdPanel> AtControllers(SolvedBox box, StateSolver states, WiringGraph graph)
    {
        List<ColdPanel> found = [];
        foreach (WiredCharger controller in box.Wiring.Of<WiredCharger>())
        {
            Panel[] panels = [.. box.Wiring.Of<WiredPanel>()
                .Where(p => NightDraw.ControllerOf(box.Wiring, graph, p) == controller)
                .Select(p => p.Panel)];
            if (panels.Length > 0 && OpenVolts(box, states, controller, panels) is { } volts && volts > 0)
            {
                found.Add(At(controller.Part.Id, volts, panels, box));
            }
        }

        return found;
    }

    /// <summary>Of a panel and those in series with it.</summary>
    internal static ColdPanel Of(SolvedBox box, WiringGraph graph, WiredPanel panel)
    {
        Panel[] panels = [.. PanelString.Of(box.Wiring, graph, panel).Select(p => p.Panel)];
        return At(panel.Part.Id, panels.Sum(p => p.OpenCircuit.Value.Volts), panels, box);
    }

    private static ColdPanel At(string id, double volts, Panel[] panels, SolvedBox box)
    {
        double assumed = box.Wiring.Data.Assumed("open_circuit_rise");
        double rise = 0;
        bool fromLibrary = false;
        foreach (Panel panel in panels)
        {
            double own = panel.OpenCircuitRise?.Value.DecimalFractions ?? assumed;
            if (own > rise)
            {
                (rise, fromLibrary) = (own, panel.OpenCircuitRise is null);
            }
        }

        double celsius = box.Pack.Surroundings.Ambient.Value.From.DegreesCelsius;
        return new ColdPanel(id, volts, PanelTemperature.OpenCircuitVolts(volts, rise, celsius), rise, fromLibrary, celsius);
    }

    /// <summary>Voltage at an input that draws nothing, all panels in the sun, V; null when it cannot be solved.</summary>
    private static double? OpenVolts(SolvedBox box, StateSolver states, WiredCharger controller, Panel[] panels)
    {
        if (controller.Stage is not { } stage)
        {
            return panels.Max(p => p.OpenCircuit.Value.Volts);
        }

        Dictionary<string, SourceState> sources = new() { [controller.Part.Id] = SourceState.Unpowered };
        foreach (Panel panel in box.Pack.Of<Panel>())
        {
            sources[panel.Id] = SourceState.Powered;
        }

        BoxMode mode = ChargingModes.Quiet(box, "sun", "full sun, the controller drawing nothing", closed: true, sources);
        OperatingPoint point = states.Solve(mode, box.Corners[0]);
        return point.Solution.Outcome == SolveOutcome.Solved ? point.Volts(stage.A, stage.B) : null;
    }
}
