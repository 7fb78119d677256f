using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;
using WireCheck.Heat;
using WireCheck.Knowledge;
using WireCheck.Numbers;
using WireCheck.States;
using WireCheck.Tests.Facts.Gather;

namespace WireCheck.Tests.States;

/// <summary>Circuit and heat settled together: nothing is lost on the way, and the examples as worked by hand.</summary>
public sealed class HeatedBoxTests
{
    private static readonly string[] Examples = ["market-stall-12v", "pump-house-24v", "bicycle-workshop-48v", "first-draft-12v"];

    public static TheoryData<string> Names => [.. Examples];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_the_parts_make_leaves_by_walls_and_openings(string name)
    {
        SolvedBox box = Example(name);
        EnclosureBalance walls = new(box.Pack.Surroundings.Enclosure!, Library.Embedded);
        HeatedBox heated = HeatedBox.Solve(box, new StateSolver(box.Wiring));

        heated.Modes.Count.ShouldBe(box.Modes.Count(m => m.Steady));
        foreach (HeatedMode mode in heated.Modes)
        {
            mode.PartWatts.Sum().ShouldBe(mode.InsideWatts, 1e-12 + (1e-9 * mode.InsideWatts));
            walls.WattsLost(mode.InsideCelsius, mode.AmbientCelsius).ShouldBe(mode.InsideWatts, 1e-9 * mode.InsideWatts, mode.ToString());
            mode.Rounds.ShouldBeLessThan(8);
        }
    }

    [Fact]
    public void What_leaves_the_bank_is_heat_in_the_box_and_the_load()
    {
        SolvedBox box = PackNumbers.Solve("box.yaml", GatheredBox.Plain).Box!;
        HeatedMode mode = HeatedBox.Solve(box, new StateSolver(box.Wiring)).In(Modes.Everything)!;
        WiredBank bank = box.Wiring.Of<WiredBank>().Single();

        double given = -bank.CellElements.Sum(c => mode.Point.Solution.Power(c));
        double inside = box.Wiring.Parts.Select((p, i) => p is WiredBank ? 0 : mode.PartWatts[i]).Sum()
            + bank.LinkElements.Sum(l => mode.Point.Solution.Power(l));
        double load = box.Wiring.Of<WiredLoad>().Sum(l => l.Elements.Sum((Element e) => mode.Point.Solution.Power(e)));

        (inside + load).ShouldBe(given, 1e-9 * given);
    }

    [Theory]
    [InlineData("market-stall-12v", Modes.Everything, 46.6, 53.6)]
    [InlineData("market-stall-12v", "trading", 6.1, 38.2)]
    [InlineData("market-stall-12v", "charging-mains", 5.6, 38.0)]
    [InlineData("pump-house-24v", Modes.Everything, 20.0, 39.6)]
    [InlineData("bicycle-workshop-48v", Modes.Everything, 44.2, 47.6)]
    public void The_examples_are_as_warm_as_by_hand(string name, string mode, double watts, double celsius)
    {
        // Stall, everything: 4 cells of 1.5 × 1 mΩ at 60 A make 22 W, BMS 3.4, telephones' supply 2.9, relays 2.3, shunt 2.7, main fuse with its
        // holder 2.8, nine metres of wire 7, contacts 3: 47 W. Walls of 3 mm plastic, 0.40 m² of sides and 0.16 m² of top, give 2.3 W/K by a film of
        // 6 W/(m² K) inside and 9 outside, the openings 0.3: 18 K over 35 °C. Bands: watts 10 %, degrees 2 K.
        SolvedBox box = Example(name);
        HeatedMode heated = HeatedBox.Solve(box, new StateSolver(box.Wiring)).In(mode)!;

        heated.InsideWatts.ShouldBe(watts, 0.1 * watts);
        heated.InsideCelsius.ShouldBe(celsius, 2);
        (heated.SimpleInsideCelsius - heated.AmbientCelsius).ShouldBe(heated.InsideCelsius - heated.AmbientCelsius, 0.35 * (celsius - 30));
    }

