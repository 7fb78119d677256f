using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Facts.Gather;
using WireCheck.Faults;
using WireCheck.Knowledge;
using WireCheck.States;

namespace WireCheck.Tests.Faults;

/// <summary>What shorts do to wires in series, to leads of loads, and out of vehicles.</summary>
public class WireHarmTests
{
    private const string Head = """
        pack: Box
        language: 1
        surroundings: {ambient: {from: 20 °C, to: 20 °C}}
        defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, links: {section: 20 x 2 mm, length: 70 mm}}

        """;

    private const string Series = Head + """
        fuses:
          main: {part: class-t, rating: 100 A}
          f1: {part: strip-sf30, rating: 60 A}
        loads:
          lamp: {power: 20 W, LEAD}
        conductors:
          w1: {from: bank.+, to: main.1, size: 4 AWG, length: 90 mm}
          w2: {from: main.2, to: f1.1, size: 4 AWG, length: 200 mm}
          w3: {from: f1.2, to: lamp.+, size: FIRST, length: 1500 mm}
          w4: {from: lamp.-, to: bank.-, size: SECOND, length: 1500 mm}
        """;

    [Theory]
    [InlineData("20 AWG", "18 AWG", "w3", "w4")]
    [InlineData("18 AWG", "20 AWG", "w4", "w3")]
    public void Of_two_wires_in_series_the_thinner_is_hurt_first_and_one_tells_of_both(string first, string second, string hurtFirst, string named)
    {
        GatherContext context = Context(Series.Replace("FIRST", first, StringComparison.Ordinal)
            .Replace("SECOND", second, StringComparison.Ordinal).Replace(", LEAD", "", StringComparison.Ordinal));

        FaultOutcome outcome = context.Faults.At("w3", "lamp.+").Lowest!;
        outcome.FirstHurt.ShouldBe(hurtFirst);
        outcome.AlsoHurt.ShouldContain(named);

        // Straight to the bank's negative the same place drives more, and there w3 is alone: it tells in any case.
        context.UnclearedShorts.IsTeller("w3").ShouldBeTrue();
        context.UnclearedShorts.IsTeller("w4").ShouldBeFalse();
        context.UnclearedShorts.Also("w3").ShouldBe(["w4"]);
    }

    [Fact]
    public void Sound_wires_name_no_others()
    {
        GatherContext context = Context(Series.Replace("FIRST", "6 AWG", StringComparison.Ordinal)
            .Replace("SECOND", "6 AWG", StringComparison.Ordinal).Replace(", LEAD", "", StringComparison.Ordinal));

        context.Faults.HurtingSeveral.ShouldBeEmpty();
        context.UnclearedShorts.Also("w3").ShouldBeEmpty();
    }

    /// <summary>
    /// By hand: 20 AWG has 0.519 mm², PVC 75 °C stands 111 A s^0.5/mm²: (111 · 0.519)² = 3,319 A² s. The lead limits the short at
    /// its far end, so that fuse and lead alone decide.
    /// </summary>
    [Fact]
    public void The_lead_of_a_load_is_hurt_when_its_withstand_is_passed()
    {
        GatherContext context = Context(Series.Replace("FIRST", "6 AWG", StringComparison.Ordinal)
            .Replace("SECOND", "6 AWG", StringComparison.Ordinal).Replace("LEAD", "lead: {size: 20 AWG, length: 1 m}", StringComparison.Ordinal)
            .Replace("{power: 20 W", "{at: socket, power: 20 W", StringComparison.Ordinal)
            .Replace("lamp.+", "socket.+", StringComparison.Ordinal).Replace("lamp.-", "socket.-", StringComparison.Ordinal)
            .Replace("loads:", "ports:\n  socket: {part: vehicle-socket}\nloads:", StringComparison.Ordinal));

        FaultOutcome outcome = context.Faults.At("lamp", "lamp.+").Lowest!;
        (WireHeat heat, _) = context.Faults.HottestOf("lamp").ShouldNotBeNull();
        heat.Energy.ShouldBeGreaterThan(3319);
        heat.Share.ShouldBeGreaterThan(1);
        outcome.Amps.ShouldBeLessThan(context.Faults.At("socket", "socket.plug+").Lowest!.Amps);

        // It is hurt when its own A² s are used up; at such a current hardly any heat is lost by then.
        (heat.HurtSeconds * outcome.Amps * outcome.Amps).ShouldBeWithin(3319, 0.05);
    }

