using WireCheck.Knowledge;
using WireCheck.Quantities;

namespace WireCheck.Tests.Knowledge;

public sealed class TypedTablesTests
{
    private static readonly Library Library = Library.Embedded;

    private static ConductorSize Awg(double gauge) => new(SizeSystem.Awg, gauge);

    private static ConductorSize Metric(double section) => new(SizeSystem.Metric, section);

    [Fact]
    public void Metric_copper_takes_the_class_5_figure() =>
        Library.Conductors.OhmsPerMetre(Metric(10), Library.Materials["copper"], 20).ShouldBe(1.91e-3, 1e-6);

    [Fact]
    public void Metric_tinned_takes_its_own_figure() =>
        Library.Conductors.OhmsPerMetre(Metric(2.5), Library.Materials["tinned"], 20).ShouldBe(8.21e-3, 1e-9);

    [Fact]
    public void A_section_setting_takes_the_nominal_section() =>
        Library.Conductors.OhmsPerMetre(Metric(10), Library.Materials["copper"], 20, basis: SectionBasis.NominalSection)
            .ShouldBe(1.72414e-3, 1e-8);

    [Fact]
    public void Solid_metric_wire_takes_class_1() =>
        Library.Conductors.OhmsPerMetre(Metric(2.5), Library.Materials["copper"], 20, Stranding.Solid).ShouldBe(7.41e-3, 1e-6);

    [Fact]
    public void Gauge_wire_takes_its_area_and_two_per_cent() =>
        Library.Conductors.OhmsPerMetre(Awg(12), Library.Materials["copper"], 20).ShouldBe(0.0172414e-6 * 1.02 / 3.3088e-6, 1e-7);

    [Fact]
    public void Every_size_and_metal_has_a_resistance_that_falls_with_size()
    {
        foreach (Material material in Library.Materials.All)
        {
            foreach (SizeSystem system in Enum.GetValues<SizeSystem>())
            {
                double last = double.PositiveInfinity;
                foreach (ConductorSize size in Library.Conductors.Stocked(system))
                {
                    double ohms = Library.Conductors.OhmsPerMetre(size, material, 20);
                    ohms.ShouldBeGreaterThan(0);
                    ohms.ShouldBeLessThan(last, $"{material.Name} {size}");
                    last = ohms;
                }
            }
        }
    }

    [Fact]
    public void A_size_without_a_row_lies_between_its_neighbours()
    {
        double ohms = Library.Conductors.OhmsPerMetre(Metric(7), Library.Materials["copper"], 20);
        ohms.ShouldBeInRange(2.38e-3, 3.30e-3);
    }

    [Fact]
    public void Insulation_adds_its_wall_twice()
    {
        ConductorSize size = Metric(6);
        Library.Conductors.OuterDiameter(size).ShouldBe(Library.Conductors.ConductorDiameter(size) + 1.6e-3, 1e-9);
    }

    [Fact]
    public void A_joint_is_its_wire_and_its_contact_and_worse_with_age()
    {
        JointClass ring = Library.Joints["crimped-ring"];
        ring.Resistance(0.002, aged: false).ShouldBe(39e-6, 1e-9);
        foreach (JointClass joint in Library.Joints.All)
        {
            joint.Resistance(0.002, aged: true).ShouldBeGreaterThanOrEqualTo(joint.Resistance(0.002, aged: false), joint.Name);
        }
    }

    [Fact]
    public void A_tab_carries_by_its_wire()
    {
        JointClass tab = Library.Joints["crimped-spade"];
        tab.CurrentLimit(2.5e-6).ShouldBe(20);
        tab.CurrentLimit(2.1e-6).ShouldBe(16);
        tab.CurrentLimit(0.25e-6)!.Value.ShouldBe(3, 1e-9);
        Library.Joints["crimped-ring"].CurrentLimit(2.5e-6).ShouldBeNull();
    }

