using System.Globalization;
using System.Text.RegularExpressions;
using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;
using WireCheck.Energy;
using WireCheck.Facts.Gather;
using WireCheck.Knowledge;
using WireCheck.Outside.Tests.Circuit;
using WireCheck.States;

namespace WireCheck.Outside.Tests.Energy;

/// <summary>
/// Runtime of a constant-power load and time of a CC-CV charge against their integrals in closed form and a transient of
/// ngspice, in which a capacitor counts the charge. The cells' table of rested voltages is common to all three; what is
/// compared is the marching. Ends of a discharge are searched to a quarter of a thousandth of the bank.
/// </summary>
public sealed partial class RuntimeAgainstNgspiceTests
{
    private const double Tolerance = 1e-3;

    private const string Box = """
        pack: A bank, a load and a charger
        language: 1
        surroundings: {ambient: {from: 20 °C, to: 30 °C}}
        defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, resistance: 4 mΩ, resistance_ac: 4 mΩ, link_resistance: 0.2 mΩ}
        ports:
          inlet: {part: charge-inlet-shrouded}
        loads:
          heater: {power: 300 W, window: 10.9 .. 15 V}
        chargers:
          mains: {part: mains-14v6-10a, at: inlet}
        conductors:
          w1: {from: bank.+, to: heater.+, size: 6 AWG, length: 1 m}
          w2: {from: heater.-, to: bank.-, size: 6 AWG, length: 1 m}
          w3: {from: inlet.+, to: bank.+, size: 12 AWG, length: 2 m}
          w4: {from: inlet.-, to: bank.-, size: 12 AWG, length: 2 m}
        modes:
          heating: {draws: {heater: 300 W}, for: 1 h}
        """;

    [Fact]
    public void A_constant_power_runs_as_long_as_its_integral_and_ngspice_say()
    {
        SolvedBox box = PackNumbers.Solve("box.yaml", Box).Box!;
        EnergyStudy study = new GatherContext(box).Energy;
        ModeRun run = study.Run(box.Modes.Single(m => m.Id == "heating"), study.FreshAndWarm)!;
        run.End.Kind.ShouldBe(RunEndKind.LoadWindow);
        run.End.Volts.ShouldBe(10.9, 0.03);
        OperatingPoint point = PointOf(box, "heating");
        WiredLoad load = box.Wiring.Of<WiredLoad>().Single();
        double ohms = LoopOhms(box, point, point.Volts(load.PowerElement!.A, load.PowerElement.B), point.Amps(load.PowerElement));
        double coulombs = 100 * 3600 * 0.9; // 90 % counted on

        double seconds = coulombs * Pieces().Sum(p => Discharging(p, run.EndCharge, 300, ohms));
        double simulated = Simulated(coulombs, ohms, "ic=1", $"Bload l 0 I={Number(300)}/max(V(l),1)", "when v(l)=10.9 fall=1", 30000);

        run.Seconds.ShouldBe(seconds, 1e-4 * seconds);
        run.Seconds.ShouldBe(simulated, Tolerance * simulated);
    }

    [Fact]
    public void A_charge_at_constant_current_then_voltage_takes_as_long_as_its_integral_and_ngspice_say()
    {
        SolvedBox box = PackNumbers.Solve("box.yaml", Box).Box!;
        EnergyStudy study = new GatherContext(box).Energy;
        ModeRun run = study.Run(box.Modes.Single(m => m.Id == "charging-mains"), study.FreshAndWarm)!;
        run.End.Kind.ShouldBe(RunEndKind.Tail);
        ChargerOutput charger = box.Wiring.Of<WiredCharger>().Single().Output!;
        OperatingPoint point = PointOf(box, "charging-mains");
        double amps = -point.Amps(charger);
        amps.ShouldBe(10, 1e-6);
        double ohms = LoopOhms(box, point, point.Volts(charger.A, charger.B), -amps);

        // 90 % counted on, of what goes in 99.5 % is kept; the end is at 5 A.
        double coulombs = 100 * 3600 * 0.9 / 0.995;
        double turns = charger.Volts - (charger.SlopeOhms * 10) - (10 * ohms);
        double steep = 4 * (3.65 - 3.40) / (0.01 * coulombs);
        double constantCurrent = coulombs * (1 + (0.01 * (turns - 13.6) / 1.0)) / 10;
        double constantVoltage = Math.Log(10 / 5.0) * (ohms + charger.SlopeOhms) / steep;
        string source = $"Bload 0 l I=max(0, min(10, ({Number(charger.Volts)}-V(l))/{Number(charger.SlopeOhms)}))";
        double simulated = Simulated(coulombs, ohms, "ic=0", source, "when i(Vamps)=-5 rise=1", 45000);

        run.Seconds.ShouldBe(constantCurrent + constantVoltage, 1e-4 * run.Seconds);
        run.Seconds.ShouldBe(simulated, Tolerance * simulated);
    }

