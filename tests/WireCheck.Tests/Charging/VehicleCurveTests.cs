using WireCheck.Charging;

namespace WireCheck.Tests.Charging;

/// <summary>A vehicle that charges through nothing but wire.</summary>
public sealed class VehicleCurveTests
{
    [Fact]
    public void The_peak_is_the_difference_of_the_voltages_over_the_resistance_of_the_loop()
    {
        VehicleCurve curve = ChargedBox.Study(ChargedBox.Vehicle("100 mΩ")).Vehicles.Single();

        // Empty cells stand at 4 × 2.60 V = 10.4 V. 14.4 V - 10.4 V = 4 V over 100 + 7 + 2 = 109 mΩ.
        curve.Peak.StateOfCharge.ShouldBe(0);
        curve.Peak.EngineRuns.ShouldBeTrue();
        curve.Peak.Amps.ShouldBe(4 / 0.109, 1e-6);
        curve.Peak.CellAmps.ShouldBe(4 / 0.109, 1e-6);
        curve.Peak.BankVolts.ShouldBe(10.4 + (0.007 * 4 / 0.109), 1e-6);
    }

    [Fact]
    public void With_the_engine_off_a_full_bank_feeds_the_vehicle()
    {
        VehicleCurve curve = ChargedBox.Study(ChargedBox.Vehicle("100 mΩ")).Vehicles.Single();

        // Full cells stand at 4 × 3.40 V = 13.6 V; 12 V - 13.6 V over 109 mΩ.
        curve.Points.Single(p => !p.EngineRuns && p.StateOfCharge == 1).Amps.ShouldBe(-1.6 / 0.109, 1e-6);
    }

    [Fact]
    public void More_charge_and_more_resistance_never_raise_the_current()
    {
        double before = double.PositiveInfinity;
        foreach (string resistance in new[] { "20 mΩ", "50 mΩ", "100 mΩ", "400 mΩ" })
        {
            VehicleCurve curve = ChargedBox.Study(ChargedBox.Vehicle(resistance)).Vehicles.Single();
            VehicleCurvePoint[] running = [.. curve.Points.Where(p => p.EngineRuns)];
            running.Zip(running.Skip(1)).ShouldAllBe(pair => pair.Second.Amps <= pair.First.Amps);
            curve.Peak.Amps.ShouldBeLessThan(before);
            before = curve.Peak.Amps;
        }
    }

    [Fact]
    public void A_vehicle_behind_a_converting_charger_has_no_curve()
    {
        string text = ChargedBox.Bank + "vehicles:\n  car: {part: vehicle-12v-outlet}\nchargers:\n  dcdc: {part: dcdc-charger-12v-10a}\nconductors:\n"
            + ChargedBox.Wire("w1", "car.+", "dcdc.in+") + ChargedBox.Wire("w2", "car.-", "dcdc.in-")
            + ChargedBox.Wire("w3", "dcdc.out+", "bank.+") + ChargedBox.Wire("w4", "dcdc.out-", "bank.-");

        ChargedBox.Study(text).Vehicles.ShouldBeEmpty();
    }
}
