using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Gather;

namespace WireCheck.Sheets;

/// <summary>Millivolts over each wire and each of its joints at a test current.</summary>
internal static class JointMillivolts
{
    internal static Sheet Of(BenchBox bench, GatherContext context)
    {
        double redo = bench.Library.Assumptions["joint_redo"].Value;
        return new Sheet(
            "millivolts",
            "Millivolts over wires and joints",
            [
                "Send the test current through the wire from a bench supply with its current limit set, the box otherwise dead, and read with both probes on the metal of the terminals.",
                FormattableString.Invariant($"A joint that reads more than {redo:0.#} times what is expected of a new one is made anew ({Knowledge.StandingWords.For(bench.Library.Assumptions["joint_redo"].Source.Standing)})."),
                bench.Words,
            ],
            ["wire", "from", "to", "test current, A", "whole wire, mV", "accept from, mV", "to, mV", "joint at from, mV", "anew above, mV", "joint at to, mV", "anew above, mV", "read"],
            [.. context.Pack.Conductors.Select(c => Row(c, bench, context, redo))]);
    }

    private static IReadOnlyList<string> Row(Conductor wire, BenchBox bench, GatherContext context, double redo)
    {
        double amps = context.Data.Assumed("joint_test_current");
        amps = context.Ampacities.Amps(wire) >= amps ? amps : context.Data.Assumed("joint_test_current_small");
        double cold = context.Data.Assumed("cold_copper");
        double Joint(WiringData data, ConductorEnd end) => data.JointOhms(end, wire.Size.Value, aged: false);
        BenchBox.Band whole = bench.Of(wiring =>
        {
            Conductor built = (Conductor)wiring.Pack.Find(wire.Id)!;
            return amps * ((wiring.Data.OhmsPerMetre(built, cold) * built.Length.Value.Meters)
                + Joint(wiring.Data, built.FromEnd) + Joint(wiring.Data, built.ToEnd));
        });
        double from = amps * Joint(context.Data, wire.FromEnd);
        double to = amps * Joint(context.Data, wire.ToEnd);
        return
        [
            wire.Id, wire.From.ToString(), wire.To.ToString(),
            Quantities.QuantityText.Plain(amps, 3),
            SheetWords.Millivolts(whole.Expected), SheetWords.Millivolts(whole.Lowest), SheetWords.Millivolts(whole.Highest),
            SheetWords.Millivolts(from), SheetWords.Millivolts(redo * from),
            SheetWords.Millivolts(to), SheetWords.Millivolts(redo * to),
            "",
        ];
    }
}
