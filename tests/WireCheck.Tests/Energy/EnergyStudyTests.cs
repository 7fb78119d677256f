using WireCheck.Energy;
using WireCheck.Facts.Gather;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Tests.Energy;

/// <summary>Runtimes as laws ask for them, and the examples as worked by hand.</summary>
public sealed class EnergyStudyTests
{
    private static readonly string[] Examples = ["market-stall-12v", "pump-house-24v", "bicycle-workshop-48v", "first-draft-12v"];

    private static readonly string[] Capacities = ["80 Ah", "100 Ah", "101 Ah", "140 Ah"];

    private static readonly string[] Lengths = ["0.1 m", "0.5 m", "1 m", "2 m", "4 m", "8 m"];

    public static TheoryData<string> Names => [.. Examples];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_cells_and_sources_give_is_used_or_lost(string name)
    {
        SolvedBox box = Example(name);
        EnergyStudy study = new GatherContext(box).Energy;
        foreach (BoxMode mode in box.Modes.Where(m => !m.Added))
        {
            ModeRun run = study.Run(mode, study.FreshAndWarm)!;
            PowerSplit energy = run.Energy.ShouldNotBeNull();

            double given = energy.Given.Sum();
            (energy.Used.Sum() + energy.Lost.Sum()).ShouldBe(given, 1e-6 * energy.Given.Sum(Math.Abs), $"{name} {mode.Id}");
            energy.Lost.Min().ShouldBeGreaterThan(-1e-6 * Math.Abs(energy.Given.Sum(Math.Abs)));
            run.Solves.ShouldBeLessThan(70, $"{name} {mode.Id}");
        }
    }

    // By hand, aged and cold, of 100 Ah: 80 % counted on, at 5 °C 84 % of it (80 % at 0 °C, 100 % at 25 °C): 67.2 Ah, of which
    // 1 to 4 % stay when the first cut-off trips. Trading: coolbox 0.3 × 45 W, till 40 W, telephones 20 W / 0.87, idle inverter
    // 7.7 W, two coils 1.3 W: 85.6 W at 13 V are 6.6 A, 10.1 h. Boiling: 450 W / 0.87 and 52 W are 570 W at 12.6 V, 45 A, 1.45 h.
    // Bicycle workshop: 50 × 0.8 × 0.84 = 33.6 Ah; 250 W / 0.85 and 15 W are 309 W at 52.3 V, 5.9 A, 5.6 h.
    // Pump house: at -5 °C 77.5 % of 80 Ah are 62 Ah; 90 W / 0.85, 10 W, 8.6 W idle and coils are 126 W at 26 V, 4.85 A, 12.7 h.
    [Theory]
    [InlineData("market-stall-12v", "trading", 10.0, "till")]
    [InlineData("market-stall-12v", "boiling", 1.43, "till")]
    [InlineData("bicycle-workshop-48v", "charging-bicycles", 5.6, "inverter")]
    [InlineData("pump-house-24v", "mending", 12.7, "inverter")]
    public void The_examples_run_as_long_as_worked_by_hand(string name, string mode, double hours, string endedBy)
    {
        SolvedBox box = Example(name);
        EnergyStudy study = new GatherContext(box).Energy;
        ModeRun run = study.Run(box.Modes.Single(m => m.Id == mode), study.AgedAndCold)!;

        (run.Seconds / 3600).ShouldBe(hours, 0.04 * hours);
        run.End.PartId.ShouldBe(endedBy);
        run.EndCharge.ShouldBeInRange(0.005, 0.04);
    }

    // 100 Ah × 0.9 over 10 A × 0.995 are 9.05 h, and the last hundredth takes its time. With nothing on, the master closed, the
    // box itself takes 0.7 A of the 10: 9.7 h.
    [Theory]
    [InlineData("overnight", 9.1)]
    [InlineData("charging-mains", 9.8)]
    public void A_charge_takes_what_is_missing_over_the_current_that_is_left(string mode, double hours)
    {
        SolvedBox box = Example("market-stall-12v");
        EnergyStudy study = new GatherContext(box).Energy;
        ModeRun run = study.Run(box.Modes.Single(m => m.Id == mode), study.FreshAndWarm)!;

        run.Direction.ShouldBe(TrailDirection.Charging);
        (run.Seconds / 3600).ShouldBe(hours, 0.02 * hours);
        run.End.Kind.ShouldBe(RunEndKind.Tail);
    }

