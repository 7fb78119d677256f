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
            List<(string Plus, string Minus)> dead = [];
            foreach ((string part, string plus, string minus) in Points(pack))
            {
                if (VoltsAt(bench, mode.Id, (part, plus, minus)) is not { } volts)
                {
                    continue;
                }

                if (Math.Max(Math.Abs(volts.Lowest), Math.Abs(volts.Highest)) < deadBelow)
                {
                    dead.Add(($"{part}.{plus}", $"{part}.{minus}"));
                }
                else
                {
                    rows.Add(Row(bench, mode.Id, (part, plus, minus), volts, bank));
                }
            }

            if (dead.Count > 0)
            {
                rows.Add([mode.Id, string.Join(", ", dead.Select(d => d.Plus)), string.Join(", ", dead.Select(d => d.Minus)), Dead, "", SheetWords.Volts(deadBelow), "", "", ""]);
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
            notes.Add($"For a new box, rested at half charge: {SheetWords.Volts(rested)} V at the bank with nothing on. When your rested bank reads otherwise, add the difference to every voltage; the millivolts stay.");
        }

        notes.Add(bench.Words);
        notes.Add($"Dead means below {SheetWords.Volts(deadBelow)} V into a resistor across the probes; a meter alone shows stray volts.");
        notes.Add("Millivolts below the bank are those lost on the way out and back together; below zero the point is above the bank, as while it charges.");
        return notes;
    }

    private static double Between(BoxWiring wiring, OperatingPoint point, string part, string plus, string minus)
    {
        int above = wiring.Node(part, plus);
        int below = wiring.Node(part, minus);
        return point.Solution.Island(above) == point.Solution.Island(below) ? point.Volts(above, below) : 0;
    }

    private static BenchBox.Band? VoltsAt(BenchBox bench, string mode, (string Part, string Plus, string Minus) at) =>
        bench.In(mode, (wiring, point) => Between(wiring, point, at.Part, at.Plus, at.Minus));

    private static IReadOnlyList<string> Row(
        BenchBox bench, string mode, (string Part, string Plus, string Minus) at, BenchBox.Band volts, Cells? bank)
    {
        // Behind a converter, or at what the charger alone feeds, a difference to the bank means nothing.
        BenchBox.Band? lost = bank is null || at.Plus.StartsWith("out", StringComparison.Ordinal) || at.Part == bank.Id ? null : bench.In(mode, (wiring, point) =>
            Between(wiring, point, bank.Id, "+", "-") - Between(wiring, point, at.Part, at.Plus, at.Minus));
        bool tells = lost is not null && Math.Abs(lost.Expected) < volts.Expected / 2;
        return
        [
            mode, $"{at.Part}.{at.Plus}", $"{at.Part}.{at.Minus}",
            SheetWords.Volts(volts.Expected),
            SheetWords.Volts(Math.Floor(volts.Lowest * 100) / 100),
            SheetWords.Volts(Math.Ceiling(volts.Highest * 100) / 100),
            tells ? SheetWords.Millivolts(lost!.Expected) : "",
            tells && lost!.Expected > 0 ? SheetWords.Millivolts(lost.Highest) : "",
            "",
        ];
    }

    private static bool IsOutput(TerminalReference end, Part part) => end.PartId == part.Id && end.Terminal == "out+";

    /// <summary>Pairs of terminals between which a voltage is worth reading.</summary>
    private static IEnumerable<(string Part, string Plus, string Minus)> Points(Pack pack)
    {
        foreach (Part part in pack.Parts)
        {
            switch (part)
            {
                case Cells or Port or Meter:
                    yield return (part.Id, "+", "-");
                    break;
                case Load { At: null }:
                    yield return (part.Id, "+", "-");
                    break;
                case Inverter:
                    yield return (part.Id, "in+", "in-");
                    break;
                case Converter:
                    yield return (part.Id, "in+", "in-");
                    if (pack.Conductors.Any(c => IsOutput(c.From, part) || IsOutput(c.To, part)))
                    {
                        yield return (part.Id, "out+", "out-");
                    }

                    break;
                case Relay:
                    yield return (part.Id, "86", "85");
                    break;
            }
        }
    }
}
