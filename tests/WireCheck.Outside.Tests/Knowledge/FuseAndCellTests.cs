using WireCheck.Knowledge;
using WireCheck.Quantities;

namespace WireCheck.Outside.Tests.Knowledge;

/// <summary>Fuses, cells, joints and bars against printed figures and measurements.</summary>
public sealed class FuseAndCellTests
{
    private static readonly Library Library = Library.Embedded;

    /// <summary>ISO 8820-3 scope: blade fuses of 32 V and 58 V break 1000 A. Standing: published.</summary>
    [Fact]
    public void Blade_fuses_break_a_thousand_amperes_and_a_full_48_volt_bank_is_above_the_58_volt_kind()
    {
        Library.Fuses["blade"].BreakingAt(32).ShouldBe(1000);
        Library.Fuses["blade-58v"].BreakingAt(58).ShouldBe(1000);
        Library.Fuses["blade-58v"].BreakingAt(16 * 3.65).ShouldBeNull();
    }

    /// <summary>ISO 8820-3 type E: seconds to open at per cent of rating. Standing: published.</summary>
    [Theory]
    [InlineData(1.35, 60, 1800)]
    [InlineData(2, 2, 50)]
    [InlineData(3.5, 0.2, 7)]
    [InlineData(6, 0.04, 1)]
    public void Maxi_blades_open_within_the_standard_s_limits(double multiple, double fastest, double slowest)
    {
        FuseTime time = Library.Fuses["maxi-blade"].BandFor(40).Times.Single(t => Math.Abs(t.Multiple - multiple) < 1e-9);
        time.Fastest.ShouldBe(fastest);
        time.Slowest.ShouldBe(slowest);
    }

    /// <summary>A maker's sheet of maxi blades: 30, 35, 40 A have 1.9, 1.7, 1.4 mΩ; of a standard blade: 40 A has 1.44 mΩ. Standing: published.</summary>
    [Theory]
    [InlineData("maxi-blade", 30, 1.9)]
    [InlineData("maxi-blade", 40, 1.4)]
    [InlineData("blade", 40, 1.44)]
    public void Fuses_have_the_cold_resistance_of_the_sheet(string name, double rating, double milliohms) =>
        (Library.Fuses[name].ColdResistance(rating) * 1e3).ShouldBe(milliohms, 1e-9);

    /// <summary>Makers' pack sheets: full 3.65 V, empty 2.5 V, storage at 50 % is 13.2 V of four cells. Standing: published.</summary>
    [Fact]
    public void Cells_have_the_limits_of_the_pack_sheets()
    {
        Chemistry lfp = Library.Chemistries["lfp"];
        lfp.Voltages.Highest.ShouldBe(3.65);
        lfp.Voltages.Lowest.ShouldBe(2.5);
        (4 * lfp.OpenCircuitVolts(0.5)).ShouldBe(13.2, 0.1);
    }

    /// <summary>A rested cell reads 3.20 to 3.35 V over most of its charge: a vendor's chart. Standing: published.</summary>
    [Fact]
    public void The_plateau_covers_most_of_the_charge()
    {
        Chemistry lfp = Library.Chemistries["lfp"];
        (lfp.ChargeAt(3.35) - lfp.ChargeAt(3.20)).ShouldBeGreaterThan(0.75);
    }

    /// <summary>A builder measured a lugged 35 mm² link of 105 mm at 60 µΩ. Standing: common practice.</summary>
    [Fact]
    public void A_measured_link_lies_between_fresh_and_aged()
    {
        JointClass ring = Library.Joints["crimped-ring"];
        double perMetre = Library.Conductors.OhmsPerMetre(new ConductorSize(SizeSystem.Metric, 35), Library.Materials["copper"], 20);
        double wire = perMetre * 0.105;
        (wire + (2 * ring.TypicalWireLength * perMetre)).ShouldBeLessThan(80e-6);
        (wire + (2 * ring.Resistance(perMetre, aged: true))).ShouldBeGreaterThan(60e-6);
    }

    /// <summary>
    /// Largest crimps by IEC 60352-2 method: 0.5 mΩ at 1 mm², 0.25 at 2.5, 0.12 at 6, 0.05 at 25. Standing: from memory.
    /// </summary>
    [Theory]
    [InlineData(1, 0.5)]
    [InlineData(2.5, 0.25)]
    [InlineData(6, 0.12)]
    [InlineData(25, 0.05)]
    public void A_fresh_crimp_is_within_the_class_limit(double section, double milliohms)
    {
        JointClass ring = Library.Joints["crimped-ring"];
        double perMetre = Library.Conductors.OhmsPerMetre(new ConductorSize(SizeSystem.Metric, section), Library.Materials["copper"], 20);
        (ring.TypicalWireLength * perMetre * 1e3).ShouldBeLessThanOrEqualTo(milliohms);
    }

    /// <summary>Catalogue of 50 A two-pole plugs at 75 °C: 58, 46, 37, 31 A on 6, 8, 10, 12 AWG. Standing: published.</summary>
    [Theory]
    [InlineData(6, 58)]
    [InlineData(8, 46)]
    [InlineData(10, 37)]
    [InlineData(12, 31)]
    public void Plugs_carry_what_the_catalogue_prints_for_the_wire(double gauge, double amps) =>
        Library.PortContacts["two-pole-50"].SteadyWith(new ConductorSize(SizeSystem.Awg, gauge)).ShouldBe(amps);

    /// <summary>NEC 240.6(A) from 15 A on. Standing: from memory.</summary>
    [Fact]
    public void The_ratings_of_the_building_code_are_all_there()
    {
        double[] code = [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400];
        code.Except(Library.StandardRatings.Amps).ShouldBeEmpty();
    }
}
