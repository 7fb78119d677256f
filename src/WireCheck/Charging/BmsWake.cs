using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.States;

namespace WireCheck.Charging;

/// <summary>
/// What brings a BMS back after it has cut off at low charge: with it open, every relay that the bank held has let go, and a
/// source must drive current the charging way through it all the same.
/// </summary>
/// <param name="BmsId">The BMS.</param>
/// <param name="Waking">Sources that reach it and start without a battery.</param>
/// <param name="Undecided">Sources that reach it; whether they start without a battery is not said.</param>
/// <param name="NeedBattery">Sources that reach it and wait for a battery that is not there.</param>
/// <param name="OutOfReach">Sources that charge while it conducts and do not reach it then, with the switches open or closed.</param>
public sealed record BmsWake(
    string BmsId, IReadOnlyList<string> Waking, IReadOnlyList<string> Undecided, IReadOnlyList<string> NeedBattery, IReadOnlyList<string> OutOfReach)
{
    /// <summary>Every BMS of a box, each source tried alone; nothing for a box without a source that charges.</summary>
    /// <param name="box">The solved box.</param>
    /// <param name="states">A solver of it.</param>
    /// <param name="sources">Where charge comes in.</param>
    internal static IReadOnlyList<BmsWake> Find(SolvedBox box, StateSolver states, IReadOnlyList<ChargeSource> sources)
    {
        WiredBms[] all = [.. box.Wiring.Of<WiredBms>()];
        if (sources.Count == 0 || all.Length == 0)
        {
            return [];
        }

        Corner corner = box.Corners.First(c => c.Charge == Charge.Empty && c.HighestResistance);
        HashSet<(string Bms, string Source)> reached = [];
        List<ChargeSource> tried = [];
        foreach (ChargeSource source in sources)
        {
            // A source that only feeds a charger of the box, such as the panel of a controller, charges in that one's mode; one
            // that does not charge with the BMS closed either has another fault, which other rules tell.
            if (box.Modes.FirstOrDefault(m => m.Id == Modes.ChargingPrefix + source.Id) is not { } alone
                || !box.In(alone.Id).Any(p => p.Solution.Outcome == SolveOutcome.Solved && Charges(p, box)))
            {
                continue;
            }

            tried.Add(source);
            foreach (BoxMode mode in new[] { alone, ChargingModes.Quiet(box, alone.Id, alone.Words, closed: false, new(alone.Sources)) })
            {
                OperatingPoint point = states.Solve(mode, corner, bmsConducts: false);
                if (point.Solution.Outcome != SolveOutcome.Solved)
                {
                    continue;
                }

                foreach (WiredBms bms in all.Where(b => Pushes(b, point, box)))
                {
                    reached.Add((bms.Part.Id, source.Id));
                }
            }
        }

        return tried.Count == 0 ? [] : [.. all.Select(b => Sorted(b.Part.Id, tried, reached))];
    }

    private static BmsWake Sorted(string bms, List<ChargeSource> sources, HashSet<(string Bms, string Source)> reached)
    {
        string[] here = [.. sources.Where(s => reached.Contains((bms, s.Id))).Select(s => s.Id)];
        return new BmsWake(
            bms,
            [.. Those(true)],
            [.. Those(null)],
            [.. Those(false)],
            [.. sources.Select(s => s.Id).Except(here)]);

        IEnumerable<string> Those(bool? starts) => sources.Where(s => here.Contains(s.Id) && StartsAlone(s) == starts).Select(s => s.Id);
    }

    /// <summary>
    /// True when an open path of the BMS stands under more than a diode's drop the charging way, or a cell is charged round it.
    /// </summary>
    private static bool Pushes(WiredBms bms, OperatingPoint point, SolvedBox box)
    {
        double drop = box.Wiring.Data.Assumed("blocking_drop");
        double charging = -bms.DischargeSign * point.Volts(bms.Path.A, bms.Path.B);
        double separate = bms.ChargePath is { } path ? -bms.DischargeSign * point.Volts(path.A, path.B) : double.NegativeInfinity;
        return Math.Max(charging, separate) > drop
            || Charges(point, box);
    }

    private static bool Charges(OperatingPoint point, SolvedBox box) =>
        box.Wiring.Of<WiredBank>().Any(b => BankCharge.Of(box.Wiring, b, point).CellAmps > box.Wiring.Data.Assumed("charging_above"));

    /// <summary>
    /// True when a source stands under voltage with no battery at its output, false when it waits for one, null when its data
    /// do not say. A solar controller that is running may keep its output up and yet not start without a battery.
    /// </summary>
    private static bool? StartsAlone(ChargeSource source) => source.Part is not WiredCharger { Charger: { } charger } ? true
        : charger.StartsWithoutBattery is { } said ? said.Value
        : charger.ChargerKind.Value == ChargerKind.Solar || charger.OutputWithoutBattery is not { } output ? null
        : output.Value.Volts > 0;
}