    [Theory]
    [InlineData("market-stall-12v", 63.2)]
    [InlineData("pump-house-24v", 46.0)]
    [InlineData("bicycle-workshop-48v", 53.2)]
    [InlineData("first-draft-12v", 129)]
    public void The_hottest_conductor_of_each_example_is_as_by_hand(string name, double celsius)
    {
        // Stall, trunk of 4 AWG: 58.5² A² × 0.972 mΩ/m at 63 °C = 3.3 W/m. Its skin of π × 8.3 mm gives 6.1 W/(m² K) by radiation and 7.6 by air,
        // 0.36 W/(K m): 9 K, and 0.8 K through the insulation, over 53.6 °C. Draft, w9 of 12 AWG at 50.7 A: 5.21 mΩ/m × 1.43 × 2570 A² =
        // 19 W/m; a skin of π × 4 mm gives 25 W/(m² K), 0.31 W/(K m): 62 K, and 9 K through the insulation, over 58 °C. Band: 5 %.
        HeatNumbers.Of(Example(name)).Conductors[0].Celsius.ShouldBe(celsius, 0.05 * celsius);
    }

    [Fact]
    public void Joints_are_ranked_by_their_heat_and_drop_ohms_times_the_test_current()
    {
        HeatNumbers heat = HeatNumbers.Of(Example("market-stall-12v"));

        heat.Joints.Zip(heat.Joints.Skip(1)).ShouldAllBe(pair => pair.First.Watts >= pair.Second.Watts);
        foreach (JointNumbers joint in heat.Joints.Where(j => j.Amps > 0.1))
        {
            (joint.AgedVolts / joint.TestAmps * joint.Amps * joint.Amps).ShouldBe(joint.Watts, 1e-9 * joint.Watts);
            joint.AgedVolts.ShouldBeGreaterThanOrEqualTo(joint.NewVolts);
        }

        // 4 AWG at bank.-: 12 mm of 0.83 mΩ/m and 15 µΩ are 25 µΩ: 0.25 mV at 10 A when new.
        heat.Joints.First(j => j.Part == "w6" && j.Where.EndsWith("bank.-", StringComparison.Ordinal)).NewVolts.ShouldBe(0.25e-3, 0.01e-3);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Joints_make_the_heat_that_the_warm_box_counts(string name)
    {
        SolvedBox box = Example(name);
        HeatNumbers heat = HeatNumbers.Of(box);
        HeatedBox heated = HeatedBox.Solve(box, new StateSolver(box.Wiring));
        WiredConductor[] wires = [.. box.Wiring.Of<WiredConductor>()];
        for (int i = 0; i < wires.Length; i++)
        {
            JointNumbers[] ends = [.. heat.Joints.Where(j => j.Part == wires[i].Conductor.Id)];
            HeatedMode mode = heated.In(ends[0].Mode).ShouldNotBeNull();
            double amps = mode.ConductorAmps[i];
            double metal = amps * amps * box.Wiring.Data.OhmsPerMetre(wires[i].Conductor, mode.ConductorCelsius[i]) * wires[i].Conductor.Length.Value.Meters;
            int part = box.Wiring.Parts.ToList().IndexOf(wires[i]);

            // Where nothing pauses, metal and joints make what the loop counts for the conductor; copper within 2 K of the air counts as warm as the air.
            ends.ShouldAllBe(e => e.Amps == amps);
            if (amps == Math.Abs(mode.Point.Amps(wires[i].Element)) && mode.PartWatts[part] > 0)
            {
                (metal + ends.Sum(e => e.Watts)).ShouldBe(mode.PartWatts[part], 0.02 * mode.PartWatts[part], wires[i].Conductor.Id);
            }

            ends.ShouldAllBe(e => e.Celsius >= mode.ConductorCelsius[i]);
        }
    }

    [Fact]
    public void A_load_that_warm_wires_no_longer_serve_still_tells_how_hot_they_became()
    {
        // 180 W at 9.4 V over 3 m of 20 AWG: cold it runs, warm no voltage serves it. At 20 A and more a thin wire is beyond any PVC.
        SolvedBox box = PackNumbers.Solve("box.yaml", """
            pack: Long thin lead
            language: 1
            surroundings:
              ambient: {from: 5 °C, to: 35 °C}
              enclosure: {walls: plastic, inside: 400 x 300 x 200 mm, vents: passive, vent_area: 40 cm²}
            defaults:
              conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}
            cells:
              bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, links: {section: 20 x 2 mm, length: 70 mm}}
            fuses:
              main: {part: class-t, rating: 30 A}
            ports:
              out: {part: barrel-5-5-2-5}
            loads:
              heater: {at: out, power: 180 W}
            conductors:
              w1: {from: bank.+, to: main.1, size: 10 AWG, length: 600 mm}
              w2: {from: main.2, to: out.+, size: 20 AWG, length: 1500 mm}
              w3: {from: out.-, to: bank.-, size: 20 AWG, length: 1500 mm}
            modes:
              heating: {draws: {heater: 180 W}, for: 2 h}
            """).Box!;
        HeatedMode heating = HeatedBox.Solve(box, new StateSolver(box.Wiring)).In("heating")!;
        WiredConductor[] wires = [.. box.Wiring.Of<WiredConductor>()];
        int thin = Array.FindIndex(wires, w => w.Conductor.Id == "w2");

        heating.Point.Amps(wires[thin].Element).ShouldBeGreaterThan(18);
        heating.ConductorCelsius[thin].ShouldBeGreaterThan(105);
        heating.InsideWatts.ShouldBeGreaterThan(30);
    }

    [Fact]
    public void A_named_mode_stands_alone()
    {
        HeatNumbers.Of(Example("market-stall-12v"), "trading").Modes.Single().Mode.ShouldBe("trading");
    }

    [Fact]
    public void A_wire_is_judged_by_the_largest_current_of_any_corner_where_its_load_collapses_at_the_aged_one()
    {
        // From some power on the aged joints and the empty bank no longer bring it: there the load falls to its cut-off and the wire cools,
        // while the fresh and full box still drives the whole current through it. The rise goes as the square of the largest current,
        // a quarter less for the air that takes more from a hotter wire.
        double perSquare = 0;
        bool collapsed = false;
        for (int watts = 150; watts <= 300; watts += 10)
        {
            SolvedBox box = PackNumbers.Solve("box.yaml", LongLead(watts)).Box!;
            HeatedMode mode = HeatedBox.Solve(box, new StateSolver(box.Wiring)).In(Modes.Everything)!;
            WiredConductor[] wires = [.. box.Wiring.Of<WiredConductor>()];
            int lead = Array.FindIndex(wires, w => w.Part.Id == "w3");
            double largest = box.Points.Where(p => p.Mode.Id == Modes.Everything).Max(p => Math.Abs(p.Amps(wires[lead].Element)));
            double rise = mode.PeakCelsius[lead] - mode.InsideCelsius;

            collapsed |= mode.ConductorAmps[lead] < 0.8 * largest;
            perSquare = perSquare == 0 ? rise / (largest * largest) : perSquare;
            rise.ShouldBeGreaterThan(0.75 * perSquare * largest * largest, $"{watts} W");
            mode.PeakCelsius[lead].ShouldBeGreaterThanOrEqualTo(mode.ConductorCelsius[lead]);
        }

        collapsed.ShouldBeTrue("else nothing was tested");
    }

    private static string LongLead(int watts) => GatheredBox.Plain
        .Replace("current: 10 A, window: 10 .. 15 V", FormattableString.Invariant($"power: {watts} W, window: 6 .. 15 V"), StringComparison.Ordinal)
        .Replace("to: lamp.+, size: 10 AWG, length: 500 mm", "to: lamp.+, size: 14 AWG, length: 8.6 m", StringComparison.Ordinal)
        .Replace("from: lamp.-, to: bank.-, size: 10 AWG, length: 500 mm", "from: lamp.-, to: bank.-, size: 14 AWG, length: 8.6 m", StringComparison.Ordinal);

    private static SolvedBox Example(string name) =>
        PackNumbers.Solve(name, File.ReadAllText(Path.Combine(Golden.Root, "examples", name + ".yaml"))).Box!;
}
