using WireCheck.Numbers;
using WireCheck.States;
using WireCheck.Tests.Facts.Gather;

namespace WireCheck.Tests.Numbers;

/// <summary>What the two tables of numbers say of a small box.</summary>
public sealed class NumbersTests
{
    private static readonly SolvedBox Box = PackNumbers.Solve("box.yaml", GatheredBox.Plain).Box!;

    [Fact]
    public void Each_mode_has_each_corner_and_a_named_mode_stands_alone()
    {
        ModeNumbers.Of(Box).Count.ShouldBe(Box.Points.Count);
        ModeNumbers.Of(Box, Modes.Stored).Select(s => s.Mode).ShouldBe(Enumerable.Repeat(Modes.Stored, 6));
        ModeNumbers.Of(Box, "no-such-mode").ShouldBeEmpty();
    }

    [Fact]
    public void A_conductor_loses_its_current_times_its_drop()
    {
        foreach (ConductorNumbers wire in ModeNumbers.Of(Box).SelectMany(s => s.Conductors))
        {
            wire.LossWatts.ShouldBe(wire.Amps * wire.DropVolts, 1e-12);
            wire.LossWatts.ShouldBeGreaterThanOrEqualTo(0);
        }
    }

    [Fact]
    public void The_drop_of_a_conductor_is_the_difference_of_its_terminals()
    {
        foreach (StateNumbers state in ModeNumbers.Of(Box, Modes.Everything))
        {
            double Volts(string terminal) => state.Terminals.Single(t => t.Name == terminal).Volts!.Value;

            state.Conductors.Single(c => c.Id == "w3").DropVolts.ShouldBe(Volts("k1.87") - Volts("lamp.+"), 1e-9);
            Volts("bank.-").ShouldBe(0, 1e-9);
        }
    }

    [Fact]
    public void At_rest_the_meter_draws_all_there_is()
    {
        StandbyAtRest stored = StandbyNumbers.Of(Box).States.Single(s => s.Mode == Modes.Stored);

        stored.Amps.ShouldBe(0.012, 1e-7);
        StandbyConsumer gauge = stored.Consumers.Single();
        gauge.Id.ShouldBe("gauge");
        gauge.Share.ShouldBe(1, 1e-5);
        gauge.Chain.ShouldContain("w8");
        gauge.Chain.ShouldContain("w9");
    }

    [Fact]
    public void A_full_bank_keeps_for_its_charge_over_what_drains_it()
    {
        double seconds = StandbyNumbers.Of(Box).States.Single(s => s.Mode == Modes.Stored).Life.ToCutOff;

        // 90 Ah over 12 mA is 313 days; 3 % a month, 4.1 mA at 25 °C and 2.9 mA at 20 °C, takes it to 251.
        (seconds / 86400).ShouldBeInRange(247, 252);
    }
}