    [Fact]
    public void A_fuse_breaks_less_at_more_volts_and_nothing_above_its_own()
    {
        FuseClass cube = Library.Fuses["terminal-cube"];
        cube.BreakingAt(13).ShouldBe(10000);
        cube.BreakingAt(14.6).ShouldBe(5000);
        cube.BreakingAt(58.4).ShouldBeNull();
    }

    [Fact]
    public void Every_fuse_class_is_whole_and_in_order()
    {
        foreach (FuseClass fuse in Library.Fuses.All)
        {
            fuse.Ratings.ShouldBe(fuse.Ratings.Order());
            fuse.BreakingAt(fuse.Volts).ShouldNotBeNull();
            foreach (double rating in fuse.Ratings)
            {
                fuse.ColdResistance(rating).ShouldBeGreaterThan(0);
                FuseBand band = fuse.BandFor(rating);
                rating.ShouldBeInRange(band.FromRating, band.ToRating, $"{fuse.Name} {rating}");
                band.Times.Select(t => t.Multiple).ShouldBe(band.Times.Select(t => t.Multiple).Order());
                foreach (FuseTime time in band.Times.Where(t => t.Fastest is not null && t.Slowest is not null))
                {
                    time.Fastest!.Value.ShouldBeLessThan(time.Slowest!.Value, fuse.Name);
                }
            }
        }
    }

    [Fact]
    public void A_fuse_carries_less_in_a_hot_box()
    {
        FuseClass maxi = Library.Fuses["maxi-blade"];
        maxi.SteadyAmps(40, 20).ShouldBe(30, 1e-9);
        maxi.SteadyAmps(40, 75).ShouldBe(40 * 0.75 * 0.8, 1e-9);
    }

    [Fact]
    public void Open_circuit_voltage_rises_with_charge_and_can_be_read_back()
    {
        Chemistry lfp = Library.Chemistries["lfp"];
        double last = 0;
        for (int percent = 0; percent <= 100; percent++)
        {
            double volts = lfp.OpenCircuitVolts(percent / 100.0);
            volts.ShouldBeGreaterThan(last);
            lfp.ChargeAt(volts).ShouldBe(percent / 100.0, 1e-9);
            last = volts;
        }
    }

    [Fact]
    public void The_next_rating_is_at_or_above()
    {
        Library.StandardRatings.NextAtOrAbove(31).ShouldBe(35);
        Library.StandardRatings.NextAtOrAbove(30).ShouldBe(30);
        Library.StandardRatings.NextAtOrAbove(1e6).ShouldBeNull();
        Library.StandardRatings.LargestAtOrBelow(31).ShouldBe(30);
        Library.StandardRatings.LargestAtOrBelow(0.5).ShouldBeNull();
    }

    [Fact]
    public void A_contact_carries_by_its_wire_where_the_catalogue_says()
    {
        PortContact plug = Library.PortContacts["two-pole-50"];
        plug.SteadyWith(Awg(8)).ShouldBe(46);
        plug.SteadyWith(Metric(6)).ShouldBe(37);
        plug.SteadyWith(Awg(14)).ShouldBeLessThan(31);
        Library.PortContacts["vehicle-socket"].SteadyWith(Awg(14)).ShouldBe(10);
    }

    [Fact]
    public void An_aluminium_bar_carries_less()
    {
        Material copper = Library.Materials["copper"];
        Library.Busbars.SteadyAmps(45e-6, copper, copper).ShouldBe(90, 1e-9);
        Library.Busbars.SteadyAmps(45e-6, Library.Materials["aluminium"], copper).ShouldBe(54.9, 0.1);
    }

    [Fact]
    public void Withstand_constants_fit_the_metals_and_temperatures_they_stand_for()
    {
        Material copper = Library.Materials["copper"];
        foreach (InsulationClass insulation in Library.Insulation.All)
        {
            double computed = WireCheck.Physics.ShortCircuitHeating.Constant(
                copper.Heat, copper.Zero, copper.Resistivity, insulation.RatedCelsius, insulation.LimitCelsius) * 1e-6;
            insulation.CopperConstant.ShouldBe(computed, 1.1, insulation.Name);
        }
    }
}
