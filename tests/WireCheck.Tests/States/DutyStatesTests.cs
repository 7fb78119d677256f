using WireCheck.Circuit.Wiring;
using WireCheck.Facts;
using WireCheck.States;
using WireCheck.Tests.Facts.Gather;

namespace WireCheck.Tests.States;

/// <summary>Loads that come and go: the peak for wiring, their time constant for warmth, the average for the box.</summary>
public sealed class DutyStatesTests
{
    private static readonly string[] Spells = ["1 s", "30 s", "2 min", "10 min", "1 h"];

    [Fact]
    public void A_wire_is_as_warm_as_by_the_share_of_its_time_constant()
    {
        // 10 AWG: 5.26 mm² of 3.45 J/(cm³ K) store 18.1 J/(K m). A skin of π × 4.4 mm at 105 °C in 20 °C gives 12.9 by air and 9.0 by radiation, 22 W/(m² K):
        // 3.3 K m/W, and 0.3 through the insulation: 3.6 × 18.1 = 65 s.
        (HeatedMode heated, SolvedBox box) = Heat("duty: 20 %, on_for: 1 min");
        double tau = HeatedBox.Solve(box, new StateSolver(box.Wiring)).TimeConstants[0];
        tau.ShouldBe(65, 4);

        // 1 min of 5 min: (1 − e^(−60/τ))/(1 − e^(−300/τ)) of the heat, its root of the current.
        double share = (1 - Math.Exp(-60 / tau)) / (1 - Math.Exp(-300 / tau));
        heated.ConductorAmps[0].ShouldBe(Peak(heated, box) * Math.Sqrt(share), 1e-9);

        // The heat of the box is nearly the fifth that a duty of 20 % makes of it: its time constant is half an hour.
        (HeatedMode always, _) = Heat("duty: 100 %");
        (heated.InsideWatts / always.InsideWatts).ShouldBeInRange(0.19, 0.23);
    }

    [Fact]
    public void Without_a_length_of_its_spells_a_load_heats_as_though_always_on()
    {
        (HeatedMode duty, SolvedBox box) = Heat("duty: 20 %");
        (HeatedMode always, _) = Heat("duty: 100 %");
        duty.ConductorCelsius[0].ShouldBe(always.ConductorCelsius[0]);
        duty.ConductorAmps[0].ShouldBe(Peak(duty, box));
    }

    [Fact]
    public void Longer_spells_at_the_same_duty_are_never_cooler()
    {
        double[] celsius = [.. Spells.Select(s => Heat($"duty: 20 %, on_for: {s}").Mode.ConductorCelsius[0])];
        celsius.ShouldBe([.. celsius.Order()]);
        Heat("duty: 20 %").Mode.ConductorCelsius[0].ShouldBeGreaterThan(celsius[^1]);
    }

    [Fact]
    public void Current_and_drop_of_a_conductor_stay_those_of_the_peak()
    {
        FactTable paused = GatheredBox.Facts(Box("duty: 20 %, on_for: 1 s"));
        FactTable always = GatheredBox.Facts(Box("duty: 100 %"));
        foreach (string fact in new[] { "current", "drop" })
        {
            paused.Number("w1", fact).ShouldBe(always.Number("w1", fact));
        }

        paused.Number("w1", "temperature").ShouldBeLessThan(always.Number("w1", "temperature") - 5);
    }

    [Fact]
    public void Two_loads_that_pause_count_as_though_their_spells_fell_together()
    {
        // Both on for the smaller share, one for what its own share is more, none for the rest.
        (HeatedMode both, SolvedBox box) = Heat("duty: 20 %, on_for: 1 s", "other: {power: 60 W, window: 10 .. 15 V, duty: 50 %, on_for: 1 s}");
        double amps = Peak(both, box);
        (HeatedMode first, _) = Heat("duty: 100 %");
        double one = amps - first.ConductorAmps[0];
        one.ShouldBeInRange(4, 6);
        both.ConductorAmps[0].ShouldBe(Math.Sqrt((0.2 * amps * amps) + (0.3 * one * one)), 0.02 * amps);
    }

    private static double Peak(HeatedMode mode, SolvedBox box) => Math.Abs(mode.Point.Amps(box.Wiring.Of<WiredConductor>().First().Element));

    private static (HeatedMode Mode, SolvedBox Box) Heat(string duty, string other = "")
    {
        SolvedBox box = PackNumbers.Solve("box.yaml", Box(duty, other)).Box.ShouldNotBeNull();
        return (HeatedBox.Solve(box, new StateSolver(box.Wiring)).In(Modes.Everything).ShouldNotBeNull(), box);
    }

    private static string Box(string duty, string other = "")
    {
        string wires = other.Length > 0
            ? """
              w3: {from: heater.+, to: other.+, size: 10 AWG, length: 500 mm}
                w4: {from: other.-, to: heater.-, size: 10 AWG, length: 500 mm}
              """
            : "";
        return $$"""
            pack: A load that comes and goes
            language: 1
            surroundings:
              ambient: {from: 20 °C, to: 20 °C}
              enclosure: {walls: plastic, inside: 400 x 300 x 200 mm, vents: none}
            defaults:
              conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}
            cells:
              bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, links: {section: 20 x 2 mm, length: 70 mm} }
            loads:
              heater: {power: 500 W, window: 10 .. 15 V, {{duty}} }
              {{other}}
            conductors:
              w1: {from: bank.+, to: heater.+, size: 10 AWG, length: 500 mm}
              w2: {from: heater.-, to: bank.-, size: 10 AWG, length: 500 mm}
              {{wires}}
            """;
    }
}
