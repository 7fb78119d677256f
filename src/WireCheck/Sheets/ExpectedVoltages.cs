using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.States;

namespace WireCheck.Sheets;

/// <summary>Voltages to expect at every point where a probe can go, mode by mode, with the band that is accepted.</summary>
internal static class ExpectedVoltages
{
    private const string Dead = "dead";

    internal static Sheet Of(BenchBox bench)
    {
        Pack pack = bench.Described.Pack;
        Cells? bank = pack.Of<Cells>().FirstOrDefault();
        double deadBelow = bench.Library.Assumptions["live_above"].Value;
        List<IReadOnlyList<string>> rows = [];
        foreach (BoxMode mode in Modes(bench.Described))
        {
            List<ProbePair> dead = [];
            foreach (ProbePair at in ProbePair.In(pack))
            {
                if (bench.Volts(mode.Id, at) is not { } volts)
                {
                    continue;
                }

                if (Math.Max(Math.Abs(volts.Lowest), Math.Abs(volts.Highest)) < deadBelow)
                {
                    dead.Add(at);
                }
                else if (bench.Holds(mode.Id, at))
                {
                    rows.Add(Row(bench, mode.Id, at, volts, bank));
                }
                else
                {
                    rows.Add([mode.Id, at.Red, at.Black, $"{Dead}; {SheetWords.Volts(volts.Expected)} on a meter alone", "", SheetWords.Volts(deadBelow), "", "", ""]);
                }
            }

            if (dead.Count > 0)
            {
                rows.Add([mode.Id, string.Join(", ", dead.Select(d => d.Red)), string.Join(", ", dead.Select(d => d.Black)), Dead, "", SheetWords.Volts(deadBelow), "", "", ""]);
            }
        }

        return new Sheet("voltages", "Voltages to expect", Notes(bench, bank, deadBelow), ["mode", "red probe", "black probe", "expect, V", "accept from, V", "to, V", "below the bank, mV", "at most, mV", "read"], rows);
    }

    /// <summary>The modes of the description, then rest and everything on.</summary>
    private static IEnumerable<BoxMode> Modes(SolvedBox box) => box.Modes
        .Where(m => !m.Added).Concat(box.Modes.Where(m => m.Added && m.Id is States.Modes.Stored or "idle" or "everything"));

    private static List<string> Notes(BenchBox bench, Cells? bank, double deadBelow)
    {
        List<string> notes = [];
        if (bank is not null)
        {
            double rested = bench.Library.Chemistries[bank.Chemistry.Value].OpenCircuitVolts(bench.Library.Assumptions["charge_nominal"].Value) * bank.Series.Value;
            notes.Add($"For a new box, rested at half charge: {SheetWords.Volts(rested)} V at the bank with nothing on. When your rested bank reads otherwise, add the difference to every voltage that is told as so much below the bank; the millivolts stay, and so does what comes out of a converter.");
        }

        notes.Add(bench.Words);
        notes.Add($"Dead means below {SheetWords.Volts(deadBelow)} V into a resistor of {Quantities.QuantityText.WithPrefix(bench.Library.Assumptions["test_burden"].Value, "Ω")} across the probes; a meter alone shows what leaks through a diode or the like.");
        notes.Add("Millivolts below the bank are those lost on the way out and back together; below zero the point is above the bank, as while it charges.");
        return notes;
    }

    private static IReadOnlyList<string> Row(BenchBox bench, string mode, ProbePair at, BenchBox.Band volts, Cells? bank)
    {
        BenchBox.Band? lost = bank is null || at.Part == bank.Id ? null : bench.In(mode, (wiring, point) => Lost(wiring, point, new ProbePair(bank.Id, "+", "-"), at));
        bool tells = lost is not null && Math.Abs(lost.Expected) < volts.Expected / 2;
        return
        [
            mode, at.Red, at.Black,
            SheetWords.Volts(volts.Expected),
            SheetWords.Volts(Math.Floor(volts.Lowest * 100) / 100),
            SheetWords.Volts(Math.Ceiling(volts.Highest * 100) / 100),
            tells ? SheetWords.Millivolts(lost!.Expected) : "",
            tells && lost!.Expected > 0 ? SheetWords.Millivolts(lost.Highest) : "",
            "",
        ];
    }

    /// <summary>What is lost between the bank and a point, V; null where a converter or the air lies between, so that it means nothing.</summary>
    private static double? Lost(BoxWiring wiring, OperatingPoint point, ProbePair bank, ProbePair at) =>
        point.Solution.Island(wiring.Node(bank.Part, "+")) == point.Solution.Island(wiring.NodeUnderProbe(at.Part, at.Plus))
            ? bank.Volts(wiring, point) - at.Volts(wiring, point)
            : null;
}