    /// <summary>
    /// Time for a piece in which the voltage of the bank rises on a straight line over the charge, for each coulomb of the
    /// bank: ∫ ds / I with I = (E - √(E² - 4 R P)) / (2 R), so 1 / I = (E + √(E² - 4 R P)) / (2 P).
    /// </summary>
    private static double Discharging((double Low, double High, double LowVolts, double HighVolts) piece, double end, double watts, double ohms)
    {
        double low = Math.Max(end, piece.Low);
        if (low >= piece.High)
        {
            return 0;
        }

        double slope = (piece.HighVolts - piece.LowVolts) / (piece.High - piece.Low);
        double from = piece.LowVolts + (slope * (low - piece.Low));
        return (Primitive(piece.HighVolts) - Primitive(from)) / slope;

        double Primitive(double volts)
        {
            double squared = 4 * ohms * watts;
            double root = Math.Sqrt((volts * volts) - squared);
            return ((volts * volts / 2) + ((volts * root) - (squared * Math.Log(volts + root))) / 2) / (2 * watts);
        }
    }

    private static List<(double Low, double High, double LowVolts, double HighVolts)> Pieces()
    {
        IReadOnlyList<(double X, double Y)> table = Library.Embedded.Chemistries["lfp"].OpenCircuit.Points;
        return [.. table.Zip(table.Skip(1), (a, b) => (a.X / 100, b.X / 100, 4 * a.Y, 4 * b.Y))];
    }

    /// <summary>The mode half full, its wires as warm as they settle: the runs are reckoned with them so.</summary>
    private static OperatingPoint PointOf(SolvedBox box, string mode)
    {
        EnergyCondition fresh = EnergyCondition.FreshAndWarm(box);
        return fresh.Loop(new StateSolver(box.Wiring)).Settle(box.Modes.Single(m => m.Id == mode), fresh.Corner).ShouldNotBeNull().Point;
    }

    /// <summary>Everything between the cells' open-circuit voltage and a terminal, Ω.</summary>
    private static double LoopOhms(SolvedBox box, OperatingPoint point, double volts, double amps) =>
        ((4 * box.Wiring.Data.CellOpenCircuitVolts(box.Wiring.Of<WiredBank>().Single().Cells, 0.5)) - volts) / amps;

    /// <summary>When ngspice's capacitor, which holds the charge as a voltage from 0 to 1, has come to the end.</summary>
    private static double Simulated(double coulombs, double ohms, string start, string source, string end, double longest)
    {
        string table = string.Join(", ", Pieces().Select(p => $"{Number(p.Low)}, {Number(p.LowVolts)}"));
        string folder = Directory.CreateTempSubdirectory("wirecheck-runtime-").FullName;
        try
        {
            string file = Path.Combine(folder, "run.cir");
            File.WriteAllText(file, $"""
                * a bank that counts its charge
                C1 s 0 {Number(coulombs)} {start}
                Bcount s 0 I=I(Vamps)
                Bbank e 0 V=pwl(V(s), -0.01, 8, {table}, 1, 13.6, 1.01, 14.6)
                Vamps e f 0
                R1 f l {Number(ohms)}
                {source}
                .options reltol=1e-6
                .control
                set numdgt=12
                tran 5 {Number(longest)} 0 5 uic
                meas tran ended {end}
                quit
                .endc
                .end

                """);
            string answer = Simulator.Run("ngspice", "-b", file);
            Match match = Ended().Match(answer);
            match.Success.ShouldBeTrue(answer);
            return double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^ended\s+=\s+(\S+)", RegexOptions.Multiline)]
    private static partial Regex Ended();
}
