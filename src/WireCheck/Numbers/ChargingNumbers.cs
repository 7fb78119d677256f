using WireCheck.Charging;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Numbers;

/// <summary>How a box is charged and what flows back, as tables.</summary>
public sealed class ChargingNumbers
{
    /// <summary>Each source in each charging mode at each corner.</summary>
    public required IReadOnlyList<SourceNumbers> Sources { get; init; }

    /// <summary>Where each charging mode ends.</summary>
    public required IReadOnlyList<EndNumbers> Ends { get; init; }

    /// <summary>Every load while something charges.</summary>
    public required IReadOnlyList<LoadNumbers> Loads { get; init; }

    /// <summary>The curves of vehicles that feed a bank by wire alone.</summary>
    public required IReadOnlyList<VehicleNumbers> Vehicles { get; init; }

    /// <summary>Panels in the dark, chargers without power.</summary>
    public required IReadOnlyList<NightNumbers> Nights { get; init; }

    /// <summary>Panels in frost.</summary>
    public required IReadOnlyList<ColdNumbers> Cold { get; init; }

    /// <summary>Each charging mode with the BMS open.</summary>
    public required IReadOnlyList<BmsOpenNumbers> BmsOpen { get; init; }

    /// <summary>Each source on a port, the wrong way round.</summary>
    public required IReadOnlyList<ReversedNumbers> Reversed { get; init; }

    /// <summary>Each port that takes charge, empty.</summary>
    public required IReadOnlyList<ShortNumbers> Shorts { get; init; }

    /// <summary>Strings at the moment of joining.</summary>
    public required IReadOnlyList<JoinNumbers> Joins { get; init; }

    /// <summary>The tables of a box.</summary>
    public static ChargingNumbers Of(SolvedBox box)
    {
        ChargingStudy study = new(box, WiringGraph.Of(box.Wiring));
        return new ChargingNumbers
        {
            Sources = [.. study.Points.SelectMany(RowsOf)],
            Ends = [.. study.Ends.SelectMany(e => e.Banks.Select(b => new EndNumbers(
                e.Mode.Id, e.Point.Corner.Words, b.Id, e.TailAmps, b.Volts, b.CellVolts)))],
            Loads = ChargedLoads.Of(box),
            Vehicles = [.. study.Vehicles.SelectMany(c => c.Points.Select(p => new VehicleNumbers(
                c.VehicleId, c.BankId, p.EngineRuns, p.StateOfCharge, p.Amps, p.BankVolts, p.CellAmps, p == c.Peak)))],
            Nights = [.. study.Nights.Select(OfNight), .. LeftPlugged(box)],
            Cold = [.. study.ColdPanels.Select(c => new ColdNumbers(c.Id, c.Volts, c.ColdVolts, c.Celsius, c.RisePerKelvin))],
            BmsOpen = [.. study.WithBmsOpen.Select(o => new BmsOpenNumbers(o.Mode.Id, o.CellAmps, o.SourceVolts))],
            Reversed = [.. study.Reversed.Select(r => new ReversedNumbers(
                r.PortId, r.SourceId, r.Keyed, r.Amps, r.Opens, r.LeftAmps, r.Reversed, r.Undecided))],
            Shorts = [.. study.Shorts.Select(p => new ShortNumbers(p.PortId, p.OpenVolts, p.Amps))],
            Joins = [.. study.Joins.Select(j => new JoinNumbers(j.BankId, j.OtherIds, j.DifferenceVolts, j.Amps, j.FullOntoEmptyAmps))],
        };
    }

    private static IEnumerable<SourceNumbers> RowsOf(ChargePoint charge)
    {
        if (charge.Banks.MaxBy(b => b.Amps) is not { } bank)
        {
            yield break;
        }

        foreach (SourceCharge source in charge.Sources)
        {
            yield return new SourceNumbers(
                charge.Point.Mode.Id, charge.Point.Corner.Words, source.Id, source.Amps, source.Volts, Words(source.Limit),
                bank.Id, bank.Amps, bank.Volts, bank.CellAmps, bank.CellVolts);
        }
    }

    private static string Words(ChargeLimit limit) => limit switch
    {
        ChargeLimit.Current => "its current limit",
        ChargeLimit.Input => "its input",
        ChargeLimit.Voltage => "its voltage",
        ChargeLimit.Resistance => "resistance of the way",
        ChargeLimit.Panel => "the panel's curve",
        _ => "gives nothing",
    };

    private static NightNumbers OfNight(NightDraw night) => new(
        night.PanelId, night.Amps,
        night.UndecidedBy is { } controller ? $"dark; whether {controller} blocks is not said"
            : !night.Reached && night.Amps > 0 ? "dark; what leaks backwards through the diode between"
            : !night.Reached ? "dark; the cells cannot drive it"
            : night.DarkKnown ? "dark" : "dark; its leakage is not described");

    private static IEnumerable<NightNumbers> LeftPlugged(SolvedBox box)
    {
        OperatingPoint[] points = [.. box.In(Modes.LeftPlugged).Where(p => p.Solution.Outcome == SolveOutcome.Solved)];
        return points.Length == 0
            ? []
            : box.Wiring.Of<WiredCharger>().Select(c => new NightNumbers(
                c.Part.Id, Math.Max(0, points.Max(p => p.Amps(c.Leakage))), "left plugged without power, own use counted"));
    }
}
