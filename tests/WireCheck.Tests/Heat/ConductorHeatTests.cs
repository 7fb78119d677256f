using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Heat;
using WireCheck.Knowledge;
using WireCheck.Physics;

namespace WireCheck.Tests.Heat;

/// <summary>Which wires warm each other, in which air, and how warm a joint and a short spell make them.</summary>
public sealed class ConductorHeatTests
{
    private const double OhmsPerMetre = 5e-3;

    private const string Wires = """
          w1: {from: bank.+, to: heater.+, size: 10 AWG, length: 500 mm}
          w2: {from: heater.-, to: bank.-, size: 10 AWG, length: 500 mm, place: outside}
          t1: {from: bank.+, to: heater.+, size: 12 AWG, length: 500 mm, bundle: loom, place: outside}
          t2: {from: bank.+, to: heater.+, size: 12 AWG, length: 500 mm, bundle: loom}
          t3: {from: heater.-, to: bank.-, size: 10 AWG, length: 500 mm, bundle: loom, place: outside}
          o1: {from: bank.+, to: heater.+, size: 12 AWG, length: 500 mm, bundle: tail, place: outside}
          o2: {from: heater.-, to: bank.-, size: 12 AWG, length: 500 mm, bundle: tail, place: outside}
        """;

    private static readonly double[] Amps = [20, 20, 12, -8, 15, 14, 14];

    [Fact]
    public void A_wire_alone_is_settled_in_the_air_where_it_lies()
    {
        (Conductor[] wires, double[] celsius) = Settled();

        celsius[0].ShouldBe(Alone(wires[0], 20, 50), 1e-9);
        celsius[1].ShouldBe(Alone(wires[1], 20, 25), 1e-9);
    }

    [Fact]
    public void Tied_wires_are_one_body_with_the_circle_round_them_for_a_skin_in_the_air_of_the_box_when_one_of_them_is_in_it()
    {
        (Conductor[] wires, double[] celsius) = Settled();

        Tied(wires[2..5], [12, -8, 15], 50).ShouldBe(celsius[2..5], 1e-9);
        Tied(wires[5..7], [14, 14], 25).ShouldBe(celsius[5..7], 1e-9);
    }

    [Fact]
    public void The_shape_of_a_wire_by_hand()
    {
        WireShape shape = WireShape.Of(Parsed()[0], Library.Embedded);

        // 10 AWG: 5.261 mm² (ASTM B258), 3.45e6 J/(K m³) of copper: 18.15 J/(K m). By the law of Wiedemann and Franz 2.44e-8 × 293.15/1.7241e-8 =
        // 415 W/(m K) for copper, whose handbooks have 390 to 400: times the section 2.18e-3 W m/K.
        shape.Area.ShouldBe(5.261e-6, 1e-9);
        shape.MetalHeat.ShouldBe(18.15, 0.01);
        shape.Conductance.ShouldBe(414.9 * 5.261e-6, 2e-6);
    }

    [Fact]
    public void The_time_constant_of_a_wire_by_hand()
    {
        // A skin of 7 mm at 60 °C in 30 °C: 9.9 W/(m² K) by air and 6.5 by radiation, 16.40 together; 45.9 J/(K m) × (0.19 + 1/(π × 7 mm × 16.40)).
        WireShape wire = new(7e-3, 13.3e-6, 0.19, 0.92, 234.5, 45.9, 5.5e-3);

        wire.TimeConstant(60, 30).ShouldBe(135.97, 0.01);
    }

    [Fact]
    public void The_rise_of_a_joint_by_hand()
    {
        // 12 W/(m² K) × π × 7 mm = 0.2639 W/(K m); √(0.2639 × 5.5e-3) = 0.0381 W/K into a long wire, as much again into what it is bolted to.
        WireShape wire = new(7e-3, 13.3e-6, 0.19, 0.92, 234.5, 45.9, 5.5e-3);

        JointRise.Kelvin(1, wire, 10, 12).ShouldBe(1 / (2 * 0.03810), 0.01);
        JointRise.Kelvin(2, wire, 10, 12).ShouldBe(2 * JointRise.Kelvin(1, wire, 10, 12), 1e-9);
        JointRise.Kelvin(1, wire, 0.05, 12).ShouldBeGreaterThan(JointRise.Kelvin(1, wire, 0.1, 12));
    }

    private static double Alone(Conductor wire, double amps, double air)
    {
        WireShape shape = WireShape.Of(wire, Library.Embedded);
        double[] celsius = new double[1];
        new WiresInAir([new WireCore(OhmsPerMetre, shape.Zero, shape.Layer)], shape.OuterDiameter, shape.Emissivity).Settle([amps], air, celsius);
        return celsius[0];
    }

    /// <summary>The circle is 1/0.7 of the sum of the wires' own; 0.25 W/(m K) across it: 1/(4 π k) = 0.3183 K m/W.</summary>
    private static double[] Tied(Conductor[] wires, double[] amps, double air)
    {
        WireShape[] shapes = [.. wires.Select(w => WireShape.Of(w, Library.Embedded))];
        double diameter = Math.Sqrt(shapes.Sum(s => s.OuterDiameter * s.OuterDiameter) / 0.7);
        double[] celsius = new double[wires.Length];
        new WiresInAir(
            [.. shapes.Select(s => new WireCore(OhmsPerMetre, s.Zero, s.Layer))],
            diameter,
            shapes.Min(s => s.Emissivity),
            1 / (4 * Math.PI * 0.25)).Settle(amps, air, celsius);
        return celsius;
    }

    private static (Conductor[] Wires, double[] Celsius) Settled()
    {
        Conductor[] wires = Parsed();
        double[] celsius = new double[wires.Length];
        new ConductorHeat(wires, [.. wires.Select(_ => OhmsPerMetre)], Library.Embedded).Settle(Amps, 50, 25, celsius);
        return (wires, celsius);
    }

    private static Conductor[] Parsed() =>
        [.. PackNumbers.Solve("box.yaml", Text).Box.ShouldNotBeNull().Wiring.Of<WiredConductor>().Select(w => w.Conductor)];

    private const string Text = $$"""
        pack: Wires alone and tied
        language: 1
        surroundings:
          ambient: {from: 20 °C, to: 30 °C}
          enclosure: {walls: plastic, inside: 400 x 300 x 200 mm, vents: none}
        defaults:
          conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, links: {section: 20 x 2 mm, length: 70 mm} }
        loads:
          heater: {power: 100 W, window: 8 .. 15 V}
        conductors:
        {{Wires}}
        """;
}
