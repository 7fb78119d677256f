using WireCheck.Circuit.Solving;
using WireCheck.Outside.Tests.Circuit;
using WireCheck.States;
using Xunit.Abstractions;

namespace WireCheck.Outside.Tests.Charging;

/// <summary>Whole boxes while they are charged, solved here and by ngspice as Debian packages it.</summary>
public sealed class ChargingAgainstNgspiceTests(ITestOutputHelper output)
{
    /// <summary>
    /// A mains charger behind a diode, a panel by a controller, a bare panel and a vehicle on one bank. The controller is limited at its
    /// output: at the very top of a panel's curve two answers meet, and a simulator may take the other. A bleeder
    /// ties its input, which else hangs on the panel's curve alone and has no zero of its own in the simulator.
    /// </summary>
    private const string Box = """
        pack: Charged by everything
        language: 1
        surroundings: {ambient: {from: 0 °C, to: 35 °C}}
        defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, parallel: 2, links: {section: 20 x 2 mm, length: 70 mm}}
        bms:
          bms: {part: bms-4s-lfp-60a}
        fuses:
          f-in: {part: blade, rating: 30 A}
        diodes:
          blocker: {part: schottky-20a}
        resistors:
          bleeder: {resistance: 10 kΩ, power: 1 W}
        chargers:
          mains: {part: mains-14v6-10a}
          controller: {part: solar-controller-10a, current: 4 A}
        panels:
          roof: {part: panel-100w}
          tent: {part: panel-60w}
        vehicles:
          car: {part: vehicle-12v-outlet}
        conductors:
          w1: {from: mains.out+, to: blocker.A, size: 12 AWG, length: 300 mm}
          w2: {from: blocker.K, to: f-in.1, size: 12 AWG, length: 200 mm}
          w3: {from: f-in.2, to: bank.+, size: 12 AWG, length: 200 mm}
          w4: {from: mains.out-, to: bms.P-, size: 12 AWG, length: 400 mm}
          w5: {from: bms.B-, to: bank.-, size: 6 AWG, length: 100 mm}
          w6: {from: roof.+, to: controller.pv+, size: 12 AWG, length: 2 m}
          w7: {from: roof.-, to: controller.pv-, size: 12 AWG, length: 2 m}
          w8: {from: controller.out+, to: bank.+, size: 12 AWG, length: 300 mm}
          w9: {from: controller.out-, to: bms.P-, size: 12 AWG, length: 300 mm}
          w10: {from: tent.+, to: bank.+, size: 14 AWG, length: 5 m}
          w11: {from: tent.-, to: bms.P-, size: 14 AWG, length: 5 m}
          w12: {from: car.+, to: bank.+, size: 10 AWG, length: 3 m}
          w13: {from: car.-, to: bms.P-, size: 10 AWG, length: 3 m}
          w14: {from: roof.+, to: bleeder.1, size: 18 AWG, length: 100 mm}
          w15: {from: bleeder.2, to: roof.-, size: 18 AWG, length: 100 mm}
        """;

    [Fact]
    public void Every_way_of_charging_a_box_agrees_with_ngspice()
    {
        SolvedBox box = PackNumbers.Solve("charged.yaml", Box).Box.ShouldNotBeNull();
        Comparison all = new();
        int number = 0;
        foreach (BoxMode mode in box.Modes.Where(m => m.Id.StartsWith(Modes.ChargingPrefix, StringComparison.Ordinal)))
        {
            foreach (Corner corner in box.Corners)
            {
                // The network must stand in the state whose answer is compared when its deck is written.
                OperatingPoint point = new StateSolver(box.Wiring).Solve(mode, corner);
                point.Solution.Outcome.ShouldBe(SolveOutcome.Solved, $"{mode} {corner}");
                Comparison here = Ngspice.Compare([new GeneratedCircuit(number++, box.Wiring.Network, point.Solution)]);
                all.Circuits += here.Circuits;
                all.Refused += here.Refused;
                here.Worst.ShouldBeLessThan(1e-6, $"{mode} {corner}: {here.Where}");
            }
        }

        output.WriteLine(FormattableString.Invariant($"{all.Circuits} charging points, ngspice refused {all.Refused}"));
        all.Circuits.ShouldBeGreaterThanOrEqualTo(36);
    }
}
