using WireCheck.Circuit.Wiring;
using WireCheck.Standby;
using WireCheck.States;

namespace WireCheck.Sheets;

/// <summary>What the new box draws with everything off, and by whom.</summary>
internal static class ExpectedStandby
{
    internal static Sheet Of(BenchBox bench)
    {
        double share = bench.Tolerances.Standby.Share;
        List<IReadOnlyList<string>> rows = [];
        foreach (string mode in new[] { Modes.Stored, Modes.LeftPlugged })
        {
            BenchBox.Band? total = bench.In(mode, (wiring, point) => Drains(wiring, point).Sum(d => d.Amps));
            if (total is null)
            {
                continue;
            }

            rows.Add(Row(mode, "all together, at the bank", total, share));
            foreach (string part in Consumers(bench, mode))
            {
                BenchBox.Band? one = bench.In(mode, (wiring, point) => Drains(wiring, point).Where(d => d.PartId == part).Sum(d => d.Amps));
                if (one is not null)
                {
                    rows.Add(Row(mode, part, one, share));
                }
            }
        }

        return new Sheet(
            "standby",
            "Current at rest",
            [
                "Read it with a meter in series with the main positive wire, on its ampere range first; wait a minute for capacitors to fill.",
                FormattableString.Invariant($"The band is solved at every end of the tolerances and widened by {share * 100:0.#} % for what each part draws at rest ({(bench.Tolerances.Standby.Source is { } source ? $"assumed, {Knowledge.StandingWords.For(source.Standing)}" : "declared")})."),
                "More than that: something stays on. Take out one fuse after the other and see which one ends it. Less: something that should be fed is not.",
            ],
            ["state", "who", "expect", "accept from", "to", "read"],
            rows);
    }

    private static IReadOnlyList<string> Row(string mode, string who, BenchBox.Band amps, double share) =>
    [
        mode, who, SheetWords.Amps(amps.Expected), SheetWords.Amps(amps.Lowest * (1 - share)), SheetWords.Amps(amps.Highest * (1 + share)), "",
    ];

    private static IReadOnlyList<Drain> Drains(BoxWiring wiring, OperatingPoint point) => DrainFinder.At(wiring, point);

    private static IEnumerable<string> Consumers(BenchBox bench, string mode)
    {
        List<string> ids = [];
        bench.In(mode, (wiring, point) =>
        {
            ids.AddRange(Drains(wiring, point).Select(d => d.PartId).Where(id => !ids.Contains(id)));
            return 0;
        });
        return ids;
    }
}
