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

    [Fact]
    public void A_terminal_behind_a_converter_or_at_a_panel_has_its_voltage()
    {
        SolvedBox box = PackNumbers.Solve("box.yaml", File.ReadAllText(Path.Combine(Golden.Root, "examples", "pump-house-24v.yaml"))).Box!;
        foreach (StateNumbers state in ModeNumbers.Of(box, "sunshine"))
        {
            TerminalNumbers At(string terminal) => state.Terminals.Single(t => t.Name == terminal);

            (At("usb.out+").Volts!.Value - At("usb.out-").Volts!.Value).ShouldBe(5, 0.05);
            At("usb.out+").Stray.ShouldBeFalse();
            (At("panel.+").Volts!.Value - At("panel.-").Volts!.Value).ShouldBeGreaterThan(30);
            At("controller.pv+").Volts!.Value.ShouldBeGreaterThan(30);
            At("controller.pv+").Stray.ShouldBeFalse();
            At("bms.s3").Volts!.Value.ShouldBe(At("bank.t3").Volts!.Value, 1e-9);
            At("earth").Volts.ShouldBeNull();
        }
    }

    [Fact]
    public void The_output_of_an_isolated_converter_is_told_above_its_own_negative()
    {
        string text = GatheredBox.Plain.Replace("loads:", """
            converters:
              usb: {part: usb-supply-12v, negative: isolated}
            loads:
            """, StringComparison.Ordinal).Replace("conductors:", """
            conductors:
              u1: {from: k1.87, to: usb.in+, size: 16 AWG, length: 300 mm}
              u2: {from: bank.-, to: usb.in-, size: 16 AWG, length: 300 mm}
            """, StringComparison.Ordinal);
        (SolvedBox? box, IReadOnlyList<WireCheck.Text.Problem> problems) = PackNumbers.Solve("box.yaml", text);
        problems.ShouldBeEmpty();

        foreach (StateNumbers state in ModeNumbers.Of(box!, Modes.Idle))
        {
            TerminalNumbers plus = state.Terminals.Single(t => t.Name == "usb.out+");
            plus.Above.ShouldBe("usb.out-");
            plus.Volts!.Value.ShouldBe(5, 0.05);
            plus.Stray.ShouldBeFalse();
        }
    }

    [Theory]
    [InlineData("market-stall-12v.yaml")]
    [InlineData("bicycle-workshop-48v.yaml")]
    public void What_a_diode_leaks_into_an_open_inlet_is_stray(string example)
    {
        SolvedBox box = PackNumbers.Solve("box.yaml", File.ReadAllText(Path.Combine(Golden.Root, "examples", example))).Box!;
        StateNumbers idle = ModeNumbers.Of(box, Modes.Idle)[0];
        StateNumbers charging = ModeNumbers.Of(box, "overnight")[0];

        idle.Terminals.Single(t => t.Name == "inlet.+").Stray.ShouldBeTrue();
        charging.Terminals.Single(t => t.Name == "inlet.+").Stray.ShouldBeFalse();
        idle.Terminals.Where(t => t.Stray).Select(t => t.Name).ShouldBe(["blocker.A", "inlet.+", "inlet.plug+"], ignoreOrder: true);
    }
}
