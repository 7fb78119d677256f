using System.Diagnostics;
using WireCheck.Charging;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Tests.Charging;

/// <summary>What flows back: into dark panels, out of inlets, between strings.</summary>
public sealed class BackFlowTests
{
    private static string Panel(string? diode)
    {
        string text = ChargedBox.Bank + "panels:\n  roof: {part: panel-100w, dark_leakage: 5 mA}\n";
        return diode is null
            ? text + "conductors:\n" + ChargedBox.Wire("w1", "roof.+", "bank.+") + ChargedBox.Wire("w2", "roof.-", "bank.-")
            : text + $"diodes:\n  blocker: {{part: {diode}, leakage: 0 A}}\nconductors:\n" + ChargedBox.Wire("w1", "roof.+", "blocker.A")
                + ChargedBox.Wire("w3", "blocker.K", "bank.+") + ChargedBox.Wire("w2", "roof.-", "bank.-");
    }

    private static string Controller(string blocks) =>
        ChargedBox.Bank + "panels:\n  roof: {part: panel-100w, dark_leakage: 5 mA}\nchargers:\n"
        + $"  controller: {{kind: solar, voltage: 14.4 V, current: 10 A, efficiency: 96 %, input_max: 30 V{blocks}}}\nconductors:\n"
        + ChargedBox.Wire("w1", "roof.+", "controller.pv+") + ChargedBox.Wire("w2", "roof.-", "controller.pv-")
        + ChargedBox.Wire("w3", "controller.out+", "bank.+") + ChargedBox.Wire("w4", "controller.out-", "bank.-");

    private static string Inlet(string keyed, string? diode) =>
        ChargedBox.Bank + "fuses:\n  f-in: {part: blade, rating: 15 A}\nports:\n"
        + $"  inlet: {{part: charge-inlet, keyed: {keyed}}}\nchargers:\n  mains: {{part: mains-14v6-10a, at: inlet}}\n"
        + (diode is null ? "" : $"diodes:\n  blocker: {{part: {diode}, leakage: 0 A}}\n") + "conductors:\n"
        + (diode is null
            ? ChargedBox.Wire("w1", "inlet.+", "f-in.1")
            : ChargedBox.Wire("w1", "inlet.+", "blocker.A") + ChargedBox.Wire("w4", "blocker.K", "f-in.1"))
        + ChargedBox.Wire("w2", "f-in.2", "bank.+") + ChargedBox.Wire("w3", "inlet.-", "bank.-");

    [Fact]
    public void A_panel_by_wire_alone_takes_its_dark_leakage_at_night_and_one_behind_a_diode_nothing()
    {
        NightDraw bare = ChargedBox.Study(Panel(null)).Nights.Single();
        (bare.Reached, bare.DarkKnown).ShouldBe((true, true));
        bare.Amps.ShouldBe(5e-3, 1e-9);

        NightDraw behindDiode = ChargedBox.Study(Panel("schottky-10a")).Nights.Single();
        behindDiode.Reached.ShouldBeFalse();
        behindDiode.Amps.ShouldBeLessThan(1e-4);
    }

    [Fact]
    public void A_Schottky_diode_leaks_twice_as_much_for_every_10_K_and_a_transistor_driven_as_one_does_not()
    {
        // The dark panel would take 5 mA; 13.6 V let 0.302 mA of the 1 mA at 45 V pass, and twice that 10 K above 25 °C.
        string at20 = Panel("schottky-10a").Replace(", leakage: 0 A", "", StringComparison.Ordinal);
        NightAmps(at20, 20).ShouldBe(0.302e-3, 0.04e-3);
        (NightAmps(at20, 45) / NightAmps(at20, 35)).ShouldBe(2, 0.2);

        string driven = at20.Replace("schottky-10a", "ideal-diode-30a", StringComparison.Ordinal);
        NightAmps(driven, 45).ShouldBe(NightAmps(driven, 20), 1e-9);

        static double NightAmps(string text, int warmest) =>
            ChargedBox.Study(text.Replace("to: 20 °C", $"to: {warmest} °C", StringComparison.Ordinal)).Nights.Single().Amps;
    }

    [Fact]
    public void A_bare_panel_never_ends_its_charge_and_a_charger_does()
    {
        ChargedBox.Study(Panel("schottky-10a")).Ends.ShouldBeEmpty();
        ChargedBox.Study(ChargedBox.Charger("schottky-10a")).Ends.Count.ShouldBe(1);
    }

    [Fact]
    public void A_controller_that_blocks_keeps_the_cells_from_the_panel()
    {
        ChargedBox.Study(Controller(", blocks_reverse: yes")).Nights.Single().Reached.ShouldBeFalse();
        ChargedBox.Study(Controller(", blocks_reverse: no")).Nights.Single().Amps.ShouldBe(5e-3, 1e-9);
        NightDraw unknown = ChargedBox.Study(Controller("")).Nights.Single();
        (unknown.UndecidedBy, unknown.Amps).ShouldBe(("controller", 0));
    }

    [Fact]
    public void A_controller_s_input_stands_at_the_panel_s_open_voltage_and_more_in_the_cold()
    {
        ColdPanel cold = ChargedBox.Study(Controller("")).ColdPanels.Single();

        // 5 K below 25 °C at 0.3 % each.
        (cold.Id, cold.RiseAssumed).ShouldBe(("controller", true));
        cold.Volts.ShouldBe(21.6, 1e-3);
        (cold.ColdVolts / cold.Volts).ShouldBe(1.015, 1e-9);
    }

