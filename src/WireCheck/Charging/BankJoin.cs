using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Charging;

/// <summary>A string joined to others in parallel while their voltages differ: ΔV over the resistance of the loop.</summary>
/// <param name="BankId">The string.</param>
/// <param name="OtherIds">The strings it is joined to, contacts counted as closed.</param>
/// <param name="DifferenceVolts">Largest difference at the moment of joining, V; null when it is not described.</param>
/// <param name="Amps">Largest current through this string then, A; null when the difference is not described.</param>
/// <param name="FullOntoEmptyAmps">The same were one string full and the rest in their last tenth, A; null when not solved.</param>
public sealed record BankJoin(
    string BankId, IReadOnlyList<string> OtherIds, double? DifferenceVolts, double? Amps, double? FullOntoEmptyAmps)
{
    /// <summary>Every string of a box that stands beside others.</summary>
    internal static IReadOnlyList<BankJoin> Find(SolvedBox box, StateSolver states, WiringGraph graph)
    {
        WiredBank[] banks = [.. box.Wiring.Of<WiredBank>()];
        List<BankJoin> joins = [];
        foreach (WiredBank bank in banks)
        {
            WiredBank[] others = [.. banks.Where(b => b != bank && AreJoined(box.Wiring, graph, bank, b))];
            if (others.Length > 0)
            {
                joins.Add(Of(box, states, bank, others));
            }
        }

        return joins;
    }

    private static bool AreJoined(BoxWiring wiring, WiringGraph graph, WiredBank bank, WiredBank other) =>
        bank.Cells.Series.Value == other.Cells.Series.Value
        && Reach.From(graph, wiring.Node(bank.Part.Id, "+"), _ => true)[wiring.Node(other.Part.Id, "+")];

    private static BankJoin Of(SolvedBox box, StateSolver states, WiredBank bank, WiredBank[] others)
    {
        IReadOnlyList<string> ids = [.. others.Select(o => o.Part.Id)];
        double full = box.Wiring.Data.CellOpenCircuitVolts(bank.Cells, box.Wiring.Data.Assumed("charge_full"));
        double empty = box.Wiring.Data.CellOpenCircuitVolts(bank.Cells, box.Wiring.Data.Assumed("charge_empty"));
        double? worst = AmpsThrough(box, states, bank, b => b == bank ? full : empty);
        if (bank.Cells.JoinedAt is not { } own || others.Any(o => o.Cells.JoinedAt is null))
        {
            return new BankJoin(bank.Part.Id, ids, null, null, worst);
        }

        double difference = others.Max(o => Math.Abs(own.Value.Volts - o.Cells.JoinedAt!.Value.Volts));
        double? amps = AmpsThrough(box, states, bank, b => (b.Cells.JoinedAt?.Value.Volts ?? 0) / b.Cells.Series.Value);
        return new BankJoin(bank.Part.Id, ids, difference, amps, worst);
    }

    /// <summary>Current through one string, A, with every string's cells at a voltage of their own and nothing else in use.</summary>
    private static double? AmpsThrough(SolvedBox box, StateSolver states, WiredBank bank, Func<WiredBank, double> cellVolts)
    {
        Corner corner = box.Corners.First(c => !c.HighestResistance);
        BoxMode mode = ChargingModes.Quiet(box, "joining", "strings being joined", closed: true, []);
        box.Wiring.SetConditions(corner.Conditions);
        foreach (WiredBank each in box.Wiring.Of<WiredBank>())
        {
            double volts = cellVolts(each);
            foreach (Source cell in each.CellElements)
            {
                cell.Emf = volts;
            }
        }

        OperatingPoint point = states.SolveAsSet(mode, corner);
        return point.Solution.Outcome == SolveOutcome.Solved ? Math.Abs(BankCharge.AmpsInto(bank, point)) : null;
    }
}
