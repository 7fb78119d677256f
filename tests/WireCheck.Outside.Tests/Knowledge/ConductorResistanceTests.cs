using WireCheck.Knowledge;
using WireCheck.Physics;
using WireCheck.Quantities;

namespace WireCheck.Outside.Tests.Knowledge;

/// <summary>Resistance of conductors against printed tables.</summary>
public sealed class ConductorResistanceTests
{
    private const double OhmsPerKiloFoot = 1 / 304.8;

    private static double Ohms(SizeSystem system, double size, string material, double celsius) =>
        Library.Embedded.Conductors.OhmsPerMetre(new ConductorSize(system, size), Library.Embedded.Materials[material], celsius);

    /// <summary>NEC chapter 9 Table 8, uncoated stranded copper at 75 °C, ohm per 1000 ft; ours within 1.5 %. Standing: published.</summary>
    [Theory]
    [InlineData(18, 7.95)]
    [InlineData(16, 4.99)]
    [InlineData(14, 3.14)]
    [InlineData(12, 1.98)]
    [InlineData(10, 1.24)]
    [InlineData(8, 0.778)]
    [InlineData(6, 0.491)]
    [InlineData(4, 0.308)]
    [InlineData(3, 0.245)]
    [InlineData(2, 0.194)]
    [InlineData(1, 0.154)]
    [InlineData(0, 0.122)]
    [InlineData(-1, 0.0967)]
    [InlineData(-2, 0.0766)]
    [InlineData(-3, 0.0608)]
    public void Stranded_copper_is_that_of_the_building_code(double gauge, double printed) =>
        Ohms(SizeSystem.Awg, gauge, "copper", 75).ShouldBe(printed * OhmsPerKiloFoot, printed * OhmsPerKiloFoot * 0.015);

    /// <summary>The same table, coated copper, whose finer strands lose more; ours within 4 %. Standing: published.</summary>
    [Theory]
    [InlineData(18, 8.45)]
    [InlineData(14, 3.26)]
    [InlineData(10, 1.29)]
    [InlineData(6, 0.510)]
    [InlineData(2, 0.201)]
    [InlineData(0, 0.127)]
    public void Tinned_copper_is_near_that_of_the_building_code(double gauge, double printed) =>
        Ohms(SizeSystem.Awg, gauge, "tinned", 75).ShouldBe(printed * OhmsPerKiloFoot, printed * OhmsPerKiloFoot * 0.04);

    /// <summary>The same table, aluminium; ours within 2 %. Standing: published.</summary>
    [Theory]
    [InlineData(12, 3.25)]
    [InlineData(8, 1.28)]
    [InlineData(4, 0.508)]
    [InlineData(0, 0.201)]
    public void Aluminium_is_that_of_the_building_code(double gauge, double printed) =>
        Ohms(SizeSystem.Awg, gauge, "aluminium", 75).ShouldBe(printed * OhmsPerKiloFoot, printed * OhmsPerKiloFoot * 0.02);

    /// <summary>IEC 60228 Table 3, class 5, ohm/km at 20 °C. Standing: published.</summary>
    [Theory]
    [InlineData(0.5, 39.0, 40.1)]
    [InlineData(0.75, 26.0, 26.7)]
    [InlineData(1, 19.5, 20.0)]
    [InlineData(1.5, 13.3, 13.7)]
    [InlineData(2.5, 7.98, 8.21)]
    [InlineData(4, 4.95, 5.09)]
    [InlineData(6, 3.30, 3.39)]
    [InlineData(10, 1.91, 1.95)]
    [InlineData(16, 1.21, 1.24)]
    [InlineData(25, 0.780, 0.795)]
    [InlineData(35, 0.554, 0.565)]
    [InlineData(50, 0.386, 0.393)]
    [InlineData(70, 0.272, 0.277)]
    [InlineData(95, 0.206, 0.210)]
    [InlineData(120, 0.161, 0.164)]
    public void Metric_copper_is_the_class_5_limit(double section, double plain, double tinned)
    {
        Ohms(SizeSystem.Metric, section, "copper", 20).ShouldBe(plain * 1e-3, plain * 1e-3 * 1e-4);
        Ohms(SizeSystem.Metric, section, "tinned", 20).ShouldBe(tinned * 1e-3, tinned * 1e-3 * 1e-4);
    }

    /// <summary>
    /// AC 43.13-1B Table 11-9, tin-plated military wire, ohm per 1000 ft at 20 °C and circular mils. Brought to that area,
    /// ours is below the circular's largest values by no more than 20 %, most where strands are thinnest. Standing: published.
    /// </summary>
    [Theory]
    [InlineData(24, 28.40, 475)]
    [InlineData(22, 16.20, 755)]
    [InlineData(20, 9.88, 1216)]
    [InlineData(16, 4.81, 2426)]
    [InlineData(14, 3.06, 3831)]
    [InlineData(12, 2.02, 5874)]
    [InlineData(10, 1.26, 9354)]
    public void Tinned_copper_stays_under_the_largest_values_of_the_aircraft_handbook(double gauge, double printed, double mils)
    {
        double ours = Ohms(SizeSystem.Awg, gauge, "tinned", 20) * WireGauge.CircularMils(WireGauge.Area(gauge)) / mils;
        (ours / (printed * OhmsPerKiloFoot)).ShouldBeInRange(0.80, 1.0);
    }
}
