using WireCheck.Charging;

namespace WireCheck.Tests.Charging;

/// <summary>What brings a BMS back that has cut off at low charge: a source must reach it with every relay at rest that the bank held.</summary>
public sealed class BmsWakeTests
{
    private static string Head(string side) => ChargedBox.Bank + "bms:\n  bms: {part: bms-4s-lfp-60a, side: " + side + "}\n";

    private static string Cells(string side) => side == "low"
        ? ChargedBox.Wire("b1", "bank.-", "bms.B-") : ChargedBox.Wire("b1", "bank.+", "bms.B+");

    private static string Plus(string side) => side == "low" ? "bank.+" : "bms.P+";

    private static string Minus(string side) => side == "low" ? "bms.P-" : "bank.-";

    /// <summary>A charger straight on the pack side of the BMS.</summary>
    private static string Straight(string side, string charger) =>
        Head(side) + $"chargers:\n  mains: {{{charger}}}\nconductors:\n" + Cells(side)
        + ChargedBox.Wire("w1", "mains.out+", Plus(side)) + ChargedBox.Wire("w2", "mains.out-", Minus(side));

    /// <summary>The same behind a relay; its coil hangs on the bank, or on the charger itself.</summary>
    private static string BehindRelay(string coilOn) =>
        Head("low") + "relays:\n  k1: {part: relay-12v-40a}\nchargers:\n  mains: {part: mains-14v6-10a}\nconductors:\n" + Cells("low")
        + ChargedBox.Wire("w1", "mains.out+", "k1.87") + ChargedBox.Wire("w2", "k1.30", "bank.+")
        + ChargedBox.Wire("w3", "mains.out-", "bms.P-") + ChargedBox.Wire("w4", coilOn, "k1.86") + ChargedBox.Wire("w5", "k1.85", "bms.P-");

    [Theory]
    [InlineData("low")]
    [InlineData("high")]
    public void A_charger_on_the_pack_side_wakes_it_when_it_starts_without_a_battery(string side)
    {
        BmsWake wake = ChargedBox.Study(Straight(side, "part: mains-14v6-10a")).Wakes.ShouldHaveSingleItem();

        (wake.BmsId, string.Join(' ', wake.Waking)).ShouldBe(("bms", "mains"));
        (wake.Undecided.Count + wake.NeedBattery.Count + wake.OutOfReach.Count).ShouldBe(0);
    }

    [Theory]
    [InlineData("part: mains-14v6-10a, starts_without_battery: no", "", "mains")]
    [InlineData("part: mains-14v6-10a, output_without_battery: 0 V", "", "mains")]
    [InlineData("voltage: 14.6 V, current: 10 A", "mains", "")]
    [InlineData("voltage: 14.6 V, current: 10 A, starts_without_battery: yes", "", "")]
    public void What_is_said_of_a_charger_decides_and_what_is_not_said_is_undecided(string charger, string undecided, string needBattery)
    {
        BmsWake wake = ChargedBox.Study(Straight("low", charger)).Wakes.Single();

        (string.Join(' ', wake.Undecided), string.Join(' ', wake.NeedBattery), wake.OutOfReach.Count).ShouldBe((undecided, needBattery, 0));
    }

    [Fact]
    public void A_solar_controller_that_keeps_its_output_up_may_still_not_start_without_a_battery()
    {
        string Box(string said) => Head("low") + "panels:\n  roof: {part: panel-100w}\nchargers:\n  controller: {part: solar-controller-10a" + said + "}\nconductors:\n"
            + Cells("low") + ChargedBox.Wire("w1", "controller.out+", "bank.+") + ChargedBox.Wire("w2", "controller.out-", "bms.P-")
            + ChargedBox.Wire("w3", "roof.+", "controller.pv+") + ChargedBox.Wire("w4", "roof.-", "controller.pv-");

        BmsWake unsaid = ChargedBox.Study(Box("")).Wakes.Single();
        (unsaid.Waking.Count, string.Join(' ', unsaid.Undecided), unsaid.OutOfReach.Count).ShouldBe((0, "controller", 0));
        ChargedBox.Study(Box(", starts_without_battery: yes")).Wakes.Single().Waking.ShouldBe(["controller"]);
    }

    [Fact]
    public void A_charger_behind_a_relay_that_the_bank_holds_does_not_reach_it_and_one_that_pulls_its_own_relay_does()
    {
        BmsWake held = ChargedBox.Study(BehindRelay("bank.+")).Wakes.Single();
        (held.Waking.Count, string.Join(' ', held.OutOfReach)).ShouldBe((0, "mains"));

        ChargedBox.Study(BehindRelay("mains.out+")).Wakes.Single().Waking.ShouldBe(["mains"]);
    }

    [Fact]
    public void A_vehicle_wakes_a_pack_of_its_own_voltage_and_one_of_half_the_voltage_charges_nothing_at_all()
    {
        string Box(int series, string bms) => ChargedBox.Bank.Replace("series: 4", $"series: {series}", StringComparison.Ordinal)
            + $"bms:\n  bms: {{part: {bms}}}\nvehicles:\n  car: {{voltage: 12 .. 14.4 V, resistance: 20 mΩ, fuse: 30 A}}\nconductors:\n"
            + Cells("low") + ChargedBox.Wire("w1", "car.+", "bank.+") + ChargedBox.Wire("w2", "car.-", "bms.P-");

        ChargedBox.Study(Box(4, "bms-4s-lfp-60a")).Wakes.Single().Waking.ShouldBe(["car"]);
        ChargedBox.Study(Box(8, "bms-8s-lfp-60a")).Wakes.ShouldBeEmpty();
    }

    [Fact]
    public void A_box_without_a_source_or_without_a_bms_asks_nothing()
    {
        ChargedBox.Study(ChargedBox.Charger(null)).Wakes.ShouldBeEmpty();
        ChargedBox.Study(Head("low") + "conductors:\n" + Cells("low")).Wakes.ShouldBeEmpty();
    }
}