    [Fact]
    public void A_controller_gets_its_panel_s_best_power_less_what_the_lead_takes()
    {
        ChargePoint point = ChargedBox.Study(Controller("")).Points.Single(p => p.Point.Corner.Words == "nominal, lowest resistance");
        SourceCharge controller = point.Sources.Single(s => s.Id == "controller");

        // 18 V × 5.56 A = 100.08 W; 2 mΩ of lead take 0.06 W at 5.56 A; a thousandth is left unasked; 96 % comes out.
        controller.Limit.ShouldBe(ChargeLimit.Input);
        (controller.Amps * controller.Volts).ShouldBe((100.08 - (5.56 * 5.56 * 0.002)) * 0.999 * 0.96, 1e-6);
        point.Sources.Single(s => s.Id == "roof").Volts.ShouldBeInRange(17.5, 19);
    }

    [Fact]
    public void A_controller_whose_panel_has_no_way_back_brings_nothing_and_that_is_known_soon()
    {
        string open = Controller("").Replace(ChargedBox.Wire("w2", "roof.-", "controller.pv-"), "", StringComparison.Ordinal);
        Stopwatch clock = Stopwatch.StartNew();
        SolvedBox box = PackNumbers.Solve("box.yaml", open).Box.ShouldNotBeNull();
        clock.Elapsed.TotalSeconds.ShouldBeLessThan(5);
        OperatingPoint[] sunny = [.. box.Points.Where(p => p.Mode.Sources.GetValueOrDefault("controller") == SourceState.Powered)];
        sunny.ShouldNotBeEmpty();
        sunny.ShouldAllBe(p => p.Solution.Outcome == SolveOutcome.Solved);
        WiredCharger controller = box.Wiring.Of<WiredCharger>().Single();
        sunny.Max(p => p.Solution.OutputCurrent(controller.Stage!)).ShouldBeLessThan(1e-3);
    }

    [Fact]
    public void Panels_in_series_add_up()
    {
        string two = Controller("").Replace("chargers:", "  tent: {part: panel-100w}\nchargers:", StringComparison.Ordinal)
            .Replace(ChargedBox.Wire("w2", "roof.-", "controller.pv-"), ChargedBox.Wire("w2", "roof.-", "tent.+") + ChargedBox.Wire("w5", "tent.-", "controller.pv-"), StringComparison.Ordinal);

        ChargedBox.Study(two).ColdPanels.Single().Volts.ShouldBe(43.2, 1e-2);
    }

    [Fact]
    public void A_key_across_an_inlet_draws_what_the_loop_lets_pass_and_nothing_past_a_diode()
    {
        PortShort live = ChargedBox.Study(Inlet("yes", null)).Shorts.Single();
        live.OpenVolts.ShouldBe(13.6, 1e-6);

        // 7 mΩ of bank, 3 of wire, 4 of contacts, 1 of the key, and the fuse: above half a kiloampere, below 13.6 V / 15 mΩ.
        live.Amps.ShouldBeInRange(500, 13.6 / 0.015);
        live.ShareInto(10_000).ShouldBe(1, 1e-5);

        PortShort dead = ChargedBox.Study(Inlet("yes", "schottky-10a")).Shorts.Single();
        dead.Amps.ShouldBeLessThan(1e-4);
    }

    [Fact]
    public void A_charger_the_wrong_way_round_opens_the_fuse_and_a_diode_holds_it_off()
    {
        ReversedPlug open = ChargedBox.Study(Inlet("no", null)).Reversed.Single();
        open.Amps.ShouldBeGreaterThan(100);
        open.Opens.ShouldBe(["f-in"]);
        open.LeftAmps.ShouldBe(0, 1e-6);

        ReversedPlug held = ChargedBox.Study(Inlet("no", "ideal-diode-30a")).Reversed.Single();
        held.Opens.ShouldBeEmpty();
        held.Amps.ShouldBeLessThan(0.01);

        ChargedBox.Study(Inlet("yes", null)).Reversed.Single().Keyed.ShouldBeTrue();
    }

    [Fact]
    public void Strings_apart_by_volts_drive_them_over_the_loop_when_they_are_joined()
    {
        string text = ChargedBox.Bank.TrimEnd().Replace("link_resistance: 1 mΩ}", "link_resistance: 1 mΩ, joined_at: 13.6 V}", StringComparison.Ordinal)
            + "\n  second: {part: lfp-prismatic-100ah, series: 4, parallel: 1, resistance: 1 mΩ, resistance_ac: 1 mΩ, link_resistance: 1 mΩ, joined_at: 13.2 V}\nconductors:\n"
            + ChargedBox.Wire("w1", "bank.+", "second.+") + ChargedBox.Wire("w2", "bank.-", "second.-");
        BankJoin join = ChargedBox.Study(text).Joins[0];

        // 0.4 V over twice 7 mΩ of string and 2 mΩ of wire.
        join.OtherIds.ShouldBe(["second"]);
        join.DifferenceVolts!.Value.ShouldBe(0.4, 1e-9);
        join.Amps!.Value.ShouldBe(0.4 / 0.016, 1e-6);

        // Full onto the last tenth: 4 × (3.40 - 3.15) V over the same.
        join.FullOntoEmptyAmps!.Value.ShouldBe(1 / 0.016, 1e-6);
    }
}