    private const string Vehicle = Head + """
        fuses:
          main: {part: class-t, rating: 100 A}
          f-in: {part: class-t, rating: 60 A}
        ports:
          inlet: {part: charge-inlet, direction: in}
        vehicles:
          car: {at: inlet, voltage: 12 .. 14.4 V, resistance: 80 mΩ, fuse: 15 A}
        conductors:
          w1: {from: bank.+, to: main.1, size: 4 AWG, length: 90 mm}
          w2: {from: main.2, to: f-in.1, size: 4 AWG, length: 200 mm}
          w3: {from: f-in.2, to: inlet.+, size: 12 AWG, length: 500 mm}
          w4: {from: inlet.-, to: bank.-, size: 12 AWG, length: 500 mm}
        """;

    /// <summary>By hand: 12 V over 80 mΩ are 150 A, ten times the rating; a 15 A blade keeps 6² · 15² · 0.1 s = 810 A² s: 36 ms.</summary>
    [Fact]
    public void A_short_at_its_plug_is_ended_by_the_vehicles_own_fuse()
    {
        FaultStudy study = StudiedBox.Of(Vehicle);
        FaultOutcome alone = study.At("inlet", "inlet.plug+").BySource.Single(o => o.Case.Name == "car");

        alone.Amps.ShouldBeWithin(12 / 80e-3, 1e-6);
        alone.ClearedBy.ShouldBe("car");
        alone.Seconds.ShouldBeWithin(810 / (150.0 * 150), 1e-3);
        alone.Case.FromBank.ShouldBeFalse();
    }

    /// <summary>By hand: at the plug the vehicle adds what it drives into a dead short there, 14.4 V over 80 mΩ.</summary>
    [Fact]
    public void All_sources_feed_a_short_together_the_vehicle_among_them()
    {
        FaultOutcome with = StudiedBox.Of(Vehicle).At("inlet", "inlet.plug+").Highest!;
        FaultOutcome without = StudiedBox.Of(Vehicle.Replace("resistance: 80 mΩ", "resistance: 80 MΩ", StringComparison.Ordinal))
            .At("inlet", "inlet.plug+").Highest!;

        // Back to the bank's negative the vehicle's current comes by w4, which the bank's does not pass.
        (with.Amps - without.Amps).ShouldBeInRange(0.8 * 14.4 / 80e-3, 14.4 / 80e-3);
        with.Steps.Select(s => s.DeviceId).Order(StringComparer.Ordinal).ShouldBe(["car", "f-in"]);
        with.Cleared.ShouldBeTrue();
    }

    [Theory]
    [InlineData("40 mΩ")]
    [InlineData("160 mΩ")]
    public void The_current_out_of_a_vehicle_goes_with_its_resistance(string resistance)
    {
        FaultOutcome alone = StudiedBox.Of(Vehicle.Replace("80 mΩ", resistance, StringComparison.Ordinal))
            .At("inlet", "inlet.plug+").BySource.Single(o => o.Case.Name == "car");
        alone.Amps.ShouldBeWithin(12 / (double.Parse(resistance.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture) * 1e-3), 1e-6);
    }

    private static GatherContext Context(string text)
    {
        Pack pack = PackReader.Read("box.yaml", text, LibraryClasses.Embedded).Pack.ShouldNotBeNull();
        return new GatherContext(SolvedBox.Solve(pack, new WiringData(Library.Embedded)));
    }
}
