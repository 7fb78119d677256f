using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.States;

namespace WireCheck.Charging;

/// <summary>What a panel takes from the cells in the dark.</summary>
/// <param name="PanelId">The panel.</param>
/// <param name="Reached">The cells can drive current into it: no diode and no blocking controller lies between.</param>
/// <param name="DarkKnown">Its dark leakage or the data of its cells are described.</param>
/// <param name="Amps">Current it takes at its most, A; 0 where nothing reaches it or nothing is known.</param>
/// <param name="Point">The state of that most; null when it was reckoned from the bank's voltage.</param>
/// <param name="BankVolts">Highest bank voltage of the night, V.</param>
/// <param name="UndecidedBy">A controller between of which it is not said whether it blocks; null when there is none.</param>
public sealed record NightDraw(
    string PanelId, bool Reached, bool DarkKnown, double Amps, OperatingPoint? Point, double BankVolts, string? UndecidedBy)
{
    /// <summary>Every panel of a box in the dark.</summary>
    /// <param name="box">The box.</param>
    /// <param name="graph">Its ways.</param>
    /// <param name="nights">The box with every source unpowered.</param>
    internal static IReadOnlyList<NightDraw> Find(SolvedBox box, WiringGraph graph, IReadOnlyList<OperatingPoint> nights) =>
        nights.Count == 0 ? [] : [.. box.Wiring.Of<WiredPanel>().Select(p => Of(box, graph, p, nights))];

    private static NightDraw Of(SolvedBox box, WiringGraph graph, WiredPanel panel, IReadOnlyList<OperatingPoint> nights)
    {
        bool known = panel.Panel.DarkLeakage is not null || panel.Panel.DarkCells is not null;
        double bankVolts = 0;
        OperatingPoint most = nights[0];
        foreach (OperatingPoint night in nights)
        {
            foreach (WiredBank bank in box.Wiring.Of<WiredBank>())
            {
                bankVolts = Math.Max(bankVolts, BankCharge.Of(box.Wiring, bank, night).Volts);
            }

            most = panel.Element is { } e && night.Amps(e) > most.Amps(e) ? night : most;
        }

        if (ControllerOf(box.Wiring, graph, panel) is { } controller)
        {
            bool? blocks = controller.Charger.BlocksReverse?.Value;
            PanelCurve dark = SupplyModels.Curve(panel.Panel, 0, 1);
            (dark.Connected, dark.Lit) = (true, false);
            return new NightDraw(
                panel.Part.Id, blocks != true, known, blocks == false ? dark.Current(bankVolts, out _) : 0, null, bankVolts,
                blocks is null ? controller.Part.Id : null);
        }

        bool reached = panel.Element is { } element && BankReaches(box.Wiring, graph, element);
        return new NightDraw(
            panel.Part.Id, reached, known, panel.Element is { } drawn ? Math.Max(0, most.Amps(drawn)) : 0, most, bankVolts, null);
    }

    /// <summary>The solar controller that a panel feeds; null for a panel without one.</summary>
    internal static WiredCharger? ControllerOf(BoxWiring wiring, WiringGraph graph, WiredPanel panel)
    {
        bool[]? reached = panel.Element is { } element ? Reach.From(graph, element.A, _ => true) : null;
        foreach (WiredCharger charger in wiring.Of<WiredCharger>())
        {
            bool named = charger.Charger.From?.Value == panel.Part.Id;
            bool wired = reached is not null && charger.Stage is { } stage && reached[stage.A];
            bool only = panel.Element is null && charger.Charger.From is null && charger.Charger.ChargerKind.Value == ChargerKind.Solar;
            if (named || wired || only)
            {
                return charger;
            }
        }

        return null;
    }

    private static bool BankReaches(BoxWiring wiring, WiringGraph graph, PanelCurve element)
    {
        foreach (WiredBank bank in wiring.Of<WiredBank>())
        {
            if (Reach.From(graph, wiring.Node(bank.Part.Id, "+"), _ => true)[element.A])
            {
                return true;
            }
        }

        return false;
    }
}
