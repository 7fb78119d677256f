using WireCheck.Knowledge;
using WireCheck.Physics;
using WireCheck.Quantities;

namespace WireCheck.Outside.Tests.Physics;

/// <summary>Heat against textbooks and against tables of ampacity that rest on tests.</summary>
public sealed class HeatAgainstHandbooksTests
{
    /// <summary>Standard tables of dry air at 1 bar, as textbooks of heat transfer print them. From memory.</summary>
    [Theory]
    [InlineData(0, 0.0242, 13.3, 18.6)]
    [InlineData(27, 0.0263, 15.9, 22.5)]
    [InlineData(50, 0.0280, 18.0, 25.5)]
    [InlineData(77, 0.0300, 20.9, 29.9)]
    [InlineData(100, 0.0316, 23.3, 33.2)]
    public void Air_is_that_of_the_tables(double celsius, double conductivity, double viscosity, double diffusivity)
    {
        Air air = new(celsius);

        air.Conductivity.ShouldBe(conductivity, 0.02 * conductivity);
        (air.KinematicViscosity * 1e6).ShouldBe(viscosity, 0.02 * viscosity);
        (air.Diffusivity * 1e6).ShouldBe(diffusivity, 0.025 * diffusivity);
        air.Prandtl.ShouldBe(0.70, 0.02);
    }

    /// <summary>
    /// Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, example of a horizontal steam pipe of 0.1 m: surface 165 °C, room
    /// 23 °C, emissivity 0.85: 7.29 W/(m² K) and 763 W/m in all. From memory.
    /// </summary>
    [Fact]
    public void A_steam_pipe_of_a_textbook()
    {
        double transfer = NaturalConvection.HorizontalCylinder(0.1, 165, 23);

        transfer.ShouldBe(7.29, 0.03 * 7.29);
        (Math.PI * 0.1 * ((transfer * 142) + Radiation.Flux(0.85, 165, 23))).ShouldBe(763, 0.02 * 763);
        new WiresInAir([new WireCore(0, 234.5, 0)], 0.1, 0.85).WattsLost(165, 23).ShouldBe(763, 0.02 * 763);
    }

    /// <summary>
    /// The same book's fire screen: a vertical plate 0.71 m high at 232 °C in a room of 23 °C: 7.0 W/(m² K). From memory.
    /// </summary>
    [Fact]
    public void A_fire_screen_of_a_textbook() =>
        NaturalConvection.VerticalPlate(0.71, 232, 23).ShouldBe(7.0, 0.03 * 7.0);

    /// <summary>
    /// NEC Table 310.17, one copper conductor in free air of 30 °C. From memory. The table was worked for building wire by J. H. Neher's and
    /// M. H. McGrath's method, with thicker insulation and a draught of 2 feet a second; here the air is still and the wire that of vehicles. So what
    /// still air allows must lie from a little above the table, for thin wires, to a quarter below.
    /// </summary>
    [Theory]
    [InlineData(14, 75, 30)]
    [InlineData(12, 75, 35)]
    [InlineData(10, 75, 50)]
    [InlineData(8, 75, 70)]
    [InlineData(6, 75, 95)]
    [InlineData(4, 75, 125)]
    [InlineData(2, 75, 170)]
    [InlineData(0, 75, 230)]
    [InlineData(-1, 75, 265)]
    [InlineData(-3, 75, 360)]
    [InlineData(14, 90, 35)]
    [InlineData(10, 90, 55)]
    [InlineData(6, 90, 105)]
    [InlineData(2, 90, 190)]
    [InlineData(-3, 90, 405)]
    public void What_a_wire_carries_in_free_air_lies_by_the_table(double gauge, double limit, double printed) =>
        (Ampacity(gauge, limit, 30) / printed).ShouldBeInRange(0.75, 1.25);

    /// <summary>
    /// FAA AC 43.13-1B Table 11-9, 105 °C wire in 70 °C: bundles of 33 wires (9 from 8 AWG up) at 60,000 ft. The circular's own factors for
    /// bundle and height, about 0.5 and 0.79, make a single wire at sea level carry about 2.5 times as much; fewer wires in the larger bundles make it less.
    /// </summary>
    [Theory]
    [InlineData(20, 4)]
    [InlineData(18, 6)]
    [InlineData(16, 7)]
    [InlineData(14, 10)]
    [InlineData(12, 13)]
    [InlineData(10, 17)]
    [InlineData(8, 38)]
    [InlineData(6, 50)]
    [InlineData(4, 68)]
    [InlineData(2, 95)]
    [InlineData(0, 128)]
    public void A_single_wire_carries_more_than_the_aircraft_s_bundle_by_its_own_factors(double gauge, double printed) =>
        (Ampacity(gauge, 105, 70) / printed).ShouldBeInRange(1.25, 3.2);

    /// <summary>
    /// FAA AC 43.13-1B, paragraph 11-69, example 2, read: by figure 11-4a a single 14 AWG in free air, 150 °C above the air of 50 °C, carries 47 A at sea
    /// level. It is the one point of the figure that the text tells; the curve itself is a picture. A fifth either way: the wire of
    /// aircraft has a thinner wall than that of vehicles, and its skin counts.
    /// </summary>
    [Fact]
    public void A_single_wire_in_free_air_carries_what_the_aircraft_chart_says() =>
        (Ampacity(14, 200, 50) / 47).ShouldBeInRange(0.8, 1.2);

    /// <summary>Insulation of IEC 60287-2-1 around 4 mm²: T1 = ρ/2π ln(1 + 2 t/d), worked with 5 K m/W, 0.8 mm and 2.6 mm.</summary>
    [Fact]
    public void The_layer_of_the_cable_standard() =>
        Conduction.CylindricalLayer(5, 0.8e-3, 2.6e-3).ShouldBe(5 / (2 * Math.PI) * Math.Log(1 + (1.6 / 2.6)), 1e-12);

    /// <summary>Current at which the metal reaches a temperature, A.</summary>
    private static double Ampacity(double gauge, double limit, double air)
    {
        ConductorSize size = new(SizeSystem.Awg, gauge);
        ConductorTable table = Library.Embedded.Conductors;
        Material copper = Library.Embedded.Materials["copper"];
        double layer = Conduction.CylindricalLayer(5, table.Wall(size), table.ConductorDiameter(size));
        WiresInAir wire = new([new WireCore(table.OhmsPerMetre(size, copper, 20), copper.Zero, layer)], table.OuterDiameter(size), 0.92);
        double[] celsius = new double[1];
        return BalancePoint.Find(amps => limit - Settled(wire, amps, air, celsius), 0, 2000);
    }

    private static double Settled(WiresInAir wire, double amps, double air, double[] celsius)
    {
        wire.Settle([amps], air, celsius);
        return celsius[0];
    }
}
