using WireCheck.Charging;

namespace WireCheck.Tests.Charging;

/// <summary>Each source at each corner, and where its charge ends.</summary>
public sealed class ChargePointTests
{
    [Fact]
    public void What_a_source_gives_goes_into_the_bank()
    {
        foreach (string text in new[] { ChargedBox.Charger(null), ChargedBox.Charger("schottky-20a"), ChargedBox.Vehicle("80 mΩ") })
        {
            ChargingStudy study = ChargedBox.Study(text);
            study.Points.Count.ShouldBe(6);
            study.Points.ShouldAllBe(p => Math.Abs(p.Sources[0].Amps - p.Banks[0].Amps) < 1e-6);
        }
    }

    [Fact]
    public void An_empty_bank_takes_the_current_limit_and_its_cells_their_share_of_the_voltage()
    {
        ChargePoint empty = ChargedBox.Study(ChargedBox.Charger(null)).Points.Single(p => p.Point.Corner.Words == "empty, lowest resistance");

        // A tenth full is 3.15 V a cell; 10 A over 1 mΩ add 10 mV.
        empty.Sources[0].Limit.ShouldBe(ChargeLimit.Current);
        empty.Sources[0].Amps.ShouldBe(10, 1e-9);
        empty.Banks[0].CellVolts.ShouldBe(3.16, 1e-9);
        empty.Banks[0].Volts.ShouldBe((4 * 3.15) + 0.07, 1e-9);
    }

    [Fact]
    public void A_vehicle_is_limited_by_the_way_and_a_bare_panel_by_its_curve()
    {
        ChargedBox.Study(ChargedBox.Vehicle("80 mΩ")).Points.ShouldContain(p => p.Sources[0].Limit == ChargeLimit.Resistance);
        string panel = ChargedBox.Bank + "panels:\n  roof: {part: panel-100w}\nconductors:\n"
            + ChargedBox.Wire("w1", "roof.+", "bank.+") + ChargedBox.Wire("w2", "roof.-", "bank.-");
        ChargedBox.Study(panel).Points.ShouldAllBe(p => p.Sources[0].Limit == ChargeLimit.Panel && p.Sources[0].Amps > 5.9);
    }

    [Fact]
    public void A_charge_ends_at_the_charger_s_voltage_less_what_the_end_current_drops()
    {
        ChargeEnd end = ChargedBox.Study(ChargedBox.Charger(null)).Ends.Single();

        // 5 A is a twentieth of 100 Ah. The charger itself falls by half a per cent to 10 A, 36.5 mV at 5 A. Three links
        // of 1 mΩ take 15 mV. Copper of 0.5 mΩ has 0.608 at 75 °C; with its ends each conductor has 1.108 mΩ, both take 11.1 mV.
        // 14.6 - 0.0365 - 0.015 - 0.0111 = 14.5374 V over four cells.
        end.TailAmps.ShouldBe(5, 1e-9);
        end.Banks[0].Amps.ShouldBe(5, 1e-2);
        end.Banks[0].CellVolts.ShouldBe(14.5374 / 4, 1e-5);
    }

    [Fact]
    public void A_diode_keeps_its_drop_from_the_cells()
    {
        double none = ChargedBox.Study(ChargedBox.Charger(null)).Ends.Single().Banks[0].CellVolts;
        double ideal = ChargedBox.Study(ChargedBox.Charger("ideal-diode-30a")).Ends.Single().Banks[0].CellVolts;
        double schottky = ChargedBox.Study(ChargedBox.Charger("schottky-20a")).Ends.Single().Banks[0].CellVolts;
        double silicon = ChargedBox.Study(ChargedBox.Charger("silicon-6a")).Ends.Single().Banks[0].CellVolts;

        new[] { silicon, schottky, ideal, none }.ShouldBeInOrder();
        (none - ideal).ShouldBeLessThan(0.02);

        // 0.95 V at 6 A of a silicon diode, a little less at 5 A: a quarter of that is missing at each cell.
        (none - silicon).ShouldBeInRange(0.85 / 4, 0.95 / 4);
    }

    [Fact]
    public void A_small_charger_ends_at_half_its_current()
    {
        ChargeEnd end = ChargedBox.Study(ChargedBox.Charger(null, "trickle-12v-1a")).Ends.Single();

        end.TailAmps.ShouldBe(0.5, 1e-6);
        end.Banks[0].CellVolts.ShouldBeInRange(13.7 / 4, 13.8 / 4);
    }
}
