using WireCheck.Knowledge;
using WireCheck.Physics;
using WireCheck.Quantities;

namespace WireCheck.Outside.Tests.Knowledge;

/// <summary>Worked rows of AC 43.13-1B chapter 11. Standing of all: published.</summary>
public sealed class AircraftHandbookTests
{
    private static readonly Library Library = Library.Embedded;

    private static double Drop(double gauge, double feet, double amps) =>
        Library.Conductors.OhmsPerMetre(new ConductorSize(SizeSystem.Awg, gauge), Library.Materials["tinned"], 20) * feet * 0.3048 * amps;

    /// <summary>
    /// Tables 11-7 and 11-8 print the drop of each worked row for military wire, whose area in circular mils Table 11-9
    /// gives. Brought to that area, ours comes within 9 %: the circular's resistances are largest values of thin tinned
    /// strands, ours stand for usual wire.
    /// </summary>
    [Theory]
    [InlineData(4, 42615, 90, 20, 0.504)]
    [InlineData(14, 3831, 100, 20, 6.12)]
    [InlineData(10, 9354, 19.5, 20, 0.491)]
    [InlineData(10, 9354, 156, 20, 3.93)]
    [InlineData(10, 9354, 273, 20, 6.88)]
    public void Worked_drops_come_out_for_wire_of_the_same_area(double gauge, double mils, double feet, double amps, double printed)
    {
        double ours = Drop(gauge, feet, amps) * WireGauge.CircularMils(WireGauge.Area(gauge)) / mils;
        ours.ShouldBe(printed, printed * 0.09);
    }

    /// <summary>Table 11-7: 7 V, 100 ft and 20 A ask for 14 AWG; the next thinner size drops more than 7 V.</summary>
    [Fact]
    public void The_wire_chosen_for_seven_volts_is_the_thinnest_that_keeps_them()
    {
        Drop(14, 100, 20).ShouldBeLessThan(7);
        Drop(16, 100, 20).ShouldBeGreaterThan(7);
    }

    /// <summary>
    /// Table 11-3: breaker for the wire, bundled in air of 57 °C. Its wire rated by Table 11-9 (33 wires, 70 °C) is more
    /// careful, so no breaker of the circular is below the ampacity that we take.
    /// </summary>
    [Theory]
    [InlineData(22, 5)]
    [InlineData(20, 7.5)]
    [InlineData(18, 10)]
    [InlineData(14, 20)]
    [InlineData(12, 30)]
    [InlineData(10, 40)]
    [InlineData(6, 80)]
    [InlineData(4, 100)]
    public void Breakers_of_the_circular_are_never_below_the_ampacity_at_57_degrees(double gauge, double breaker)
    {
        AmpacityQuestion question = new(new ConductorSize(SizeSystem.Awg, gauge), Library.Materials["tinned"], 105, 57, 1);
        Library.Ampacity.Find("ac-43-13-1b")!.Rate(question)!.Amps.ShouldBeLessThanOrEqualTo(breaker);
    }

    /// <summary>Table 11-4: rating needed over load current.</summary>
    [Theory]
    [InlineData(28, SwitchedLoad.Lamp, 8)]
    [InlineData(28, SwitchedLoad.Inductive, 4)]
    [InlineData(28, SwitchedLoad.Resistive, 2)]
    [InlineData(28, SwitchedLoad.Motor, 3)]
    [InlineData(12, SwitchedLoad.Lamp, 5)]
    [InlineData(12, SwitchedLoad.Inductive, 2)]
    [InlineData(12, SwitchedLoad.Resistive, 1)]
    [InlineData(12, SwitchedLoad.Motor, 2)]
    [InlineData(24, SwitchedLoad.Motor, 3)]
    public void Switches_are_derated_as_the_circular_prints(double volts, SwitchedLoad load, double factor) =>
        Library.Switches.LoadFactor(volts, load).ShouldBe(factor);

    /// <summary>The circular stops at 28 V.</summary>
    [Fact]
    public void Above_28_volts_the_circular_says_nothing() => Library.Switches.LoadFactor(48, SwitchedLoad.Motor).ShouldBeNull();
}
