using WireCheck.Physics;

namespace WireCheck.Tests.Physics;

/// <summary>The heat balance of wires in still air: by hand, in balance, and in the right order.</summary>
public sealed class WiresInAirTests
{
    private static readonly WireCore SixGauge = new(1.32e-3, 234.5, 0.19);

    private static WiresInAir One(double ohms, double diameter = 7e-3) => new([new WireCore(ohms, 234.5, 0.19)], diameter, 0.92);

    [Fact]
    public void A_wire_worked_by_hand()
    {
        double[] celsius = new double[1];

        double surface = new WiresInAir([SixGauge], 7e-3, 0.92).Settle([60], 40, celsius);

        // 60² A² × 1.32 mΩ/m × (234.5 + 58)/254.5 = 5.46 W/m. At 57 °C the surface gives off 10.0 W/(m² K) by air and 6.4 by
        // radiation: 16.4 × π × 7 mm = 0.36 W/(m K), so it stands 15 to 16 K above the air and the copper 1 K more.
        surface.ShouldBeInRange(54, 57);
        (celsius[0] - surface).ShouldBe(0.19 * 5.46, 0.03);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(30)]
    [InlineData(120)]
    public void What_is_made_is_lost(double amps)
    {
        WiresInAir wires = new([SixGauge, new WireCore(8e-3, 234.5, 0.3), new WireCore(8e-3, 234.5, 0.3)], 15e-3, 0.9, 0.32);
        double[] currents = [amps, amps / 3, -amps / 4];
        double[] celsius = new double[3];

        double surface = wires.Settle(currents, 25, celsius);

        double made = Enumerable.Range(0, 3).Sum(i => wires.WattsMade(i, currents[i], celsius[i]));
        made.ShouldBe(wires.WattsLost(surface, 25), 1e-9 * made);
    }

    [Fact]
    public void A_thicker_wire_is_never_hotter_and_more_current_never_cooler()
    {
        double[] before = [1e9];
        double[] now = new double[1];
        foreach (double gauge in new[] { 20.0, 16, 12, 8, 4, 0 })
        {
            double diameter = WireGauge.Diameter(gauge);
            WiresInAir wires = new([new WireCore(1.7241e-8 / WireGauge.Area(gauge), 234.5, 0.3)], diameter + 1.6e-3, 0.92);
            wires.Settle([15], 30, now);
            now[0].ShouldBeLessThan(before[0]);
            before[0] = now[0];
            double[] more = new double[1];
            wires.Settle([16], 30, more);
            more[0].ShouldBeGreaterThan(now[0]);
        }
    }

    [Fact]
    public void Wires_tied_together_are_hotter_than_alone_and_an_idle_one_is_warmed_by_its_neighbour()
    {
        double[] alone = new double[1];
        One(8e-3, 4e-3).Settle([15], 30, alone);
        double[] tied = new double[3];
        new WiresInAir([.. Enumerable.Repeat(new WireCore(8e-3, 234.5, 0.19), 3)], 8.3e-3, 0.92, 0.32).Settle([15, 15, 0], 30, tied);

        tied[0].ShouldBeGreaterThan(alone[0]);
        tied[2].ShouldBeInRange(31, tied[0]);
    }

    [Fact]
    public void Without_current_a_wire_is_as_warm_as_the_air_and_beyond_all_reason_it_is_told_as_molten()
    {
        double[] celsius = new double[1];
        One(8e-3).Settle([0], 30, celsius).ShouldBe(30);
        celsius[0].ShouldBe(30);

        One(8e-3).Settle([2000], 30, celsius);
        celsius[0].ShouldBe(WiresInAir.MeltingCelsius);
        One(8e-3).Settle([300], 30, celsius);
        celsius[0].ShouldBe(WiresInAir.MeltingCelsius);
    }
}