    [Fact]
    public void Days_are_the_runs_laid_end_to_end_and_a_night_at_the_charger_fills_the_bank()
    {
        SolvedBox box = Example("market-stall-12v");
        DayMarch days = new GatherContext(box).Energy.AgedDays.ShouldNotBeNull();

        days.RestMode.ShouldBe("overnight");
        days.FirstStop.ShouldBeNull();
        days.Steps[0].Before.ShouldBe(1);
        for (int i = 1; i < days.Steps.Count; i++)
        {
            days.Steps[i].Before.ShouldBe(days.Steps[i - 1].After);
        }

        days.Steps.Where(s => s.Mode == "overnight").ShouldAllBe(s => s.After > 1);
        days.Steps.Where(s => s.Day == 1).Sum(s => s.Seconds).ShouldBe(Durations.SecondsPerDay, 1e-6);
    }

    [Fact]
    public void More_capacity_never_runs_shorter()
    {
        double[] hours = [.. Capacities
            .Select(c => Seconds(Box("capacity: " + c, "1 m", "100 %"), "heating"))];

        hours.ShouldBe([.. hours.Order()]);
        (hours[3] / hours[1]).ShouldBe(1.4, 1e-9);
    }

    [Fact]
    public void Longer_wires_never_lengthen_the_run_of_a_constant_power()
    {
        double[] seconds = [.. Lengths
            .Select(l => Seconds(Box("capacity: 100 Ah", l, "100 %"), "heating"))];

        seconds.ShouldBe([.. seconds.OrderDescending()]);
    }

    [Fact]
    public void A_duty_lengthens_the_run_and_leaves_the_cut_off_to_the_peak()
    {
        ModeRun always = Run(Box("capacity: 100 Ah", "1 m", "100 %"), "heating");
        ModeRun half = Run(Box("capacity: 100 Ah", "1 m", "50 %"), "heating");

        (half.Seconds / always.Seconds).ShouldBeInRange(1.99, 2.05);
        half.EndCharge.ShouldBe(always.EndCharge);
    }

    [Fact]
    public void Cold_and_aged_cells_never_run_longer_than_fresh_warm_ones()
    {
        foreach (string name in Examples)
        {
            SolvedBox box = Example(name);
            EnergyStudy study = new GatherContext(box).Energy;
            foreach (BoxMode mode in box.Modes.Where(m => !m.Added))
            {
                ModeRun fresh = study.Run(mode, study.FreshAndWarm)!;
                ModeRun aged = study.Run(mode, study.AgedAndCold)!;
                aged.Seconds.ShouldBeLessThan(fresh.Seconds, $"{name} {mode.Id}");
            }
        }
    }

    private static double Seconds(string text, string mode) => Run(text, mode).Seconds;

    private static ModeRun Run(string text, string mode)
    {
        SolvedBox box = PackNumbers.Solve("box.yaml", text).Box.ShouldNotBeNull();
        EnergyStudy study = new GatherContext(box).Energy;
        return study.Run(box.Modes.Single(m => m.Id == mode), study.AgedAndCold).ShouldNotBeNull();
    }

    private static string Box(string capacity, string length, string duty) => $$"""
        pack: A bank and a load
        language: 1
        surroundings: {ambient: {from: 10 °C, to: 30 °C} }
        defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring} }
        cells:
          bank: {part: lfp-prismatic-100ah, {{capacity}}, series: 4, parallel: 1, links: {section: 20 x 2 mm, length: 70 mm} }
        loads:
          heater: {power: 200 W, window: 10.5 .. 15 V, duty: {{duty}} }
        conductors:
          w1: {from: bank.+, to: heater.+, size: 6 AWG, length: {{length}} }
          w2: {from: heater.-, to: bank.-, size: 6 AWG, length: {{length}} }
        modes:
          heating: {draws: {heater: 200 W}, for: 1 h}
        """;

    private static SolvedBox Example(string name) =>
        PackNumbers.Solve(name, File.ReadAllText(Path.Combine(Golden.Root, "examples", name + ".yaml"))).Box.ShouldNotBeNull();
}
