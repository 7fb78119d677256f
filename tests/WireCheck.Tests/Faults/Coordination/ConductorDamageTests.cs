using WireCheck.Faults.Coordination;
using WireCheck.Knowledge;
using WireCheck.Physics;
using static WireCheck.Tests.Faults.Coordination.CoordinationParts;

namespace WireCheck.Tests.Faults.Coordination;

public sealed class ConductorDamageTests
{
    public static TheoryData<string> Insulations => [.. Tables.Insulation.Names];

    /// <summary>By hand: 115 for PVC 70 °C, 1.5 mm²: (115 · 1.5)² = 29,756 A² s; at 500 A that is 0.119 s.</summary>
    [Fact]
    public void A_short_circuit_is_withstood_by_k_and_section() =>
        Damage(Conductor("1.5 mm²", "pvc-70")).Seconds(500).ShouldBe(29756.0 / 250000, 0.002);

    [Theory]
    [MemberData(nameof(Insulations))]
    public void The_withstand_constant_is_that_of_the_table_for_every_insulation(string name)
    {
        InsulationClass insulation = Tables.Insulation[name];
        ConductorDamage copper = Damage(Conductor("10 mm²", name));
        double amps = 1e5;
        Math.Sqrt(amps * amps * copper.Seconds(amps)).ShouldBe(insulation.CopperConstant * 10, 8);
        ConductorDamage aluminium = Damage(Conductor("10 mm²", name, "aluminium"));
        Math.Sqrt(amps * amps * aluminium.Seconds(amps)).ShouldBe(insulation.AluminiumConstant * 10, 8);
    }

    [Fact]
    public void The_limit_falls_from_that_of_a_short_circuit_to_that_of_an_overload()
    {
        ConductorDamage damage = Damage(Conductor("10 mm²", "pvc-70"));
        damage.LimitCelsius(0.1).ShouldBe(160);
        damage.LimitCelsius(5).ShouldBe(160);
        damage.LimitCelsius(3600).ShouldBe(114);
        damage.LimitCelsius(1e6).ShouldBe(114);
        damage.LimitCelsius(Math.Sqrt(5 * 3600)).ShouldBe(137, 1e-9);
    }

    [Theory]
    [InlineData(1.5)]
    [InlineData(2)]
    [InlineData(3)]
    public void When_it_is_hurt_its_temperature_is_the_limit_of_that_time(double times)
    {
        ConductorDamage damage = Damage(Conductor("10 AWG"));
        double amps = 60 * times;
        double seconds = damage.Seconds(amps);
        seconds.ShouldBeGreaterThan(5);
        damage.Celsius(amps, seconds).ShouldBe(damage.LimitCelsius(seconds), 1e-3);
    }

    /// <summary>Held at one current it does not matter when one begins to count.</summary>
    [Theory]
    [InlineData(90)]
    [InlineData(150)]
    [InlineData(1000)]
    public void From_where_it_has_got_to_the_rest_of_the_time_is_left(double amps)
    {
        ConductorDamage damage = Damage(Conductor("10 AWG"));
        double whole = damage.Seconds(amps);
        foreach (double part in new[] { 0.1, 0.5, 0.9 })
        {
            double elapsed = part * whole;
            damage.Seconds(amps, damage.Celsius(amps, elapsed), elapsed).ShouldBe(whole - elapsed, 1e-5 * whole);
        }
    }

    [Fact]
    public void At_its_ampacity_it_is_never_hurt() =>
        Damage(Conductor("10 AWG")).Seconds(60).ShouldBe(double.PositiveInfinity);

    [Theory]
    [MemberData(nameof(Insulations))]
    public void More_current_never_hurts_later(string name)
    {
        ConductorDamage damage = Damage(Conductor("4 mm²", name));
        double last = double.PositiveInfinity;
        for (double amps = 5; amps < 20000; amps *= 1.02)
        {
            double seconds = damage.Seconds(amps);
            seconds.ShouldBeLessThanOrEqualTo(last * (1 + 1e-6), $"{amps} A");
            last = seconds;
        }
    }

    [Theory]
    [InlineData("pvc-70")]
    [InlineData("pvc-105")]
    [InlineData("xlpe-125")]
    public void A_thicker_wire_is_never_hurt_sooner(string insulation)
    {
        string[] sizes = ["0.75 mm²", "1.5 mm²", "2.5 mm²", "4 mm²", "6 mm²", "10 mm²", "16 mm²", "25 mm²", "35 mm²", "50 mm²"];
        for (int i = 1; i < sizes.Length; i++)
        {
            ConductorDamage thin = Damage(Conductor(sizes[i - 1], insulation));
            ConductorDamage thick = Damage(Conductor(sizes[i], insulation));
            for (double amps = 10; amps < 20000; amps *= 1.1)
            {
                thin.Seconds(amps).ShouldBeLessThanOrEqualTo(thick.Seconds(amps) * (1 + 1e-6), $"{sizes[i]} at {amps} A");
            }
        }
    }

    /// <summary>Air as hot as the insulation leaves no ampacity; what remains is the adiabatic equation.</summary>
    [Fact]
    public void A_conductor_that_may_carry_nothing_loses_no_heat() =>
        ConductorDamage.Of(Conductor("10 mm²", "pvc-70"), Tables, 0, 80).Heating.Loss.ShouldBe(0);

    /// <summary>The loss follows the ampacity: half the ampacity in a bundle sheds a quarter of the heat.</summary>
    [Fact]
    public void A_conductor_in_a_bundle_is_hurt_sooner()
    {
        ConductorDamage alone = ConductorDamage.Of(Conductor("10 mm²"), Tables, 90, 30);
        ConductorDamage bundled = ConductorDamage.Of(Conductor("10 mm²"), Tables, 45, 30);
        bundled.Heating.Loss.ShouldBe(alone.Heating.Loss / 4, 1e-9);
        bundled.Seconds(150).ShouldBeLessThan(alone.Seconds(150));
    }

    [Fact]
    public void Every_overload_limit_lies_between_the_rating_and_the_limit_of_a_short_circuit()
    {
        foreach (InsulationClass insulation in Tables.Insulation.All)
        {
            insulation.OverloadCelsius.ShouldBeInRange(insulation.RatedCelsius, insulation.LimitCelsius, insulation.Name);
        }
    }
}
