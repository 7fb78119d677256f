using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Heat;
using WireCheck.Knowledge;
using WireCheck.Physics;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Tests.Heat;

/// <summary>What must hold of heat whatever the numbers: thicker is no hotter, more is no cooler, equal things are equally warm.</summary>
public sealed class HeatLawsTests
{
    private static readonly double[] Gauges = [24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3];

    private static readonly string[] Sizes = ["14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG", "4 AWG", "2 AWG", "2/0 AWG"];

    private static readonly double[] Currents = [0, 0.1, 1, 3, 10, 20, 30, 45, 60, 100, 200];

    private static readonly string[] Powers = ["10 W", "50 W", "120 W", "250 W", "400 W"];

    private static readonly double[] Scales = [1, 1.1, 1.5, 2, 4];

    public static TheoryData<string> Walls => [.. Library.Embedded.Walls.Names];

    [Fact]
    public void A_thicker_wire_never_runs_hotter_and_more_current_never_cooler()
    {
        foreach (double amps in Currents)
        {
            double[] celsius = [.. Gauges.Select(g => Alone(g, amps))];
            celsius.ShouldBe([.. celsius.OrderDescending()], $"{amps} A");
        }

        foreach (double gauge in Gauges)
        {
            double[] celsius = [.. Currents.Select(a => Alone(gauge, a))];
            celsius.ShouldBe([.. celsius.Order()], $"{gauge} AWG");
        }
    }

    [Fact]
    public void In_a_box_a_thicker_wire_is_no_hotter_and_leaves_the_air_no_hotter()
    {
        HeatedMode[] modes = [.. Sizes.Select(s => Heat(Box(s, "300 W")))];
        double[] wire = [.. modes.Select(m => m.ConductorCelsius[0])];
        double[] air = [.. modes.Select(m => m.InsideCelsius)];
        wire.ShouldBe([.. wire.OrderDescending()]);
        air.ShouldBe([.. air.OrderDescending()]);
    }

    [Fact]
    public void In_a_box_more_power_is_no_cooler()
    {
        HeatedMode[] modes = [.. Powers.Select(p => Heat(Box("8 AWG", p)))];
        double[] wire = [.. modes.Select(m => m.ConductorCelsius[0])];
        double[] air = [.. modes.Select(m => m.InsideCelsius)];
        wire.ShouldBe([.. wire.Order()]);
        air.ShouldBe([.. air.Order()]);
    }

    [Theory]
    [MemberData(nameof(Walls))]
    public void A_bigger_box_is_never_hotter_inside(string walls)
    {
        foreach (EnclosurePlacing placing in Enum.GetValues<EnclosurePlacing>())
        {
            foreach (double watts in new[] { 1.0, 25, 200 })
            {
                double[] inside = [.. Scales.Select(by => EnclosureBalanceTests
                    .Box(walls, 300 * by, 200 * by, 150 * by, vents: "passive", openings: 20, placing: placing).InsideCelsius(watts, 30))];
                inside.ShouldBe([.. inside.OrderDescending()], $"{placing} {watts} W");
            }
        }
    }

    [Fact]
    public void Two_equal_branches_side_by_side_share_and_warm_alike_and_their_order_does_not_matter()
    {
        const string First = "{from: bank.+, to: heater.+, size: 10 AWG, length: 500 mm}";
        string text = Box("10 AWG", "300 W");
        HeatedMode two = Heat(text.Replace("w2:", "w1b: " + First + "\n  w2:", StringComparison.Ordinal));
        two.ConductorAmps[0].ShouldBe(two.ConductorAmps[1], 1e-9);
        two.ConductorCelsius[0].ShouldBe(two.ConductorCelsius[1], 1e-9);

        HeatedMode swapped = Heat(text.Replace("w1: ", "w1b: " + First + "\n  w1: ", StringComparison.Ordinal));
        swapped.ConductorCelsius[0].ShouldBe(two.ConductorCelsius[0], 1e-9);
        swapped.InsideCelsius.ShouldBe(two.InsideCelsius, 1e-9);

        // Half the current each: cooler than the one that carries all.
        two.ConductorCelsius[0].ShouldBeLessThan(Heat(text).ConductorCelsius[0]);
    }

    private static double Alone(double gauge, double amps)
    {
        ConductorSize size = new(SizeSystem.Awg, gauge);
        ConductorTable table = Library.Embedded.Conductors;
        Material copper = Library.Embedded.Materials["copper"];
        double layer = Conduction.CylindricalLayer(5, table.Wall(size), table.ConductorDiameter(size));
        WiresInAir wire = new([new WireCore(table.OhmsPerMetre(size, copper, 20), copper.Zero, layer)], table.OuterDiameter(size), 0.92);
        double[] celsius = new double[1];
        wire.Settle([amps], 30, celsius);
        return celsius[0];
    }

    private static HeatedMode Heat(string text)
    {
        SolvedBox box = PackNumbers.Solve("box.yaml", text).Box.ShouldNotBeNull();
        return HeatedBox.Solve(box, new StateSolver(box.Wiring)).In(Modes.Everything).ShouldNotBeNull();
    }

    private static string Box(string size, string power) => $$"""
        pack: A bank and a load in a box
        language: 1
        surroundings:
          ambient: {from: 20 °C, to: 30 °C}
          enclosure: {walls: plastic, inside: 400 x 300 x 200 mm, vents: none}
        defaults:
          conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, links: {section: 20 x 2 mm, length: 70 mm} }
        loads:
          heater: {power: {{power}}, window: 8 .. 15 V}
        conductors:
          w1: {from: bank.+, to: heater.+, size: {{size}}, length: 500 mm}
          w2: {from: heater.-, to: bank.-, size: {{size}}, length: 500 mm}
        """;
}
